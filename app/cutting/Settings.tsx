import { useEffect, useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { useShallow } from 'zustand/react/shallow';
import { caresOf, type PlannedBatch } from '../../src/cut';
import type { Part } from '../../src/vocabulary/part';
import type { CutOf, SawSetUp, Settings as SetUps } from '../../src/vocabulary/set-up';
import { markRanges } from '../sheets/mark-ranges';
import { Table } from '../sheets/Table';
import { Scrolled } from '../shell/Scrolled';
import { app } from '../store/app';
import { useDesign } from '../store/hooks';
import { rearrange } from './acts';
import { cutters, cutting } from './board';
import { marksInOrder } from './copies';
import { atWork } from './held';
import { Printed } from './Printed';
import { bevelWords, grooveWords, passWords, setUpWords } from './setting-words';
import { number, type Say } from './words';

const marksWords = (marks: readonly string[]): string => markRanges(marks).join(', ');

/** The batches with their plans, marks in the order of the plan; the same as long as no plan changes. */
function usePlanned(): readonly PlannedBatch[] {
  const shown = useStore(
    cutting,
    useShallow((state) => state.order.job.map((id) => state.held[id]?.shown ?? null)),
  );
  return useMemo(
    () =>
      shown.flatMap((one) => (one ? [{ batch: marksInOrder(one.batch, one.plan, one.copies), plan: one.plan }] : [])),
    [shown],
  );
}

/** While plans are still being bettered, the settings are gathered when they have stood for so long, ms. */
const STANDS = 400;

/** Worked out away from the page; until then, those of the plans before stay. */
function useSettings(planned: readonly PlannedBatch[], parts: readonly Part[], blockKerf: number) {
  const [settings, setSettings] = useState<SetUps | null>(null);
  const [trouble, setTrouble] = useState('');
  useEffect(() => {
    let wanted = true;
    const { held, order } = cutting.getState();
    const busy = order.job.some((id) => held[id] && atWork(held[id]));
    const asking = setTimeout(
      () =>
        cutters.ask({ what: 'settings', planned, parts, blockKerf }).then(
          (reply) => wanted && reply.what === 'settings' && setSettings(reply.settings),
          (reason: Error) => wanted && setTrouble(reason.message),
        ),
      busy ? STANDS : 0,
    );
    return () => {
      wanted = false;
      clearTimeout(asking);
    };
  }, [planned, parts, blockKerf]);
  return { settings, trouble };
}

/** All cuts of the job gathered by what is set for them, in the order of the work. */
export default function Settings({ say }: { readonly say: Say }) {
  const planned = usePlanned();
  const { parts, job } = useDesign();
  const { settings, trouble } = useSettings(planned, parts, job.tools.mitreSawKerf);
  const names = useMemo(() => new Map(planned.map(({ batch }) => [batch.id, batch.name])), [planned]);
  if (!settings)
    return (
      <p className="said">{trouble ? `The settings could not be gathered: ${trouble}.` : 'Gathering the settings…'}</p>
    );
  const { moves, movesAsDrawn } = settings;
  const list = <SettingsList settings={settings} names={names} say={say} />;
  return (
    <section className="parts" aria-labelledby="settings-title">
      <div className="parts-head">
        <h2 id="settings-title">Settings</h2>
        <p>
          {moves} times set in this order; {movesAsDrawn} times sheet by sheet and bar by bar
        </p>
        <div className="tools">
          <button type="button" onClick={() => void rearrange(app, cutting, cutters)}>
            Rearrange for fewer settings
          </button>
          <Printed label="Print" title={`${job.name || 'Job'}: settings`} head={[]}>
            {list}
          </Printed>
        </div>
      </div>
      <Scrolled label="Rows: Settings">{list}</Scrolled>
    </section>
  );
}

interface ListProps {
  readonly settings: SetUps;
  readonly names: ReadonlyMap<string, string>;
  readonly say: Say;
}

function SettingsList({ settings, names, say }: ListProps) {
  const { sheets, profiles, lengths, bevels, grooves, work, cautions } = settings;
  const atSaw = (saw: SawSetUp['saw']) => lengths.filter((one) => one.saw === saw);
  return (
    <div className="settings">
      <ul className="cautions">
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <Saw title="Sheets: panel saw" setUps={sheets} thing="sheet" names={names} say={say} />
      {profiles.length > 0 ? (
        <>
          <h3>Moulding</h3>
          <Table headings={[{ title: 'No.' }, { title: 'Cutter' }, { title: 'Runs' }]} label="Moulding">
            {profiles.map(({ cutter, edge, passes }, i) => (
              <tr key={`${cutter} ${edge}`}>
                <th scope="row">{i + 1}</th>
                <td className="setting">
                  {cutter}, {edge}
                </td>
                <td>{passes.map(({ marks, length }) => `${marksWords(marks)} (${say(length)})`).join('; ')}</td>
              </tr>
            ))}
          </Table>
          <Cares of={profiles} />
        </>
      ) : null}
      <Saw title="Lengths: mitre saw" setUps={atSaw('mitre saw')} thing="bar" names={names} say={say} />
      <Saw
        title="Wide blanks: panel saw, or along a guide"
        setUps={atSaw('panel saw')}
        thing="bar"
        names={names}
        say={say}
      />
      {bevels.length > 0 ? (
        <>
          <h3>Bevels and mitres on sheet stuff</h3>
          <Table
            headings={[{ title: 'Setting' }, { title: 'From the fence', number: true }, { title: 'Marks' }]}
            label="Bevels"
          >
            {bevels.flatMap((bevel) =>
              bevel.passes.map(({ fence, marks }) => (
                <tr key={`${bevelWords(bevel)} ${fence} ${marks[0]}`}>
                  <th scope="row">{bevelWords(bevel)}</th>
                  <td className="number">{say(fence)}</td>
                  <td>{marksWords(marks)}</td>
                </tr>
              )),
            )}
          </Table>
        </>
      ) : null}
      {grooves.length > 0 ? (
        <>
          <h3>Grooves and flutes</h3>
          <Table headings={[{ title: 'Setting' }, { title: 'Passes' }]} label="Grooves and flutes">
            {grooves.map((groove) => (
              <tr key={grooveWords(groove, say)}>
                <th scope="row">{grooveWords(groove, say)}</th>
                <td>{groove.passes.map((pass) => passWords(pass, say)).join('; ')}</td>
              </tr>
            ))}
          </Table>
        </>
      ) : null}
      {work.length > 0 ? (
        <>
          <h3>Other work</h3>
          <Table headings={[{ title: 'Work' }, { title: 'Marks' }]} label="Other work">
            {work.map(({ what, marks }) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                <td>{marksWords(marks)}</td>
              </tr>
            ))}
          </Table>
        </>
      ) : null}
    </div>
  );
}

/** What some of the rows above ask for, said once. */
function Cares({ of }: { readonly of: readonly { readonly care: readonly string[] }[] }) {
  const cares = caresOf(of);
  if (cares.length === 0) return null;
  return (
    <ul className="cares">
      {cares.map(([words, numbers]) => (
        <li key={words}>
          {numbers.length < of.length ? `No. ${numbers.join(', ')}: ` : ''}
          {words}
        </li>
      ))}
    </ul>
  );
}

interface SawProps {
  readonly title: string;
  readonly setUps: readonly SawSetUp[];
  readonly thing: 'sheet' | 'bar';
  readonly names: ReadonlyMap<string, string>;
  readonly say: Say;
}

function Saw({ title, setUps, thing, names, say }: SawProps) {
  if (setUps.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <Table
        headings={[{ title: 'No.' }, { title: 'Setting' }, { title: 'Cuts' }, { title: 'Parts cut off' }]}
        label={title}
      >
        {setUps.map((setUp, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same setting may come twice; its place in the order is its identity
          <tr key={i}>
            <th scope="row">{i + 1}</th>
            <td className="setting">{setUpWords(setUp, say)}</td>
            <td>
              {cutsWords(setUp.cuts, thing, names)}
              {setUp.blocks.length > 0
                ? `${setUp.cuts.length > 0 ? '; ' : ''}${number(setUp.blocks.length, 'block')} off moulded strips`
                : ''}
            </td>
            <td className="marks">{marksWords([...setUp.cuts, ...setUp.blocks].flatMap(({ marks }) => marks))}</td>
          </tr>
        ))}
      </Table>
      <Cares of={setUps} />
    </>
  );
}

/** "MDF 12: sheet 1 (cuts 3, 4), sheet 2 (cut 3)". */
function cutsWords(cuts: readonly CutOf[], thing: string, names: ReadonlyMap<string, string>): string {
  const batches = new Map<string, Map<number, number[]>>();
  for (const { batch, index, cut } of cuts) {
    const sheets = batches.get(batch) ?? new Map<number, number[]>();
    batches.set(batch, sheets);
    sheets.set(index, [...(sheets.get(index) ?? []), cut]);
  }
  return [...batches]
    .map(([batch, sheets]) => {
      const said = [...sheets].map(([index, numbers]) => `${thing} ${index + 1} (${numbers.join(', ')})`);
      return `${names.get(batch) ?? batch}: ${said.join(', ')}`;
    })
    .join('; ');
}
