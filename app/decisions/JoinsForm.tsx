import { setAt } from '../../src/job/edits';
import { addJoin, removeJoin, setJoins } from '../../src/job/edits-making';
import { MOST } from '../../src/job/fields';
import { joinFields } from '../../src/job/fields-making';
import type { JoinMark, Joins } from '../../src/vocabulary/job';
import { foundOf } from '../rod/things';
import { length } from '../shell/format';
import { app } from '../store/app';
import { useApp, useCurrentRun, useDesign } from '../store/hooks';
import { useTrial } from './found';
import { ChoiceInput, LengthInput } from './inputs';
import { joinsOfKind, joinWords, markRun, newMark, runOfMark } from './join-edits';
import { useRowKeys } from './row-keys';
import { Section } from './Section';
import { ThingRow } from './ThingRow';

const NONE: readonly JoinMark[] = [];

const WAYS: readonly { readonly value: Joins['by']; readonly label: string }[] = [
  { value: 'none', label: 'nowhere' },
  { value: 'least', label: 'into the fewest sections' },
  { value: 'hand', label: 'where marked by hand' },
];

const PLACES = [
  { value: 'run', label: 'in the run' },
  { value: 'corner', label: 'at its right-hand corner' },
] as const;

function Row({ mark, index }: { readonly mark: JoinMark; readonly index: number }) {
  const made = useDesign();
  const current = useCurrentRun();
  const path = `/unit/joins/at/${index}`;
  const { made: tried, typing } = useTrial();
  const { edit } = app.getState();
  const run = runOfMark(made, mark);
  const name = `Join ${index + 1}`;
  const change = (to: JoinMark) => edit(`${name} moved`, (job) => setAt(job, path, to));
  const runs = made.rod.runs.flatMap((r) => {
    const number = markRun(r);
    return number === undefined ? [] : [{ value: String(number), label: r.name }];
  });
  return (
    <ThingRow
      thing={{ kind: 'join', index }}
      run={run?.id ?? current?.id}
      name={name}
      told={`${run?.name ?? `run ${mark.run}`}, ${mark.x === undefined ? 'at its corner' : `at ${length(mark.x, made.job)}`}`}
      found={foundOf({ kind: 'join', index }, tried)}
      remove={`Remove ${name}`}
      onRemove={() => edit(`Remove ${name}`, (job) => removeJoin(job, index))}
    >
      <ChoiceInput
        label="In run"
        value={String(mark.run)}
        options={runs}
        path={`${path}/run`}
        onValue={(to) => change({ ...mark, run: Number(to) })}
      />
      <ChoiceInput
        label="Where"
        value={mark.x === undefined ? 'corner' : 'run'}
        options={PLACES}
        onValue={(where) =>
          change(where === 'corner' ? { run: mark.run } : { run: mark.run, x: newMark(made, run).x ?? 0 })
        }
      />
      {mark.x === undefined ? null : (
        <LengthInput
          field={joinFields.x}
          value={mark.x}
          path={`${path}/x`}
          onTyping={typing(`${path}/x`)}
          onValue={(x) => change({ ...mark, x })}
        />
      )}
    </ThingRow>
  );
}

/** Where the unit is taken apart to be carried. */
export function JoinsForm() {
  const joins = useApp((state) => state.document.unit.joins);
  const made = useDesign();
  const run = useCurrentRun();
  const { edit, take } = app.getState();
  const marks = joins.by === 'hand' ? joins.at : NONE;
  const keys = useRowKeys(marks);
  return (
    <Section title="Taken apart">
      <ChoiceInput
        label="The unit is taken apart"
        help="By hand begins with the joins as they stand now. Fewest: as few as can be carried, by the way in and what the people may lift."
        value={joins.by}
        options={WAYS}
        path="/unit/joins/by"
        onValue={(by) => {
          take(null);
          edit('How it is taken apart', (job) => setJoins(job, joinsOfKind(by, made)));
        }}
      />
      {marks.map((mark, i) => (
        <Row key={keys[i]} mark={mark} index={i} />
      ))}
      {joins.by === 'hand' ? (
        <button
          type="button"
          disabled={marks.length >= MOST.joins}
          onClick={() => {
            edit('Add a join', (job) => addJoin(job, newMark(made, run)));
            take({ kind: 'join', index: marks.length });
          }}
        >
          Add a join
        </button>
      ) : null}
      {joins.by === 'hand' ? null : (
        <ul className="aside">
          {made.joins.map((join) => (
            <li key={join.id}>{joinWords(join, made, (mm) => length(mm, made.job))}</li>
          ))}
        </ul>
      )}
    </Section>
  );
}
