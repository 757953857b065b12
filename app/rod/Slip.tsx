import { setBay } from '../../src/job/edits-making';
import { bayFields } from '../../src/job/fields-making';
import type { Design } from '../../src/vocabulary/design';
import type { RodRun } from '../../src/vocabulary/rod';
import { joinablePillar, markRun, withJoin } from '../decisions/join-edits';
import { Refusals } from '../decisions/Refusals';
import { goToDecision } from '../shell/go-to';
import { app } from '../store/app';
import type { Thing } from '../store/view';
import { PURPOSE_INPUT } from './BackBays';
import { foundOf, pathOf } from './things';

interface Props {
  readonly made: Design;
  readonly run: RodRun;
  readonly inHand: Thing | null;
  /** Where the mark in hand, or the part picked out, lies on the front. */
  readonly at: { readonly from: number; readonly to: number } | null;
  readonly full: (mm: number) => string;
}

/** A slip of paper over the rod: what is in hand, what the checks say of it, and what can be done with it. */
export function Slip({ made, run, inHand, at, full }: Props) {
  if (inHand) {
    const body = <InHand made={made} run={run} thing={inHand} full={full} />;
    return (
      <section className="rod-slip" aria-label="In hand on the rod">
        {body}
        {/* What is only worth knowing stands with its decisions. */}
        <Refusals found={foundOf(inHand, made).filter(({ severity }) => severity !== 'note')} />
      </section>
    );
  }
  const pillar = at ? joinablePillar(made, run, at.from, at.to) : undefined;
  const number = markRun(run);
  if (!pillar || number === undefined) return null;
  return (
    <section className="rod-slip" aria-label="In hand on the rod">
      <p>
        <b>Pillar at {full(pillar.centre)}</b>
      </p>
      <button
        type="button"
        onClick={() => {
          const { edit, take } = app.getState();
          edit('Join behind a pillar', (job) => withJoin(job, made, { run: number, x: pillar.centre }));
          const { joins } = app.getState().document.unit;
          if (joins.by === 'hand') take({ kind: 'join', index: joins.at.length - 1 }, run.id);
        }}
      >
        Join behind this pillar
      </button>
    </section>
  );
}

function InHand({ made, run, thing, full }: Pick<Props, 'made' | 'run' | 'full'> & { readonly thing: Thing }) {
  if (thing.kind === 'bay') return <Bay made={made} run={run} thing={thing} />;
  const { openings, joins } = made.job.unit;
  const toForm = (
    <button type="button" onClick={() => goToDecision(pathOf(thing, made.job) ?? '')}>
      To its decisions
    </button>
  );
  if (thing.kind === 'opening') {
    const opening = openings[thing.index];
    if (!opening) return null;
    return (
      <>
        <p>
          <b>{opening.name || `Opening ${thing.index + 1}`}</b> {full(opening.x)} along, {full(opening.z)}{' '}
          {opening.through === 'top' ? 'back from the front edge' : 'up'}
        </p>
        {toForm}
      </>
    );
  }
  const mark = joins.by === 'hand' ? joins.at[thing.index] : undefined;
  if (!mark) return null;
  const standing = run.joins.find(({ x }) => x === mark.x);
  const behind = standing ? `, behind ${standing.behind === 'pillar' ? 'a pillar' : 'a cover strip'}` : '';
  return (
    <>
      <p>
        <b>{standing?.id ?? `Join ${thing.index + 1}`}</b>{' '}
        {mark.x === undefined ? 'at the right-hand corner' : `${full(mark.x)} along${behind}`}
      </p>
      {toForm}
    </>
  );
}

/** What stands behind one bay, chosen without leaving the rod. */
function Bay({ made, run, thing }: Pick<Props, 'made' | 'run'> & { readonly thing: Thing & { kind: 'bay' } }) {
  const wish = made.job.unit.bays.find(({ run: number, bay }) => number === thing.run && bay === thing.bay);
  const name = `${run.name}, bay ${thing.bay}`;
  const change = (label: string, what: Parameters<typeof setBay>[3]) =>
    app.getState().edit(`${label}, ${name}`, (job) => setBay(job, thing.run, thing.bay, what));
  return (
    <>
      <label>
        <b>{name}</b>, behind it:{' '}
        <select
          id={PURPOSE_INPUT}
          value={wish?.purpose ?? bayFields.purpose.default}
          onChange={(event) =>
            change('Behind it', {
              purpose: bayFields.purpose.options.find(({ value }) => value === event.target.value)?.value,
            })
          }
        >
          {bayFields.purpose.options.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      </label>
      <label className="tick-inline">
        <input
          type="checkbox"
          checked={wish?.panels ?? bayFields.panels.default}
          onChange={(event) => change('Panel frames', { panels: event.target.checked })}
        />
        <span>{bayFields.panels.label}</span>
      </label>
      {wish ? (
        <button type="button" onClick={() => goToDecision(pathOf(thing, made.job) ?? '')}>
          To its decisions
        </button>
      ) : null}
    </>
  );
}
