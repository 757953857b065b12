import { isSlip } from '../../src/cut';
import type { AnyCutPlan, CutBatch, Rect } from '../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../src/vocabulary/cut-problem';
import type { BarCut, Freed, SheetCut } from '../../src/vocabulary/set-up';
import { angle } from '../shell/format';
import type { Held } from './held';

/** A length as it is written here, without its unit. */
export type Say = (mm: number) => string;

/** What a plan costs, as its source counts it. */
export type Cost = (amount: number) => string;

/** Prices of the stock book are in pence. */
export const pounds: Cost = (pence) => `£${(pence / 100).toFixed(2)}`;

/** Prices of a typed list are in what they were typed in; without any, it is stuff that is counted: mm or mm². */
export const costOf = (kind: 'bars' | 'sheets', priced: boolean): Cost => {
  if (priced) return (amount) => `cost ${Number(amount.toFixed(2))}`;
  return kind === 'bars' ? (mm) => `${(mm / 1000).toFixed(1)} m` : (mm2) => `${(mm2 / 1e6).toFixed(2)} m²`;
};

export const number = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** How many sheets or bars. */
export function stockWords(plan: AnyCutPlan): string {
  return plan.kind === 'sheets' ? number(plan.sheets.length, 'sheet') : number(plan.bars.length, 'bar');
}

/** Hundredths to one place, never said to be nothing where there is something. */
const percent = (share: number): string => `${Math.max(0.1, Math.ceil(share * 1000 - 1e-9) / 10)} %`;

/** How good a plan is known to be. */
export function goodness({
  cost,
  bound,
  proven,
  unplaced,
}: Pick<AnyCutPlan, 'cost' | 'bound' | 'proven' | 'unplaced'>): string {
  if (unplaced.length > 0 && cost === 0) return 'nothing can be cut';
  if (proven || bound >= cost) return 'proven best';
  if (bound <= 0) return 'no limit known yet';
  return `at most ${percent((cost - bound) / bound)} above the limit`;
}

/** What the search is doing. */
export function standWords({ stand, spent, allowed, done, why, shown }: Held): string {
  const seconds = (ms: number): string => (ms / 1000).toFixed(1);
  if (done) return 'cut';
  switch (stand) {
    case 'waiting':
      return 'being laid out…';
    case 'first':
      return 'a first plan; the search is to come';
    case 'bettering': {
      // At the same cost there may be a larger leftover, or less to set and to turn.
      const aim = shown?.plan.proven ? 'looking for a handier one' : 'being bettered';
      return `${aim}: ${seconds(spent)} of ${seconds(Math.max(spent, allowed))} s`;
    }
    case 'done':
      return spent > 0 ? `nothing left to better, after ${seconds(spent)} s` : 'nothing left to better';
    case 'time':
      return `bettered for ${seconds(spent)} s`;
    case 'stopped':
      return spent > 0 ? `stopped after ${seconds(spent)} s` : 'as it stands';
    case 'by hand':
      return 'laid by hand';
    case 'failed':
      return `could not be planned: ${why ?? 'no reason is known'}`;
  }
}

/** What a sheet or bar is cut from: its name, or that of the offcut, and its size. */
export function sourceWords(batch: CutBatch, stock: number, say: Say): string {
  const { problem, from } = batch;
  const offcut = from[stock]?.offcut;
  const size =
    problem.kind === 'sheets'
      ? [problem.stock[stock]?.length ?? 0, problem.stock[stock]?.width ?? 0].map(say).join(' × ')
      : say(problem.stock[stock]?.length ?? 0);
  if (offcut !== undefined) return `offcut ${offcut} from the rack, ${size}`;
  const name = problem.stock[stock]?.name;
  // A name that says the size already says it once.
  return name === undefined || name.includes(size) ? (name ?? size) : `${name}, ${size}`;
}

/** What is taken off by the saw and along the edges, for the head of a plan; some stock may have a trim of its own. */
export function sawWords({ kind, kerf, trim }: CutProblem, say: Say): string {
  return `kerf ${say(kerf)}, trim ${say(trim)} off each ${kind === 'sheets' ? 'edge' : 'end'}`;
}

const SIDE = {
  along: { low: 'upper', high: 'lower' },
  across: { low: 'left', high: 'right' },
} as const;

const EDGE = { bought: 'as it comes', trimmed: 'trimmed before', cut: 'just cut' } as const;

const CUT = { rip: 'Rip', 'cross-cut': 'Cross-cut' } as const;

/** The edge of the panel near which a trim runs. */
function trimmedSide({ way, line, panel }: SheetCut): 'low' | 'high' {
  const at = way === 'along' ? line.y1 - panel.y : line.x1 - panel.x;
  return at < (way === 'along' ? panel.width : panel.length) / 2 ? 'low' : 'high';
}

/** What is done for a cut of a sheet, with the setting of the fence. */
export function sheetCutWords(cut: SheetCut, say: Say): string {
  const { what, way, fence, takes, against, length, tooLong } = cut;
  const stop = way === 'along' ? 'fence' : 'stop';
  const bears = `the ${SIDE[way][against.side]} edge (${EDGE[against.edge]}) against it`;
  const set = fence === undefined ? '' : `${stop} at ${say(fence)}, ${bears}`;
  const off = takes === undefined ? '' : `takes off ${say(takes)}${set ? '' : ' at most, by eye'}`;
  const far = `${say(length)} long${tooLong ? ' – longer than the saw can cut' : ''}`;
  const verb = what === 'trim' ? `Trim the ${SIDE[way][trimmedSide(cut)]} edge` : CUT[what];
  return `${verb}: ${[set, off, far].filter(Boolean).join('; ')}.`;
}

/** What is done for a cut of a bar; `piece`: what is cut off. */
export function barCutWords({ what, stop, mitreDeg, tiltDeg, over }: BarCut, piece: string, say: Say): string {
  const side = (deg: number): string => `${angle(Math.abs(deg))} to the ${deg > 0 ? 'right' : 'left'}`;
  const square = mitreDeg === 0 && tiltDeg === 0;
  const set = [
    over ? 'the bar rolled over on its length' : '',
    stop === undefined ? '' : `stop at ${say(stop)}${square ? '' : ' to the long point'}`,
    mitreDeg === 0 ? '' : `saw turned ${side(mitreDeg)}`,
    tiltDeg === 0 ? '' : `blade tilted ${side(tiltDeg)}`,
  ].filter(Boolean);
  const verb = {
    trim: 'Trim the rough end',
    clean: 'Cut a new end',
    piece: `Cut off ${piece}`,
    end: 'Trim the far end',
  }[what];
  return `${verb}${set.length > 0 ? `: ${set.join('; ')}` : ''}.`;
}

const size = ({ length, width }: Rect, say: Say): string => `${say(length)} × ${say(width)}`;

/** What a cut of a sheet sets free; `markOf` names a piece. */
export function freedWords(freed: Freed, markOf: (piece: Freed & { kind: 'piece' }) => string, say: Say): string {
  switch (freed.kind) {
    case 'piece':
      return `${markOf(freed)}, done`;
    case 'panel':
      return `a strip ${size(freed.rect, say)} for ${number(freed.pieces.length, 'piece')}`;
    case 'left':
      if (freed.reusable) return `${size(freed.rect, say)} for the rack`;
      return isSlip(freed.rect) ? 'a slip' : `waste ${size(freed.rect, say)}`;
    case 'waste':
      return 'the edge';
  }
}
