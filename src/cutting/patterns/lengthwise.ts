import type { Kind, Scaled, Sheet } from '../sheets/scaled';

/** What may be done after the first cuts, so that a pattern keeps within the stages allowed. */
export interface Ways {
  /** Pieces lower than their strip are trimmed to it. */
  readonly trimStrips: boolean;
  /** Several pieces of one width may stand one above the other in a strip. */
  readonly stacks: boolean;
  /** Also such as are narrower than the stack. */
  readonly trimStacks: boolean;
  /** What is left over anywhere may be cut up further. */
  readonly further: boolean;
}

/** Undefined: fewer stages than any pattern in here has. */
function waysOf({ stages, trimsFree }: Pick<Scaled, 'stages' | 'trimsFree'>): Ways | undefined {
  const cuts = trimsFree ? stages + 1 : stages;
  if (stages < 2) return undefined;
  return {
    trimStrips: cuts >= 3,
    stacks: stages >= 3,
    trimStacks: cuts >= 4,
    further: stages === Number.POSITIVE_INFINITY,
  };
}

/** A kind as it may lie, seen along the strips: `along` their length, `high` in their height. */
export interface Variant {
  readonly kind: number;
  readonly turned: boolean;
  readonly along: number;
  readonly high: number;
}

/** A sheet parted into strips that run one way; everything below is seen along them. */
export interface Lengthwise {
  readonly sheet: number;
  /** The strips, and so the first cuts, run along the sheet's length. */
  readonly way: 'along' | 'across';
  readonly long: number;
  readonly high: number;
  readonly ways: Ways;
  /** The lowest first. */
  readonly variants: readonly Variant[];
  /** Heights that a strip can take from a piece, ascending. */
  readonly heights: readonly number[];
  /** The least length along the strips that a piece takes. */
  readonly shortest: number;
  readonly longestCut: number;
}

/** Both ways in which each sheet can be parted into strips, where the saw's cut is long enough. */
export function lengthwise(scaled: Scaled): readonly Lengthwise[] {
  const ways = waysOf(scaled);
  if (!ways) return [];
  return scaled.sheets.flatMap((sheet, s) =>
    (['along', 'across'] as const).flatMap((way) => {
      const seen = seenAlong(scaled, sheet, s, way, ways);
      return seen.long <= scaled.longestCut && seen.variants.length > 0 ? [seen] : [];
    }),
  );
}

function seenAlong(
  { kinds, longestCut }: Scaled,
  sheet: Sheet,
  s: number,
  way: 'along' | 'across',
  ways: Ways,
): Lengthwise {
  const along = way === 'along';
  const [long, high] = along ? [sheet.length, sheet.width] : [sheet.width, sheet.length];
  const variants = kinds.flatMap((kind, k) => lying(kind, k, along));
  const fitting = variants
    .filter((v) => v.along <= long && v.high <= Math.min(high, longestCut))
    .sort((a, b) => a.high - b.high);
  const heights = [...new Set(fitting.map((v) => v.high))].sort((a, b) => a - b);
  const shortest = Math.min(...fitting.map((v) => v.along));
  return { sheet: s, way, long, high, ways, variants: fitting, heights, shortest, longestCut };
}

function lying({ length, width, turns }: Kind, kind: number, along: boolean): readonly Variant[] {
  const straight = { kind, turned: false, along: along ? length : width, high: along ? width : length };
  return turns ? [straight, { kind, turned: true, along: straight.high, high: straight.along }] : [straight];
}
