import type { FixingMap, TimberBehind } from '../../src/vocabulary/making';
import type { RodRun } from '../../src/vocabulary/rod';
import { figure } from '../shell/format';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';
import { useMaking } from '../store/making';
import type { Heading } from './columns';
import { MarkButton, Sheet } from './Sheet';
import { Table } from './Table';

const HEADINGS: readonly Heading[] = [
  { title: 'Mark' },
  { title: 'Timber' },
  { title: 'From', number: true },
  { title: 'To', number: true },
  { title: 'Lower edge', full: 'Lower edge above the floor', number: true },
  { title: 'Upper edge', full: 'Upper edge above the floor', number: true },
];

/** Where there is timber to fix into behind the skin, run by run, in running measurement. */
export function FixingMaps() {
  const { rod } = useDesign();
  const { maps } = useMaking();
  return (
    <Sheet title="Fixing map" told="timber behind the skin, measured from one end and from the floor">
      {maps.map((map) => (
        <OneMap key={map.run} map={map} run={rod.runs.find(({ id }) => id === map.run)} />
      ))}
    </Sheet>
  );
}

function OneMap({ map, run }: { readonly map: FixingMap; readonly run: RodRun | undefined }) {
  const { job } = useDesign();
  const selected = useApp((state) => state.view.selected);
  const pick = (mark: string) => app.getState().select(mark === selected ? null : mark, map.run);
  return (
    <>
      <h3>
        {map.name} <small>from the {map.datum} end</small>
      </h3>
      <Drawing map={map} length={run?.length ?? 0} />
      <Table headings={HEADINGS} label={`Timber behind ${map.name}`}>
        {map.timber.map((timber) => (
          <tr key={timber.part} className={timber.part === selected ? 'picked' : undefined}>
            <th scope="row">
              <MarkButton mark={timber.part} picked={timber.part === selected} onPick={pick} />
            </th>
            <td>{timber.name}</td>
            <td className="number">{figure(timber.from, job)}</td>
            <td className="number">{figure(timber.to, job)}</td>
            <td className="number">{figure(timber.low, job)}</td>
            <td className="number">{figure(timber.high, job)}</td>
          </tr>
        ))}
      </Table>
    </>
  );
}

/** The same to scale, as seen from the front; the table says it in figures. */
function Drawing({ map, length }: { readonly map: FixingMap; readonly length: number }) {
  const ends = map.timber.flatMap(({ from, to }) => [from, to]);
  const most = Math.max(length, ...ends);
  const least = Math.min(0, ...ends);
  const top = Math.max(1, ...map.timber.map(({ high }) => high));
  const left = ({ from, to }: TimberBehind): number => (map.datum === 'left' ? from - least : most - to);
  return (
    <svg className="fixing-map" viewBox={`-20 -20 ${most - least + 40} ${top + 40}`} aria-hidden="true">
      {map.timber.map((timber) => (
        <rect
          key={timber.part}
          x={left(timber)}
          y={top - timber.high}
          width={timber.to - timber.from}
          height={timber.high - timber.low}
        />
      ))}
    </svg>
  );
}
