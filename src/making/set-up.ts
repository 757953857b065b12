import { figures } from '../base/figure';
import type { Design } from '../vocabulary/design';
import type { Step } from '../vocabulary/making';
import type { Part } from '../vocabulary/part';
import type { Join } from '../vocabulary/section';
import type { PostBolts } from './post-bolts';
import { contentsOf, listOf, sentence } from './step-words';

/** A step before it is numbered. */
export type Told = Omit<Step, 'number'>;

/** Sections brought together in the workshop, joins bored, loose parts tried and marked. */
export function dryFit(made: Design, left: readonly Part[], bolted: PostBolts): readonly Told[] {
  const joined = made.joins.map(
    (join): Told => ({ place: 'dry fit', parts: [], what: sentence(brought(made, join, bolted.get(join.id))) }),
  );
  const tried: Told[] = left.length
    ? [
        {
          place: 'dry fit',
          parts: [],
          what: sentence(
            `try in place, without glue, what stays loose: ${contentsOf(left)}; pencil the mark on the back of each and its line on what it covers, and take it off again`,
          ),
        },
      ]
    : [];
  const apart: Told[] = made.joins.length
    ? [
        {
          place: 'dry fit',
          parts: [],
          what: 'Number both sides of each join, undo the bolts and take the sections apart.',
        },
      ]
    : [];
  return [...joined, ...tried, ...apart];
}

function brought({ job, rod }: Design, { id, at, run, x, sections, bolts }: Join, posts?: string): string {
  const figure = figures(job);
  const pair = listOf([...sections]);
  if (at === 'flap') {
    const gap = rod.flaps.find((flap) => flap.left === run);
    return `stand ${pair} in line, ${gap ? figure(gap.width) : 'the gap of the flap'} apart, where the flap will hang (${id})`;
  }
  const where = at === 'corner' ? `the right-hand corner of run ${run}` : `run ${run}, ${figure(x)} from its left end`;
  const bored = bolts.length
    ? ` and bore through both studs for ${bolts.length} ${bolts.length === 1 ? 'bolt' : 'bolts'}, ${listOf(bolts.map(figure))} above the floor${posts ? `, and for ${posts}` : ''}`
    : `${posts ? ` and bore for ${posts}` : ''}; no bolt height lies between the plates, so decide where ${posts ? 'the studs are' : 'it is'} bolted`;
  return `bring ${pair} together at ${id} (${where}), level and flush, clamp them${bored}`;
}

/** Sections set up on site. */
export function settingUp({ job, sections, joins, rod }: Design, bolted: PostBolts): readonly Told[] {
  if (sections.length === 0) return [];
  const site = (words: string): Told => ({ place: 'site', parts: [], what: sentence(words) });
  const all = listOf(sections.map(({ id }) => id));
  const packed = job.survey.levels.length
    ? `pack ${sections.length === 1 ? 'it' : 'them'} up from the highest point of the floor, packers as listed`
    : 'find the highest point of the floor and pack up from there';
  const walls = rod.runs.some((run) => run.left.kind === 'wall' || run.right.kind === 'wall');
  const stays = job.survey.walls.some((wall) => (wall.skirtingHeight ?? 0) > 0);
  return [
    site(`set ${all} in place, ${packed}, and level along and across`),
    ...joins
      .map((join) => ({ join, drawn: boltsAt(join, bolted.get(join.id)) }))
      .filter(({ drawn }) => drawn !== '')
      .map(({ join: { id, sections: pair }, drawn }) =>
        site(`draw ${listOf([...pair])} together at ${id} with ${drawn}, faces flush`),
      ),
    ...(walls
      ? [site(`scribe to the wall what meets it${stays ? ', and notch it over the skirting that stays' : ''}`)]
      : []),
    site(
      'fix the unit to wall or floor so that it can’t tip, with what suits the wall or floor; local codes come first',
    ),
  ];
}

/** "3 bolts and 2 through the rear posts". Empty where there are none. */
function boltsAt({ bolts }: Join, posts = ''): string {
  if (bolts.length === 0) return posts && `bolts, ${posts}`;
  return `${bolts.length} ${bolts.length === 1 ? 'bolt' : 'bolts'}${posts && ` and ${posts}`}`;
}
