import type { Carry, JoinMark } from '../vocabulary/job';
import type { PartDraft } from '../vocabulary/part';
import type { FrameTimber, Rod, RodRun } from '../vocabulary/rod';
import type { Bundle } from './bundles';
import { chainOf, type Places } from './chain';
import { fewest, type Parting } from './fewest';
import { breachesOf, type Load } from './limits';
import { type LyingByRun, layAlong, withoutMadeAnew } from './lying';
import type { Shorter } from './stretch';

/** A stretch may turn out lighter than estimated by so much, noggins between other studs, mostly. Found by trial over random units. */
const TRUE_TO = 0.02;

/** Tries before what was found so far is taken: each makes the whole unit once. */
const MOST_TRIES = 8;

interface Laid {
  readonly rod: Rod;
  readonly drafts: readonly PartDraft[];
}

interface Made {
  readonly rod: Rod;
  readonly bundles: readonly Bundle[];
}

/** How a unit is made, for one that may be taken apart. */
export interface Workshop<L extends Laid, M extends Made> {
  /** The unit laid out, with its joins at the marks. */
  layOut(marks: readonly JoinMark[]): L;
  /** Its parts made, and said when they are fitted. */
  make(laid: L): M;
  weigh(draft: PartDraft): number;
  /** Where a run may be joined, and how far two joins of one run must be from one another, mm: by the face of the frame's timber, two of which stand at a join. */
  places(run: RodRun, face: number): ReturnType<Places>;
  apart(face: number): number;
  /** As in `Shorter`; the least length behind which a carcass of that timber's face stands. */
  leastBehind(face: number): number;
  studsByCentres(from: number, to: number, needed: readonly number[], timber: FrameTimber): number;
}

/** A way of taking the unit apart, made and weighed. */
interface Tried<M> {
  readonly made: M;
  readonly sections: number;
  readonly over: number;
}

/**
 * Makes a unit in the fewest sections that keep within the job's limits. Weights are first estimated from the unit laid out in one piece; what
 * is then made is weighed, and where a section turns out over its limit, the choice is made again knowing it.
 */
export function inFewestSections<L extends Laid, M extends Made>(shop: Workshop<L, M>, carry: Carry): M {
  const whole = shop.layOut([]);
  const { timber, carcass } = whole.rod;
  const shorter: Shorter = {
    studs: (from, to, needed) => shop.studsByCentres(from, to, needed, timber),
    leastBehind: carcass ? shop.leastBehind(carcass.face) : 0,
  };
  const choosing = (lying: LyingByRun): ((known: ReadonlyMap<string, Load>) => Parting) => {
    const chain = chainOf(whole.rod, lying, (run) => behindPillars(shop.places(run, timber.face)));
    return (known) => fewest(chain, carry, TRUE_TO, known, shop.apart(timber.face), shorter);
  };
  const make = ({ marks, keys }: Parting, known: Map<string, Load>): Tried<M> => {
    const made = shop.make(marks.length === 0 ? whole : shop.layOut(marks));
    // Sections come in the order of their stretches; one of which nothing is made is left out of the list.
    const order = [...new Set(made.rod.runs.filter((run) => run.sound).flatMap((run) => run.sections))];
    let over = 0;
    for (const { id, size, weightKg } of made.bundles) {
      const load = { ...size, weightKg };
      known.set(keys[order.indexOf(id)], load);
      if (breachesOf(load, carry).some((breach) => breach.byCutting)) over++;
    }
    return { made, sections: keys.length, over };
  };
  const lying = layAlong(whole.rod, whole.drafts, shop.weigh);
  const choose = choosing(lying);
  const known = new Map<string, Load>();
  let parting = choose(known);
  let tried = make(parting, known);
  let best = tried;
  let tries = 1;
  while (tried.over > parting.over && tries++ < MOST_TRIES) {
    parting = choose(known);
    tried = make(parting, known);
    if (tried.over < best.over) best = tried;
  }
  const least = withoutMadeAnew(lying, whole.rod.runs);
  if (!least) return best.made;
  // What is made anew once there are joins may lie otherwise than in the whole: without it, could fewer do? What was weighed so far was
  // weighed with it, where other joins put it: so this begins with nothing known.
  const challenge = choosing(least);
  const found = new Map<string, Load>();
  while (tries++ < MOST_TRIES) {
    parting = challenge(found);
    if (parting.keys.length >= best.sections || parting.over > best.over) break;
    tried = make(parting, found);
    if (tried.over <= best.over) best = tried;
  }
  return best.made;
}

/** Behind a pillar; under a strip at the edge of a bay only in a run that has no pillar between its ends. */
function behindPillars(places: ReturnType<Places>): ReturnType<Places> {
  const pillars = places.filter((place) => place.behind === 'pillar');
  return pillars.length > 0 ? pillars : places;
}
