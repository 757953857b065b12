import type { LpSolver } from '../lp';
import type { Scaled } from '../sheets/scaled';
import { type Generation, generate, type Pause } from './generate';
import type { Pattern } from './pattern';
import { coverOf, type Residual, without } from './residual';

/** Rounds of generating for each choice of sheets and after each sheet that is taken. */
const ROUNDS = 4;
/** Patterns tried as the next one. */
const WIDTH = 3;
/** Choices of sheets tried. */
const CHOICES = 6;
const LOOKED_AT = 5000;
/** The end of a job costs about so many times its relaxation. By trial. */
const LIKELY = 1.05;

/**
 * The end of a dive: what is left needs few sheets, and which they are decides. Every choice of sheets that costs no less than the relaxation
 * says, and less than the limit, is tried, beginning with what such an end mostly costs; each as a small tree of patterns.
 */
export function* ending(
  scaled: Scaled,
  residual: Residual,
  by: Generation,
  lp: LpSolver,
  between: { readonly least: number; readonly below: number },
): Generator<Pause, readonly Pattern[] | undefined> {
  for (const sheets of choices(scaled, residual, between.least, between.below)) {
    const found = yield* packed(scaled, { wanted: residual.wanted, sheets }, by, lp);
    if (found) return found;
  }
  return undefined;
}

/** Everything on these sheets, none of which need be used. */
function* packed(
  scaled: Scaled,
  residual: Residual,
  by: Generation,
  lp: LpSolver,
): Generator<Pause, readonly Pattern[] | undefined> {
  if (residual.wanted.every((n) => n === 0)) return [];
  const cover = coverOf(scaled, residual, lp);
  let next: readonly Pattern[];
  try {
    for (const pattern of by.pool.patterns) cover.add(pattern);
    yield* generate(cover, residual, by, { rounds: ROUNDS, untilWhole: true });
    const relaxed = cover.relax();
    if (!relaxed || relaxed.missing > 1e-6) return undefined;
    next = [...relaxed.amounts]
      .sort((a, b) => b.amount - a.amount)
      .slice(0, WIDTH)
      .map(({ pattern }) => pattern);
  } finally {
    cover.dispose();
  }
  for (const pattern of next) {
    const rest = yield* packed(scaled, without(residual, [pattern]), by, lp);
    if (rest) return [pattern, ...rest];
  }
  return undefined;
}

/** How many of each sheet, for each choice. Sheets that cost nothing are in every one. */
function choices({ kinds, sheets }: Scaled, residual: Residual, least: number, below: number): readonly number[][] {
  const area = residual.wanted.reduce((sum, n, k) => sum + n * kinds[k].length * kinds[k].width, 0);
  const found: { counts: number[]; cost: number }[] = [];
  const counts = sheets.map(({ price }, s) => (price > 0 ? 0 : residual.sheets[s]));
  let looked = 0;
  const go = (s: number, cost: number, room: number): void => {
    looked += 1;
    if (looked > LOOKED_AT) return;
    if (s === sheets.length) {
      if (cost > least - 1e-9 && room >= area) found.push({ counts: [...counts], cost });
      return;
    }
    const { price, length, width } = sheets[s];
    if (price <= 0) {
      go(s + 1, cost, room + counts[s] * length * width);
      return;
    }
    for (let n = 0; n <= residual.sheets[s] && cost + n * price < below - 1e-9; n += 1) {
      counts[s] = n;
      go(s + 1, cost + n * price, room + n * length * width);
    }
    counts[s] = 0;
  };
  go(0, 0, 0);
  return found
    .sort((a, b) => Math.abs(a.cost - LIKELY * least) - Math.abs(b.cost - LIKELY * least))
    .slice(0, CHOICES)
    .map((each) => each.counts);
}
