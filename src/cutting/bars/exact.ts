import type { LpSolver, Master, Relaxed } from '../lp';
import type { Ledger } from './ledger';
import type { Rest } from './pack';
import type { Pattern, Task } from './task';

/** A whole amount, but for the solver's rounding. */
const NEARLY = 1e-6;

/** What leaving out a piece costs, as often as the dearest bar. */
const LEFT_OUT = 10;

/** Patterns that the solver has from the start; and that enter at once. */
const FIRST_LISTED = 1200;
const MOST_ENTERED = 150;

/** What a part of the tree allows: of each source from so many to so many, of some patterns no more and no less than so many. */
interface Branch {
  readonly bars: readonly (readonly [least: number, most: number])[];
  readonly most: ReadonlyMap<number, number>;
  readonly least: ReadonlyMap<number, number>;
  /** How often the way here went against what the relaxation said. */
  readonly against: number;
}

/**
 * Branch and bound over a complete list of patterns: first over how many bars are taken of each source, then over patterns. Tells what it
 * finds; true when it ends, and nothing over these patterns is better than what the ledger has.
 */
export function* exactChoice(
  task: Task,
  { left, stock }: Rest,
  patterns: readonly Pattern[],
  ledger: Ledger,
  lp: LpSolver,
  found: (bars: readonly Pattern[]) => void,
): Generator<void, boolean> {
  const { kinds, sources } = task;
  const infinite = Number.POSITIVE_INFINITY;
  const master: Master = lp([
    ...left.map((lower) => ({ lower, upper: infinite })),
    ...stock.map((upper) => ({ lower: 0, upper })),
  ]);
  // So that there always is an answer that says what would help: a piece left out costs more than any bar.
  const dearest = sources.reduce((most, { price }) => Math.max(most, price), 1);
  for (let kind = 0; kind < kinds.length; kind++) master.addColumn(LEFT_OUT * dearest, [kind], [1]);
  // Long lists slow the solver down: most patterns wait outside until they would gain.
  const listed: Pattern[] = [];
  const waiting = [...patterns];
  const enter = ({ source, times }: Pattern): void => {
    listed.push({ source, times });
    const rows = times.map(([kind]) => kind);
    master.addColumn(sources[source].price, [...rows, kinds.length + source], [...times.map(([, n]) => n), 1]);
  };
  for (const pattern of waiting.splice(0, FIRST_LISTED)) enter(pattern);
  const relax = function* (): Generator<void, Relaxed | undefined> {
    for (;;) {
      const relaxed = master.relax();
      yield;
      if (!relaxed) {
        // More bars of a source may be asked for than the patterns here have: those that wait may do.
        if (waiting.length === 0) return undefined;
        for (const pattern of waiting.splice(0)) enter(pattern);
        continue;
      }
      const { duals } = relaxed;
      let entered = 0;
      for (let i = waiting.length - 1; i >= 0 && entered < MOST_ENTERED; i--) {
        const { source, times } = waiting[i];
        let gain = duals[kinds.length + source] - sources[source].price;
        for (const [kind, n] of times) gain += n * duals[kind];
        if (gain <= ledger.fuzz * 0.01) continue;
        enter(waiting[i]);
        waiting[i] = waiting[waiting.length - 1];
        waiting.pop();
        entered++;
      }
      if (entered === 0) return relaxed;
    }
  };
  const open: Branch[] = [
    { bars: stock.map((most) => [0, most] as const), most: new Map(), least: new Map(), against: 0 },
  ];
  let isWhole = true;
  let capped: ReadonlyMap<number, number> = new Map();
  try {
    while (open.length > 0 && !ledger.done()) {
      const branch = takeNext(open);
      let spent = 0;
      const need = [...left];
      const taken = sources.map(() => 0);
      for (const [pattern, n] of branch.least) {
        const { source, times } = listed[pattern];
        spent += sources[source].price * n;
        taken[source] += n;
        for (const [kind, k] of times) need[kind] -= k * n;
      }
      for (let kind = 0; kind < kinds.length; kind++) master.setRow(kind, Math.max(0, need[kind]), infinite);
      for (let s = 0; s < sources.length; s++) {
        const [least, most] = branch.bars[s];
        master.setRow(kinds.length + s, Math.max(0, least - taken[s]), most - taken[s]);
      }
      for (const pattern of capped.keys())
        if (!branch.most.has(pattern)) master.setUpper(kinds.length + pattern, infinite);
      for (const [pattern, n] of branch.most)
        master.setUpper(kinds.length + pattern, n - (branch.least.get(pattern) ?? 0));
      capped = branch.most;
      const relaxed = yield* relax();
      if (!relaxed || ledger.hopeless(spent + relaxed.cost - ledger.fuzz)) continue;
      const amounts = relaxed.amounts.subarray(kinds.length);
      const totals = [...taken];
      let nearest = -1;
      for (let i = 0; i < amounts.length; i++) {
        totals[listed[i].source] += amounts[i];
        const part = amounts[i] % 1;
        if (part > NEARLY && part < 1 - NEARLY && (nearest < 0 || part > amounts[nearest] % 1)) nearest = i;
      }
      const split = totals.findIndex((sum) => Math.abs(sum - Math.round(sum)) > NEARLY);
      if (split >= 0) {
        const [least, most] = branch.bars[split];
        const whole = Math.floor(totals[split]);
        const isLow = totals[split] - whole < 0.5;
        open.push(
          { ...branch, bars: branch.bars.with(split, [least, whole]), against: branch.against + (isLow ? 0 : 1) },
          { ...branch, bars: branch.bars.with(split, [whole + 1, most]), against: branch.against + (isLow ? 1 : 0) },
        );
      } else if (nearest >= 0) {
        const own = branch.least.get(nearest) ?? 0;
        const whole = own + Math.floor(amounts[nearest]);
        open.push(
          { ...branch, most: new Map([...branch.most, [nearest, whole]]), against: branch.against + 1 },
          { ...branch, least: new Map([...branch.least, [nearest, whole + 1]]) },
        );
      } else if (relaxed.amounts.subarray(0, kinds.length).some((part) => part > NEARLY)) {
        // Something is left out, and nothing to branch on: this part of the tree stays open.
        isWhole = false;
      } else {
        const bars: Pattern[] = [];
        for (let i = 0; i < amounts.length; i++)
          for (let n = Math.round(amounts[i]) + (branch.least.get(i) ?? 0); n > 0; n--) bars.push(listed[i]);
        found(bars);
      }
    }
  } finally {
    // Also when nobody goes on with it.
    master.dispose();
  }
  return isWhole;
}

/** The branch that went against it the least often, of those the one opened last (limited discrepancy search, Harvey & Ginsberg 1995). */
function takeNext(open: Branch[]): Branch {
  let next = open.length - 1;
  for (let i = open.length - 1; i >= 0; i--) if (open[i].against < open[next].against) next = i;
  return open.splice(next, 1)[0];
}
