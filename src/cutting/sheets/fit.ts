import type { Chance } from './chance';
import { ACROSS, ALONG, DEPTH, LENGTH, NONE, ROOT, SHIFT, WIDTH, WITHIN } from './fields';
import type { Forest } from './forest';
import { isFree } from './scaled';

/** How a place for a piece is judged. */
export type Criterion = 'squares' | 'area' | 'short' | 'long';

/** How one looks for a place. */
export interface Look {
  readonly criterion: Criterion;
  /** How often one looks away from a place. */
  readonly blink: number;
  /** How often the piece is first cut off the other way than the one that leaves most in one. */
  readonly flip: number;
  /** The way in which sheets are first cut into strips, where stages or cuts are limited; absent: as it comes. */
  readonly strips?: number;
}

/** Finds the place for a piece among all that is left over. What was found last stands in the fields. */
export interface Fit {
  node: number;
  turned: boolean;
  first: number;
  /** Places looked at since the beginning: a measure of work. */
  looked: number;
  /** `from`: the first of what is left over that is looked at. */
  find(kind: number, look: Look, from?: number): boolean;
}

/** Work besides looking at places, as so many of them. */
const FIXED = 40;

export function fitOf(forest: Forest, chance: Chance): Fit {
  const { scaled, memory: M, at } = forest;
  const { kinds, stages, trimsFree, longestCut } = scaled;
  const free = isFree(scaled);
  let untilBlink = 0;

  /** Looks away now and then, so that the best place is not always taken (Christiaens & Vanden Berghe 2020). */
  const nextBlink = (blink: number): number =>
    blink > 0 ? 1 + Math.floor(Math.log(1 - chance.part()) / Math.log(1 - blink)) : -1;

  /** Whether the cuts that such a piece needs may be made. */
  function allowed(p: number, first: number, a: number, b: number): boolean {
    const length = M[p + LENGTH];
    const width = M[p + WIDTH];
    const across = first === ACROSS;
    const second = across ? b < width : a < length;
    const isFirst = across ? a < length : b < width;
    let stage = M[p + DEPTH];
    if (!isFirst && !second) return stage <= stages;
    if (!isFirst) return allowed(p, across ? ALONG : ACROSS, a, b);
    const within = M[p + WITHIN] === first;
    if (!within) {
      stage++;
      if ((across ? width : length) > longestCut) return false;
    }
    if (second) {
      if ((across ? a : b) > longestCut) return false;
      stage++;
    }
    return stage <= stages || (trimsFree && stage - 1 <= stages && (second || !within));
  }

  const fit: Fit = {
    node: NONE,
    turned: false,
    first: ACROSS,
    looked: 0,
    find(kind, { criterion, blink, flip, strips = NONE }, from = 0) {
      const { length, width, turns, set } = kinds[kind];
      const count = M[at.lefts];
      const list = at.lefts + 1;
      const { lengths, widths } = at;
      const root = set < 0 ? NONE : M[at.setRoot + set];
      if (untilBlink <= 0) untilBlink = nextBlink(blink);
      let least = Number.POSITIVE_INFINITY;
      let bestNode = NONE;
      let bestTurned = false;
      let bestFirst = ACROSS;
      const squares = criterion === 'squares';
      const area = criterion === 'area';
      const short = criterion === 'short';
      for (let turn = 0; turn < (turns ? 2 : 1); turn++) {
        const a = turn === 0 ? length : width;
        const b = turn === 0 ? width : length;
        for (let i = from; i < count; i++) {
          const r = M[lengths + i] - a;
          if (r < 0) continue;
          const t = M[widths + i] - b;
          if (t < 0) continue;
          if (--untilBlink === 0) {
            untilBlink = nextBlink(blink);
            continue;
          }
          // What is left over, cut off first across or first along.
          const acrossLong = r * (b + t);
          const acrossShort = a * t;
          const alongLong = (a + r) * t;
          const alongShort = r * b;
          const across = acrossLong * acrossLong + acrossShort * acrossShort;
          const along = alongLong * alongLong + alongShort * alongShort;
          let first = across >= along ? ACROSS : ALONG;
          if (!free || root !== NONE || strips !== NONE) {
            const p = M[list + i] << SHIFT;
            if (root !== NONE && M[p + ROOT] !== root) continue;
            if (strips !== NONE && (M[p + DEPTH] === 0 || (M[p + DEPTH] === 1 && M[p + WITHIN] === strips)))
              first = strips;
            if (!allowed(p, first, a, b)) {
              first = first === ACROSS ? ALONG : ACROSS;
              if (!allowed(p, first, a, b)) continue;
            }
          }
          const whole = (a + r) * (b + t);
          const score = squares
            ? whole * whole - (first === ACROSS ? across : along)
            : area
              ? whole
              : short
                ? Math.min(r, t)
                : Math.max(r, t);
          if (score < least) {
            least = score;
            bestNode = M[list + i];
            bestTurned = turn === 1;
            bestFirst = first;
          }
        }
        fit.looked += count - from + FIXED;
      }
      if (flip > 0 && bestNode !== NONE && chance.part() < flip) {
        const other = bestFirst === ACROSS ? ALONG : ACROSS;
        if (free || allowed(bestNode << SHIFT, other, bestTurned ? width : length, bestTurned ? length : width))
          bestFirst = other;
      }
      fit.node = bestNode;
      fit.turned = bestTurned;
      fit.first = bestFirst;
      return bestNode !== NONE;
    },
  };
  return fit;
}
