import { clearBay, setBay } from '../../src/job/edits-making';
import { MOST } from '../../src/job/fields';
import { bayFields } from '../../src/job/fields-making';
import type { Design } from '../../src/vocabulary/design';
import type { BayPurpose, BayWish } from '../../src/vocabulary/job';
import { purposeWords } from '../rod/BackBays';
import { foundOf } from '../rod/things';
import { app } from '../store/app';
import { useApp, useCurrentRun, useDesign } from '../store/hooks';
import { FieldInput } from './FieldInput';
import { useTrial } from './found';
import { ChoiceInput } from './inputs';
import { runOfNumber, runOptions } from './runs';
import { Section } from './Section';
import { ThingRow } from './ThingRow';

type Key = Exclude<keyof BayWish, 'run' | 'bay' | 'panels' | 'purpose'>;

const STANDING: readonly Key[] = ['width', 'height', 'depth', 'besides', 'above', 'behind'];

/** What there is to say of each purpose. */
const SAID: Readonly<Record<BayPurpose, readonly Key[]>> = {
  open: [],
  shelves: ['count', 'shelves'],
  appliance: STANDING,
  sink: STANDING,
  bin: STANDING,
  doors: ['count'],
  drawers: ['count'],
};

/** Numbers of a run's bays of which nothing is said yet, and the one given. */
function freeBays(made: Design, run: number, own?: number): readonly number[] {
  const taken = new Set(made.job.unit.bays.filter((b) => b.run === run).map((b) => b.bay));
  const bays = runOfNumber(made, run)?.bays.map(({ index }) => index + 1) ?? [];
  return bays.filter((bay) => bay === own || !taken.has(bay));
}

function Row({ wish, index }: { readonly wish: BayWish; readonly index: number }) {
  const made = useDesign();
  const path = `/unit/bays/${index}`;
  const { made: tried, typing } = useTrial();
  const thing = { kind: 'bay', run: wish.run, bay: wish.bay } as const;
  const { edit } = app.getState();
  const run = runOfNumber(made, wish.run);
  const name = `${run?.name ?? `Run ${wish.run}`}, bay ${wish.bay}`;
  const move = (to: { readonly run: number; readonly bay: number }) =>
    edit(`Bay, ${name}`, (job) => setBay(clearBay(job, wish.run, wish.bay), to.run, to.bay, without(wish)));
  return (
    <ThingRow
      thing={thing}
      run={run?.id}
      name={name}
      told={`${purposeWords(wish.purpose)}${wish.panels ? '' : ', no panel frames'}`}
      found={foundOf(thing, tried)}
      remove={`Make ${name} like the others`}
      onRemove={() => edit(`${name} like the others`, (job) => clearBay(job, wish.run, wish.bay))}
    >
      <ChoiceInput
        label="In run"
        value={String(wish.run)}
        options={runOptions(made).filter(({ value }) => freeBays(made, Number(value), wish.bay).length > 0)}
        path={`${path}/run`}
        onValue={(to) => {
          const free = freeBays(made, Number(to));
          const bay = free.includes(wish.bay) ? wish.bay : free[0];
          if (bay !== undefined) move({ run: Number(to), bay });
        }}
      />
      <ChoiceInput
        label="Bay from the left"
        value={String(wish.bay)}
        options={freeBays(made, wish.run, wish.bay).map((n) => ({ value: String(n), label: String(n) }))}
        path={`${path}/bay`}
        onValue={(bay) => move({ run: wish.run, bay: Number(bay) })}
      />
      {(['panels', 'purpose', ...SAID[wish.purpose]] as const).map((key) => (
        <FieldInput
          key={key}
          field={bayFields[key]}
          value={wish[key]}
          path={`${path}/${key}`}
          onTyping={typing(`${path}/${key}`)}
          onValue={(value) =>
            edit(`${bayFields[key].label}, ${name}`, (job) => setBay(job, wish.run, wish.bay, { [key]: value }))
          }
        />
      ))}
    </ThingRow>
  );
}

const without = ({ run: _run, bay: _bay, ...rest }: BayWish): Omit<BayWish, 'run' | 'bay'> => rest;

/** Bays that are not like the others: without panel frames, with something behind them. */
export function BaysForm() {
  const bays = useApp((state) => state.document.unit.bays);
  const made = useDesign();
  const current = useCurrentRun();
  const numbers = made.job.unit.plan.runs.map((_, i) => i + 1);
  const here = current?.jobIndex == null ? [] : [current.jobIndex + 1];
  const run = [...here, ...numbers].find((number) => freeBays(made, number).length > 0);
  const bay = run === undefined ? undefined : freeBays(made, run)[0];
  const add = () => {
    if (run === undefined || bay === undefined) return;
    app.getState().edit('A bay of its own', (job) => setBay(job, run, bay, {}));
    app.getState().take({ kind: 'bay', run, bay }, runOfNumber(made, run)?.id);
  };
  return (
    <Section title="Single bays">
      {bays.map((wish, i) => (
        <Row key={`${wish.run} ${wish.bay}`} wish={wish} index={i} />
      ))}
      <button type="button" disabled={bay === undefined || bays.length >= MOST.bays} onClick={add}>
        Say what one bay is
      </button>
    </Section>
  );
}
