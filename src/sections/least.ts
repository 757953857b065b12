import type { Carry, JoinMark } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';
import type { Rod, RodRun } from '../vocabulary/rod';
import { chainOf, type Places } from './chain';
import { fewest } from './fewest';
import { breachesOf, type Load } from './limits';
import { loadsOf } from './sections';

/** Tries before what was found so far is taken: each makes the whole unit once. */
const MOST_TRIES = 5;

interface Made {
  readonly rod: Rod;
  readonly parts: readonly Part[];
}

/**
 * Makes a unit in the fewest sections that keep within the job's limits. Weights are first estimated from the unit made in one piece; what is
 * then made is weighed, and where a section turns out over its limit, the choice is made again knowing it.
 * @param make the unit with its joins at the marks.
 * @param places where a run may be joined. @param apart how far two joins of one run must be from one another, mm. Both by the face of the
 * frame's timber, two of which stand at a join.
 */
export function inFewestSections<M extends Made>(
  make: (marks: readonly JoinMark[]) => M,
  carry: Carry,
  places: (run: RodRun, face: number) => ReturnType<Places>,
  apart: (face: number) => number,
): M {
  const whole = make([]);
  const { face } = whole.rod.timber;
  const chain = chainOf(whole.rod, whole.parts, (run) => places(run, face));
  const known = new Map<string, Load>();
  let best: M | undefined;
  let fewestOver = Infinity;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const { marks, keys, over } = fewest(chain, carry, known, apart(face));
    const made = marks.length === 0 ? whole : make(marks);
    const loads = loadsOf(made.parts, made.rod);
    const found = [...loads.values()].filter((load) => breachesOf(load, carry).some((b) => b.byCutting)).length;
    if (found < fewestOver) {
      best = made;
      fewestOver = found;
    }
    if (found <= over) break;
    remember(keys, loads, known);
  }
  return best ?? whole;
}

/** Sections come in the order of their stretches; one of which nothing is made is left out of the list. */
function remember(keys: readonly string[], loads: ReadonlyMap<string, Load>, known: Map<string, Load>): void {
  for (const [id, load] of loads) known.set(keys[Number(id.slice(1)) - 1], load);
}
