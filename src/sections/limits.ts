import type { Carry } from '../vocabulary/job';
import type { Breach } from '../vocabulary/section';

/** A box to be carried, upright: mm and kg. */
export interface Load {
  readonly length: number;
  readonly depth: number;
  readonly height: number;
  readonly weightKg: number;
}

/** What so many people may lift together, of the sum of what each may lift alone: HSE L23 paragraph 120 for two and three; beyond them no more is counted than three lift. */
const TEAMS = [
  { share: 1, words: 'alone' },
  { share: 2 / 3, words: 'two lift two thirds of the sum' },
  { share: 1 / 2, words: 'three lift half of the sum' },
];
const teamOf = (people: number): (typeof TEAMS)[number] => TEAMS[Math.min(people, TEAMS.length) - 1];

/** What the people of the job may lift together, kg. Not a legal limit. */
export const teamKg = ({ people, liftKg }: Pick<Carry, 'people' | 'liftKg'>): number =>
  liftKg * Math.min(people, TEAMS.length) * teamOf(people).share;

/** By which rule that is known, in words. */
export const teamRule = (people: number): string =>
  `${teamOf(people).words}${people > TEAMS.length ? '; beyond three no more is counted' : ''}`;

/**
 * The longest piece of a width that turns from one corridor into another at a right angle, kept level:
 * min over φ of (a·cos φ + b·sin φ − w)/(sin φ·cos φ); or shoved sideways without turning, when it goes. mm.
 */
export function longestRound(a: number, b: number, width: number): number {
  const length = (phi: number): number =>
    (a * Math.cos(phi) + b * Math.sin(phi) - width) / (Math.sin(phi) * Math.cos(phi));
  // One minimum between 0 and 90°: golden section.
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [1e-4, Math.PI / 2 - 1e-4];
  while (high - low > 1e-7) {
    const [p, q] = [high - golden * (high - low), low + golden * (high - low)];
    if (length(p) < length(q)) high = q;
    else low = p;
  }
  return Math.max(0, length((low + high) / 2), width <= a ? b : 0, width <= b ? a : 0);
}

/** Rules of the way that a load breaks; none when it can be carried in. It is carried level, upright or lying on its back. */
export function breachesOf(load: Load, carry: Carry): readonly Breach[] {
  const { length, depth, height, weightKg } = load;
  return [
    ...over('length in the van', length, carry.vanLength, 'the job: van'),
    ...through('the van', depth, height, carry.vanWidth, carry.vanHeight),
    ...through('the workshop door', depth, height, carry.shopDoorWidth, carry.shopDoorHeight),
    ...through('the narrowest door on the way', depth, height, carry.routeDoorWidth, carry.routeDoorHeight),
    ...round(load, carry),
    ...over(WEIGHT, weightKg, teamKg(carry), `the job: ${carry.people} people; HSE L23 for teams. Not a legal limit`),
  ];
}

/** What a breach of the lifting limit is called. */
export const WEIGHT = 'weight';

/** Less than this is the noise of the last digits, mm or kg. */
const NOISE = 1e-6;

const over = (what: string, value: number, limit: number, source: string): readonly Breach[] =>
  value > limit + NOISE ? [{ what, value, limit, source, byCutting: true }] : [];

/** Through an opening end-on: upright, or on its back. What is nearest to passing is told. */
function through(what: string, depth: number, height: number, wide: number, high: number): readonly Breach[] {
  if (passes(depth, height, wide, high)) return [];
  const ways = [
    [
      { what: `depth through ${what}`, value: depth, limit: wide },
      { what: `height through ${what}`, value: height, limit: high },
    ],
    [
      { what: `height, on its back, through ${what}`, value: height, limit: wide },
      { what: `depth, on its back, through ${what}`, value: depth, limit: high },
    ],
  ].map((way) => way.filter(({ value, limit }) => value > limit + NOISE));
  const worst = (way: (typeof ways)[number]): number => Math.max(0, ...way.map(({ value, limit }) => value - limit));
  const [best] = [...ways].sort((a, b) => worst(a) - worst(b));
  return best.map((breach) => ({ ...breach, source: 'the job: clear sizes', byCutting: false }));
}

const passes = (depth: number, height: number, wide: number, high: number): boolean =>
  (depth <= wide + NOISE && height <= high + NOISE) || (height <= wide + NOISE && depth <= high + NOISE);

function round({ length, depth, height }: Load, { corridorBefore, corridorAfter }: Carry): readonly Breach[] {
  if (corridorBefore === 0 || corridorAfter === 0) return [];
  const limit = longestRound(corridorBefore, corridorAfter, Math.min(depth, height));
  return over('length round the corridor’s turn', length, limit, 'geometry of two corridors at a right angle');
}
