import { tenth } from '../../base/tenth';

/** The first tenon or dowel is this far from each edge, where the joint is wide enough (common practice, no source). */
const FROM_EDGE = 50;

/** What holds two lengths together across a joint: places along it, mm from its front end. */
export interface Fittings {
  readonly aligned: readonly number[];
  readonly drawn: readonly number[];
}

/**
 * Tenons or dowels evenly along a joint of `width`, no further apart than `spacing`, at least two; draw bolts between them, no further
 * apart than `boltSpacing`, at least two. mm.
 */
export function fittingsOf(width: number, spacing: number, boltSpacing: number): Fittings {
  const edge = Math.min(FROM_EDGE, width / 4);
  const clear = width - 2 * edge;
  const gaps = Math.max(1, Math.ceil(clear / Math.min(spacing, boltSpacing) - 1e-9));
  const gap = clear / gaps;
  const aligned = Array.from({ length: gaps + 1 }, (_, i) => edge + gap * i);
  if (gaps === 1) return { aligned, drawn: [edge + gap / 3, edge + (2 * gap) / 3] };
  // Bolts lie in the middles of gaps: in the first, in the last, and in as few others as their spacing asks for.
  const stride = Math.max(1, Math.floor(boltSpacing / gap + 1e-9));
  const bolts = Math.ceil((gaps - 1) / stride - 1e-9) + 1;
  const drawn = Array.from(
    { length: bolts },
    (_, i) => edge + gap * (Math.round((i * (gaps - 1)) / (bolts - 1)) + 1 / 2),
  );
  return { aligned, drawn };
}

type Alignment = 'tenons' | 'dowels';

const NAMES = { tenons: 'loose tenon', dowels: 'dowel' } as const;

/** The fittings of one joint, counted. */
export const hardwareOf = (
  { aligned, drawn }: Fittings,
  by: Alignment,
): readonly { readonly what: string; readonly count: number }[] => [
  { what: NAMES[by], count: aligned.length },
  { what: 'draw bolt', count: drawn.length },
];

/** What is worked on a length at a joint, in words. `place`: "left end"; places are measured from the front end of the joint. */
export function workOf(place: string, { aligned, drawn }: Fittings, by: Alignment): string {
  const list = (places: readonly number[]): string => places.map(tenth).join(', ');
  const made = by === 'tenons' ? 'mortises for loose tenons' : 'holes for dowels';
  return `${place}: ${made} in the middle of the thickness at ${list(aligned)} from the front end of the joint; from below, recesses for draw bolts at ${list(drawn)}`;
}
