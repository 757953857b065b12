import type { LpSolver } from '../lp';
import type { Scaled } from '../sheets/scaled';
import { attainable } from './attainable';
import { ending } from './ending';
import { type Generation, generate, type Pause, TRIES } from './generate';
import type { Pattern } from './pattern';
import { coverOf, type Residual, without, worthIn } from './residual';

/** Rounds of generating at each level of a dive: patterns for the whole problem seldom suit what is left of it. */
const ROUNDS = 2;
/** A pattern used almost once by the relaxation is taken without a second thought. */
const ALMOST = 0.95;
/** A large job is cut in about so many gulps. */
const PARTS = 12;
/** Patterns at hand worth less than this, as a part of their price, are not thought of: they seldom come in, and cost time. By trial. */
const USEFUL = 0.8;
/**
 * What needs no more sheets than this is tried with every choice of sheets, each as a small tree; where that ends in nothing the dive does too, for to
 * take patterns one by one would find no more.
 */
const FEW_SHEETS = 4.4;

/**
 * Takes patterns one by one, those that the relaxation uses most, and generates again for what is left: a dive (Sadykov, Vanderbeck,
 * Pessoa, Tahiri & Uchoa, "Primal heuristics for branch and price", INFORMS Journal on Computing 31, 2019). Undefined when it would not
 * end below the limit. `shaken`: how far chance may prefer another pattern, as a part of its amount.
 */
export function* dive(
  scaled: Scaled,
  start: Residual,
  by: Generation,
  lp: LpSolver,
  limit: () => number,
  shaken: number,
): Generator<Pause, readonly Pattern[] | undefined> {
  const taken: Pattern[] = [];
  let residual = start;
  let cost = 0;
  let worths = by.guess;
  while (residual.wanted.some((n) => n > 0)) {
    const cover = coverOf(scaled, residual, lp);
    try {
      for (const pattern of by.pool.patterns)
        if (worthIn(residual, pattern, worths) >= USEFUL * pattern.price) cover.add(pattern);
      yield* generate(cover, residual, by, { rounds: ROUNDS, first: shaken > 0 ? by.chance.below(TRIES.length) : 0 });
      const relaxed = cover.relax();
      if (!relaxed || relaxed.missing > 1e-6 || attainable(scaled, cost + relaxed.cost) >= limit() - 1e-9)
        return undefined;
      const sheets = relaxed.amounts.reduce((sum, { amount }) => sum + amount, 0);
      if (sheets <= FEW_SHEETS && limit() < Number.POSITIVE_INFINITY) {
        let best: readonly Pattern[] | undefined;
        for (let below = limit() - cost; ; below = costOf(best)) {
          const end = yield* ending(scaled, residual, by, lp, { least: relaxed.cost, below });
          if (!end) return best && [...taken, ...best];
          best = end;
        }
      }
      const next = chosen(relaxed.amounts, residual, by, shaken);
      worths = cover.worths;
      taken.push(...next);
      cost += next.reduce((sum, { price }) => sum + price, 0);
      residual = without(residual, next);
    } finally {
      cover.dispose();
    }
  }
  return cost < limit() - 1e-9 ? taken : undefined;
}

const costOf = (patterns: readonly Pattern[]): number => patterns.reduce((sum, { price }) => sum + price, 0);

function chosen(
  amounts: readonly { readonly pattern: Pattern; readonly amount: number }[],
  residual: Residual,
  { chance }: Generation,
  shaken: number,
): readonly Pattern[] {
  const sheets = amounts.reduce((sum, { amount }) => sum + amount, 0);
  const liked = amounts
    .map(({ pattern, amount }) => ({
      pattern,
      amount,
      liking: amount >= ALMOST ? Number.POSITIVE_INFINITY : amount * (1 + shaken * chance.part()),
    }))
    .sort((a, b) => b.liking - a.liking);
  const next: Pattern[] = [];
  let left = residual;
  for (const { pattern, amount, liking } of liked) {
    const often = Math.floor(amount + 1 - ALMOST);
    if (next.length > 0 && liking < Number.POSITIVE_INFINITY && next.length >= sheets / PARTS) break;
    for (let c = 0; c < Math.max(1, often); c += 1) {
      if (next.length > 0 && !fits(pattern, left)) break;
      next.push(pattern);
      left = without(left, [pattern]);
    }
  }
  return next;
}

const fits = ({ sheet, counts }: Pattern, { wanted, sheets }: Residual): boolean =>
  sheets[sheet] > 0 && counts.every((n, k) => n <= wanted[k]);
