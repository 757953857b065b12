import { figures } from '../base/figure';
import type { Design } from '../vocabulary/design';
import type { Step } from '../vocabulary/making';
import type { Part } from '../vocabulary/part';
import type { Join } from '../vocabulary/section';
import { type Batch, groupsOf, putOn } from './order';
import { basesOf, contentsOf, listOf, sentence, verbOf } from './step-words';
import type { Touching } from './touching';

type Told = Omit<Step, 'number'>;

/**
 * The order in which it is put together: section by section on the bench, a dry fit, then on site what was carried in loose. Every part
 * is in one step, and none before what it is fixed to. From what touches, and from the order in which the rooms make their parts.
 */
export function stepsOf(made: Design, touching: Touching): readonly Step[] {
  const by = new Map(made.parts.map((p) => [p.mark, p]));
  const bench = made.sections.map(({ id }) => onBench(made, id, by, touching));
  const placed = new Set(bench.flatMap(({ steps }) => steps.flatMap((step) => step.parts)));
  const left = made.parts.filter((p) => !placed.has(p.mark));
  const steps: readonly Told[] = [
    ...bench.flatMap((section) => section.steps),
    ...dryFit(made, left),
    ...settingUp(made),
    ...onSite(made, left, placed, by, touching),
  ];
  return steps.map((step, i) => ({ number: i + 1, ...step }));
}

/** Puts one section together. A part that touches nothing of its own section waits for the site. */
function onBench(
  { parts }: Design,
  id: string,
  by: ReadonlyMap<string, Part>,
  touching: Touching,
): { readonly steps: readonly Told[] } {
  const own = parts.filter((p) => p.inSection === id);
  const before = new Set<string>();
  const { batches } = putOn(groupsOf(own, parts), new Set(), touching);
  const steps = batches.map((batch, i): Told => {
    const where = placeOf(batch, own);
    const words =
      i === 0
        ? `${verbOf(batch)} ${contentsOf(batch)} together on the bench${where}; equal diagonals say that it is square`
        : `${verbOf(batch)} ${contentsOf(batch)}${basesOf(batch, before, by, touching)}${where}${scribing(batch)}`;
    for (const { mark } of batch) before.add(mark);
    return { place: 'workshop', section: id, parts: marksOf(batch), what: sentence(words) };
  });
  return { steps };
}

const marksOf = (batch: Batch): readonly string[] => batch.map((p) => p.mark);

/** ", run A": where the section has more than one run, and the batch lies in one. */
function placeOf(batch: Batch, own: readonly Part[]): string {
  const runs = new Set(batch.map((p) => p.run));
  return runs.size === 1 && own.some((p) => p.run !== batch[0].run) ? `, run ${batch[0].run}` : '';
}

/** Stuff left on is taken off before a piece is fixed for good. */
const scribing = (batch: Batch): string =>
  batch.some(({ oversize = [] }) => oversize.some((o) => o.amount > 0)) ? ', leaving on what is to be scribed' : '';

/** Sections brought together in the workshop, joins bored, loose parts tried and marked. */
function dryFit(made: Design, left: readonly Part[]): readonly Told[] {
  const joined = made.joins.map((join): Told => ({ place: 'dry fit', parts: [], what: sentence(brought(made, join)) }));
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

function brought({ job, rod }: Design, { id, at, run, x, sections, bolts }: Join): string {
  const figure = figures(job);
  const pair = listOf([...sections]);
  if (at === 'flap') {
    const gap = rod.flaps.find((flap) => flap.left === run);
    return `stand ${pair} in line, ${gap ? figure(gap.width) : 'the gap of the flap'} apart, where the flap will hang (${id})`;
  }
  const where = at === 'corner' ? `the right-hand corner of run ${run}` : `run ${run}, ${figure(x)} from its left end`;
  const bored = bolts.length
    ? ` and bore through both studs for ${bolts.length} bolts, ${listOf(bolts.map(figure))} above the floor`
    : '; no bolt height lies between the plates, so decide where it is bolted';
  return `bring ${pair} together at ${id} (${where}), level and flush, clamp them${bored}`;
}

/** Sections set up on site. */
function settingUp({ job, sections, joins, rod }: Design): readonly Told[] {
  if (sections.length === 0) return [];
  const site = (words: string): Told => ({ place: 'site', parts: [], what: sentence(words) });
  const all = listOf(sections.map(({ id }) => id));
  const packed = job.survey.levels.length
    ? 'pack it up from the highest point of the floor, packers as listed'
    : 'find the highest point of the floor and pack up from there';
  const walls = rod.runs.some((run) => run.left.kind === 'wall' || run.right.kind === 'wall');
  return [
    site(`set ${all} in place, ${packed}, and level along and across`),
    ...joins
      .filter((join) => join.bolts.length > 0)
      .map(({ id, sections: pair, bolts }) =>
        site(`draw ${listOf([...pair])} together at ${id} with ${bolts.length} bolts, faces flush`),
      ),
    ...(walls ? [site('scribe to the wall what meets it, and notch over skirting that stays')] : []),
    site('fix the unit to wall or floor so that it can’t tip; by what depends on what is there'),
  ];
}

/** What was carried in loose, from the frame outward. */
function onSite(
  { parts }: Design,
  left: readonly Part[],
  placed: Set<string>,
  by: ReadonlyMap<string, Part>,
  touching: Touching,
): readonly Told[] {
  const before = new Set(placed);
  const { batches, loose } = putOn(groupsOf(left, parts), placed, touching);
  const steps = batches.map((batch): Told => {
    const words = `${verbOf(batch)} ${contentsOf(batch)}${basesOf(batch, before, by, touching)}${scribed(batch)}`;
    for (const { mark } of batch) before.add(mark);
    return { place: 'site', parts: marksOf(batch), what: sentence(words) };
  });
  if (loose.length === 0) return steps;
  const words = `fix ${contentsOf(loose)}: touching nothing that it could be fixed to, so find a fixing first`;
  return [...steps, { place: 'site', parts: marksOf(loose), what: sentence(words) }];
}

const scribed = (batch: Batch): string =>
  batch.some(({ oversize = [] }) => oversize.some((o) => o.amount > 0)) ? ', scribed to the wall first' : '';
