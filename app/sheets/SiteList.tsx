import type { SiteWork } from '../../src/vocabulary/making';
import { figure } from '../shell/format';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';
import { useMaking } from '../store/making';
import type { Heading } from './columns';
import { MarkButton, Sheet } from './Sheet';
import { Table } from './Table';

const PACKERS: readonly Heading[] = [
  { title: 'Under' },
  { title: 'Run' },
  { title: 'At', number: true },
  { title: 'Thickness', number: true },
];
const SCRIBES: readonly Heading[] = [
  { title: 'Where' },
  { title: 'Run' },
  { title: 'Length', number: true },
  { title: 'Most comes off', number: true },
  { title: 'Left on for it', number: true },
];
const NOTCHES: readonly Heading[] = [
  { title: 'Where' },
  { title: 'Run' },
  { title: 'Parts' },
  { title: 'Height', number: true },
  { title: 'Thickness', number: true },
];

/** Where two rows may read alike their order is their identity. */
const keyed = <T,>(rows: readonly T[]): readonly (readonly [string, T])[] => rows.map((row, i) => [String(i), row]);

/** What waits on site: packers under posts, lines to scribe, notches over what is on the wall. */
export function SiteList() {
  const { site } = useMaking();
  const count = site.packers.length + site.scribes.length + site.notches.length;
  return (
    <Sheet title="Site work" told={count === 0 ? 'nothing to pack, scribe or notch, as surveyed' : 'as surveyed'}>
      {site.notes?.map((note) => (
        <p className="said" key={note}>
          {note}
        </p>
      ))}
      <Packers site={site} />
      <Scribes site={site} />
      <Notches site={site} />
    </Sheet>
  );
}

interface Props {
  readonly site: SiteWork;
}

const useWords = () => {
  const { job, rod } = useDesign();
  return {
    mm: (value: number) => figure(value, job),
    run: (id: string) => rod.runs.find((run) => run.id === id)?.name ?? id,
  };
};

function Packers({ site }: Props) {
  const { mm, run } = useWords();
  const selected = useApp((state) => state.view.selected);
  if (site.packers.length === 0) return null;
  return (
    <>
      <h3>Packers</h3>
      <Table headings={PACKERS} label="Packers">
        {keyed(site.packers).map(([key, packer]) => (
          <tr key={key} className={packer.part === selected ? 'picked' : undefined}>
            <th scope="row">
              <MarkButton
                mark={packer.part}
                picked={packer.part === selected}
                onPick={(mark) => app.getState().select(mark === selected ? null : mark, packer.run)}
              />
            </th>
            <td>{run(packer.run)}</td>
            <td className="number">{mm(packer.x)}</td>
            <td className="number">{mm(packer.thickness)}</td>
          </tr>
        ))}
      </Table>
    </>
  );
}

function Scribes({ site }: Props) {
  const { mm, run } = useWords();
  if (site.scribes.length === 0) return null;
  return (
    <>
      <h3>To scribe</h3>
      <Table headings={SCRIBES} label="To scribe">
        {keyed(site.scribes).map(([key, scribe]) => (
          <tr key={key}>
            <th scope="row">{scribe.where}</th>
            <td>{run(scribe.run)}</td>
            <td className="number">{mm(scribe.length)}</td>
            <td className="number">{mm(scribe.most)}</td>
            <td className="number">{mm(scribe.left)}</td>
          </tr>
        ))}
      </Table>
    </>
  );
}

function Notches({ site }: Props) {
  const { mm, run } = useWords();
  if (site.notches.length === 0) return null;
  return (
    <>
      <h3>To notch</h3>
      <Table headings={NOTCHES} label="To notch">
        {keyed(site.notches).map(([key, notch]) => (
          <tr key={key}>
            <th scope="row">{notch.where}</th>
            <td>{run(notch.run)}</td>
            <td>{notch.parts.join(', ')}</td>
            <td className="number">{mm(notch.height)}</td>
            <td className="number">{mm(notch.thickness)}</td>
          </tr>
        ))}
      </Table>
    </>
  );
}
