import { rooms } from '../../src/flow';
import {
  endFields,
  jobFields,
  rhythmFields,
  runFields,
  surveyFields,
  toolFields,
  unitFields,
} from '../../src/job/fields';
import { cuttingFields } from '../../src/job/fields-cutting';
import { bayFields, carryFields, fitFields, joinFields, openingFields } from '../../src/job/fields-making';
import { getAt } from '../../src/job/path';
import { stepsOf } from '../../src/job/words';
import type { Job } from '../../src/vocabulary/job';
import type { RodRun } from '../../src/vocabulary/rod';

type Labels = Readonly<Record<string, { readonly label: string }>>;

/** A group's name and, where the path leads to one of its fields of another name, the field's. */
const named = (group: string, labels: Labels, key: string | undefined): string => {
  const label = key === undefined ? undefined : labels[key]?.label;
  return label === undefined || label === group ? group : `${group}, ${label}`;
};

const runName = (runs: readonly Pick<RodRun, 'jobIndex' | 'name'>[], index: string): string =>
  runs.find(({ jobIndex }) => jobIndex === Number(index))?.name ?? 'Plan';

/** The path at which a decision stands on the page: joins that were worked out have no rows of their own, only the way they are found. */
export const shownAt = (path: string, { unit }: Job): string =>
  unit.joins.by !== 'hand' && path.startsWith('/unit/joins/at') ? '/unit/joins/by' : path;

/**
 * What the decision at a path in the job is called on the page: its group and its field, or its group alone. Null where the page
 * has no words for it.
 */
export function decisionName(
  path: string,
  job: Job,
  runs: readonly Pick<RodRun, 'jobIndex' | 'name'>[],
): string | null {
  const steps = stepsOf(shownAt(path, job));
  const [first, second, third, fourth] = steps;
  if (first === 'units') return jobFields.units.label;
  if (first === 'tools') return named('Workshop', toolFields, second);
  if (first === 'cutting') return named('Cutting', cuttingFields, second);
  if (first === 'survey') return surveyName(job, second, third, fourth);
  if (first === 'carry') return named('The way in', carryFields, second);
  if (first === 'fit') return named('Allowances for the room', fitFields, second);
  if (first !== 'unit') return null;
  if (second === 'elements') {
    const room = rooms.find(({ kind }) => kind === third);
    return room ? named(room.label, room.fields, fourth) : null;
  }
  if (second === 'openings' || second === 'bays' || second === 'joins') return listName(job, runs, steps);
  if (second !== 'plan')
    return second !== undefined && second in unitFields ? named('Heights and depth', unitFields, second) : null;
  if (third === 'leftEnd' || third === 'rightEnd')
    return named(third === 'leftEnd' ? 'Left end' : 'Right end', endFields, fourth);
  if (third !== 'runs' || fourth === undefined) return 'Plan';
  return named(
    runName(runs, fourth),
    { ...runFields, rhythm: { label: 'Bays in this run' }, flap: { label: 'Flap' }, ...rhythmFields },
    steps[4],
  );
}

/** An opening, a single bay or a join by hand: `steps` from the root of the job. */
function listName(
  job: Job,
  runs: readonly Pick<RodRun, 'jobIndex' | 'name'>[],
  [, list, third, fourth, fifth]: readonly string[],
): string {
  if (list === 'joins') {
    const index = third === 'at' ? fourth : undefined;
    return index === undefined ? 'Taken apart' : named(`Join ${Number(index) + 1}`, joinFields, fifth);
  }
  if (third === undefined) return list === 'bays' ? 'Single bays' : 'Openings';
  if (list === 'openings') {
    const name = job.unit.openings[Number(third)]?.name;
    return named(name || `Opening ${Number(third) + 1}`, openingFields, fourth);
  }
  const wish = job.unit.bays[Number(third)];
  return named(wish ? `${runName(runs, String(wish.run - 1))}, bay ${wish.bay}` : 'Single bays', bayFields, fourth);
}

function surveyName(job: Job, list: string | undefined, index: string | undefined, key: string | undefined): string {
  if (index === undefined) return list === 'levels' ? 'Floor levels' : 'Walls';
  if (list === 'levels') return named(`Floor level ${Number(index) + 1}`, surveyFields, key);
  const name = getAt(job, `/survey/walls/${index}/name`);
  return named(typeof name === 'string' && name !== '' ? name : 'Wall', surveyFields, key);
}
