import type { Hardwood, Sheet, StockItem } from '../../vocabulary/book';
import type { CutBatch, Offcut } from '../../vocabulary/cut-plan';
import type { Design } from '../../vocabulary/design';
import type { Finding } from '../../vocabulary/finding';
import type { Job } from '../../vocabulary/job';
import type { Part } from '../../vocabulary/part';
import { MOST } from '../most';
import { blankBars, blankWidth, mouldingBars, type Taken, timberBars } from './bars';
import { sheets } from './sheets';
import { byWidth } from './stock';

/** What is to be cut for a design, and what can't be cut as it is. */
export interface TakenOff {
  readonly batches: readonly CutBatch[];
  readonly findings: readonly Finding[];
}

/**
 * A design as problems of cutting, one for each stuff, in the order in which the stuffs first appear among the parts. Every part is in one
 * of them, or has a finding that says why not; one that is glued up is in as many pieces as it takes. What the rack holds of a stuff is
 * offered with it: paid for, and no more than there is. Where the design itself says already that a part is longer than its stock,
 * that finding is given again, the same object, and no other.
 */
export function cutBatches(
  { job, parts, findings }: Pick<Design, 'job' | 'parts' | 'findings'>,
  offcuts: readonly Offcut[] = [],
): TakenOff {
  const items = new Map(job.stock.items.map((item) => [item.id, item]));
  const stuffs = new Map<string, Part[]>();
  for (const part of parts) {
    const item = items.get(part.material);
    if (!item) throw new Error(`${part.mark} is of ${JSON.stringify(part.material)}, which is not in the stock book`);
    const stuff = stuffOf(item);
    const there = stuffs.get(stuff);
    if (there) there.push(part);
    else stuffs.set(stuff, [part]);
  }
  const known = new Map(
    findings.flatMap((one) => (one.rule === LONGER && one.subject.part ? [[one.subject.part, one] as const] : [])),
  );
  const taken = [...stuffs]
    .flatMap(([stuff, own]) => takenOff(stuff, items.get(own[0].material) as StockItem, own, offcuts, job))
    .map(bounded);
  return {
    batches: taken.flatMap(({ batch }) => batch ?? []),
    findings: taken.flatMap((one) => one.findings.map((finding) => known.get(finding.subject.part ?? '') ?? finding)),
  };
}

/** A stuff with more pieces than can be planned is left out as a whole, and that is said. */
function bounded(taken: Taken): Taken {
  if (!taken.batch) return taken;
  const { name, problem } = taken.batch;
  const all = problem.pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  const different = problem.pieces.length;
  if (all <= MOST.pieces && different <= MOST.different) return taken;
  const many = all > MOST.pieces;
  const finding: Finding = {
    severity: 'warn',
    rule: 'too-many-to-cut',
    subject: {},
    value: many ? all : different,
    limit: many ? MOST.pieces : MOST.different,
    message: `${all} pieces of ${name}, ${different} of them different, are more than one cutting plan takes (${MOST.pieces}, ${MOST.different} different). None is made.`,
    source: 'limits of the planning',
    remedy: 'Plan the unit as several jobs.',
  };
  return { findings: [...taken.findings, finding] };
}

/** The rule by which a design says that a stick is longer than its stock. */
const LONGER = 'longer-than-stock';

/** What a thing in the book is cut together with: the stuff of a sheet, or itself. */
export const stuffOf = (item: StockItem): string => (item.kind === 'sheet' ? (item.stuff ?? item.id) : item.id);

function takenOff(
  stuff: string,
  item: StockItem,
  parts: readonly Part[],
  offcuts: readonly Offcut[],
  job: Job,
): readonly Taken[] {
  switch (item.kind) {
    case 'sheet': {
      const same = job.stock.items.filter((one): one is Sheet => one.kind === 'sheet' && stuffOf(one) === stuff);
      // An offcut says its stuff, or the very sheet that it was left of.
      const names = new Set([stuff, ...same.map(({ id }) => id)]);
      const kept = offcuts.filter(({ material }) => names.has(material));
      return [sheets(stuff, same, parts, kept, job)];
    }
    case 'timber':
      return [timberBars(item, parts, of(item, offcuts), job)];
    case 'moulding':
      return [mouldingBars(item, parts, of(item, offcuts), job)];
    case 'hardwood':
      return blanks(item, parts, of(item, offcuts), job);
  }
}

const of = ({ id }: StockItem, offcuts: readonly Offcut[]): readonly Offcut[] =>
  offcuts.filter(({ material }) => material === id);

/** Hardwood by the width of the blanks, as they are ordered. */
function blanks(item: Hardwood, parts: readonly Part[], offcuts: readonly Offcut[], job: Job): readonly Taken[] {
  const widths = new Map<number, Part[]>();
  for (const part of parts) {
    const width = blankWidth(part, item);
    const there = widths.get(width);
    if (there) there.push(part);
    else widths.set(width, [part]);
  }
  const kept = byWidth(offcuts, [...widths.keys()]);
  return [...widths].map(([width, own]) => blankBars(item, width, own, kept.get(width) ?? [], job));
}
