import type { BarPlan } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, BarTurn, Slant } from '../../../src/vocabulary/cut-problem';

/** The plane of an end as x = at + perAcross·u + perOut·v. */
type Plane = readonly [at: number, perAcross: number, perOut: number];

/** Both planes of a piece that lies with its foremost point at 0, turned or not, worked out from the words of `BarTurn`. */
export function planesOf(problem: BarProblem, piece: number, turn: BarTurn | undefined): readonly [Plane, Plane] {
  const { length, ends } = problem.pieces[piece];
  const [w, t] = [problem.section?.width ?? 0, problem.section?.thickness ?? 0];
  const [left, right]: readonly [Slant, Slant] = ends ?? [
    [0, 0],
    [0, 0],
  ];
  const low = (s: Slant): number => Math.min(0, s[0] * w) + Math.min(0, s[1] * t);
  const high = (s: Slant): number => Math.max(0, s[0] * w) + Math.max(0, s[1] * t);
  const l: Plane = [-low(left), ...left];
  const r: Plane = [length - high(right), ...right];
  const rolled = ([p, a, o]: Plane): Plane => [p + a * w + o * t, -a, -o];
  // The bar is swung or tumbled about its middle.
  const swung = ([p, a, o]: Plane): Plane => [length - (p + a * w), a, -o];
  const tumbled = ([p, a, o]: Plane): Plane => [length - (p + o * t), -a, o];
  if (turn === 'rolled') return [rolled(l), rolled(r)];
  if (turn === 'swung') return [swung(r), swung(l)];
  if (turn === 'tumbled') return [tumbled(r), tumbled(l)];
  return [l, r];
}

/** How far from a piece's foremost point that of the next must be, by the four corners of the section. */
export function pitch(problem: BarProblem, a: readonly [Plane, Plane], b: readonly [Plane, Plane]): number {
  const [w, t] = [problem.section?.width ?? 0, problem.section?.thickness ?? 0];
  const steep = ([, p, o]: Plane): number => Math.sqrt(1 + p * p + o * o);
  const kerf = problem.kerf * Math.max(steep(a[1]), steep(b[0]));
  const corners = [0, w].flatMap((u) => [0, t].map((v) => [u, v] as const));
  const x = ([p, pa, po]: Plane, u: number, v: number): number => p + pa * u + po * v;
  return Math.max(...corners.map(([u, v]) => x(a[1], u, v) - x(b[0], u, v) + kerf));
}

/** What is wrong with a plan. */
export function faultsOf(problem: BarProblem, plan: BarPlan): readonly string[] {
  const faults: string[] = [];
  const left = problem.pieces.map(({ quantity }) => quantity);
  const stock = problem.stock.map(({ count }) => count ?? Number.POSITIVE_INFINITY);
  let cost = 0;
  const barOfSet = new Map<string, number>();
  plan.bars.forEach((bar, b) => {
    const { length, price, trim = problem.trim } = problem.stock[bar.stock];
    cost += price;
    stock[bar.stock]--;
    let end = trim;
    bar.pieces.forEach((placed, i) => {
      const piece = problem.pieces[placed.piece];
      left[placed.piece]--;
      if (placed.length !== piece.length) faults.push('another length');
      if (placed.turn && !problem.section?.turns.includes(placed.turn)) faults.push('turned as it may not be');
      if (piece.together !== undefined) {
        if ((barOfSet.get(piece.together) ?? b) !== b) faults.push('a set parted');
        barOfSet.set(piece.together, b);
      }
      if (placed.at < trim - 1e-6) faults.push('before the trim');
      const before = bar.pieces[i - 1];
      if (before) {
        const apart = pitch(
          problem,
          planesOf(problem, before.piece, before.turn),
          planesOf(problem, placed.piece, placed.turn),
        );
        if (placed.at - before.at < apart - 1e-6) faults.push(`no kerf between: ${placed.at - before.at} < ${apart}`);
      }
      end = placed.at + placed.length;
      if (end > length - trim + 1e-6) faults.push('beyond the trim');
    });
    if (
      bar.offcut &&
      (bar.offcut.at < end + problem.kerf - 1e-6 || bar.offcut.at + bar.offcut.length > length - trim + 1e-6)
    )
      faults.push('offcut where something lies');
  });
  for (const { piece, quantity } of plan.unplaced) left[piece] -= quantity;
  if (left.some((n) => n !== 0)) faults.push(`pieces not once each: ${left.join()}`);
  if (stock.some((n) => n < 0)) faults.push('more bars than there are');
  if (Math.abs(cost - plan.cost) > 1e-6) faults.push('another cost');
  if (plan.bound > plan.cost + 1e-9) faults.push('bound above cost');
  if (plan.proven !== (plan.bound === plan.cost)) faults.push('proven without meeting the bound');
  return faults;
}
