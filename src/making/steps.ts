import type { Design } from '../vocabulary/design';
import type { Step } from '../vocabulary/making';
import type { Part } from '../vocabulary/part';
import { type Batch, groupsOf, putOn } from './order';
import { postBolts } from './post-bolts';
import { puttingIn } from './put-in';
import { dryFit, settingUp, type Told } from './set-up';
import { afterWhatTheyStandOn } from './stands';
import { basesOf, contentsOf, puttingOn, sentence, verbOf } from './step-words';
import type { Touching } from './touching';

/**
 * The order in which it is put together: section by section on the bench, a dry fit, then on site what was carried in loose, and what is bought. Every part
 * is in one step, and none before what it is fixed to. From what touches, and from the order in which the rooms make their parts.
 */
export function stepsOf(made: Design, touching: Touching): readonly Step[] {
  const by = new Map(made.parts.map((p) => [p.mark, p]));
  const bench = made.sections.map(({ id }) => onBench(made, id, by, touching));
  const placed = new Set(bench.flatMap(({ steps }) => steps.flatMap((step) => step.parts)));
  const left = made.parts.filter((p) => !placed.has(p.mark));
  const bolted = postBolts(made, by, touching);
  const steps: readonly Told[] = [
    ...bench.flatMap((section) => section.steps),
    ...dryFit(made, left, bolted),
    ...settingUp(made, bolted),
    ...onSite(made, left, placed, by, touching),
    ...puttingIn(made),
  ];
  return steps.map((step, i) => ({ number: i + 1, ...step }));
}

/** Puts one section together. A part that touches nothing of its own section waits for the site. */
function onBench(
  { parts, job }: Design,
  id: string,
  by: ReadonlyMap<string, Part>,
  touching: Touching,
): { readonly steps: readonly Told[] } {
  const { fixings } = job.stock;
  const own = parts.filter((p) => p.inSection === id);
  const before = new Set<string>();
  const { batches } = putOn(afterWhatTheyStandOn(groupsOf(own, parts), touching), new Set(), touching);
  const begun = new Set<string>();
  const steps = batches.map((batch): Told => {
    const where = placeOf(batch, own);
    const [{ from, run }] = batch;
    const isNew = from === 'framed' && batch.length > 1 && !begun.has(run);
    begun.add(run);
    const bases = (some: Batch): string => basesOf(some, before, by, touching);
    const words = isNew
      ? `${verbOf(batch, fixings)} ${contentsOf(batch)} together on the bench${where}; equal diagonals say that it is square${bases(batch) && `, then fix it${bases(batch)}`}`
      : `${puttingOn(batch, bases, fixings)}${where}${scribing(batch)}`;
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

/** What was carried in loose, from the frame outward. */
function onSite(
  { parts, job }: Design,
  left: readonly Part[],
  placed: Set<string>,
  by: ReadonlyMap<string, Part>,
  touching: Touching,
): readonly Told[] {
  const { fixings } = job.stock;
  const before = new Set(placed);
  const { batches, loose } = putOn(afterWhatTheyStandOn(groupsOf(left, parts), touching), placed, touching);
  const steps = batches.map((batch): Told => {
    const bases = (some: Batch): string => basesOf(some, before, by, touching);
    const words = `${puttingOn(batch, bases, fixings)}${scribed(batch)}`;
    for (const { mark } of batch) before.add(mark);
    return { place: 'site', parts: marksOf(batch), what: sentence(words) };
  });
  if (loose.length === 0) return steps;
  const words = `fix ${contentsOf(loose)}: touching nothing that it could be fixed to, so find a fixing first`;
  return [...steps, { place: 'site', parts: marksOf(loose), what: sentence(words) }];
}

const scribed = (batch: Batch): string =>
  batch.some(({ oversize = [] }) => oversize.some((o) => o.amount > 0)) ? ', scribed to the wall first' : '';
