import { mouldedEdge, SQUARE_EDGE } from '../../base/profiles';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Cutter } from '../../vocabulary/book';
import type { Finding } from '../../vocabulary/finding';
import type { Vec2 } from '../../vocabulary/geometry';
import type { EdgeWork } from '../../vocabulary/part';
import type { RodRun, RunEnd } from '../../vocabulary/rod';
import type { BoardEdge } from '../../vocabulary/shape';

/** The edge that a cutter leaves on stuff of that thickness; `fault` in words where it can't be run along it. */
export function edgeBy(
  cutter: Cutter,
  thickness: number,
): { readonly edge: BoardEdge; readonly fault?: undefined } | { readonly edge?: undefined; readonly fault: string } {
  try {
    return { edge: mouldedEdge(cutter, thickness) };
  } catch (error) {
    return { fault: (error as Error).message };
  }
}

/** An end that is seen from its side: the moulding goes round it. Not at a flap, which lies against it. */
const shows = (end: RunEnd, butted: boolean): boolean =>
  (end.kind === 'free' && !end.flap) ||
  (end.kind === 'corner' && (end.toReturn || (butted && end.through && end.deflectionDeg > 0)));

/** Edges of one length of a top, side by side of its outline (y back from the front edge), and what is worked on them. */
export function edgesOf(
  outline: readonly Vec2[],
  moulded: { readonly edge: BoardEdge; readonly cutter: Cutter } | undefined,
  run: RodRun,
  ends: { readonly left: boolean; readonly right: boolean; readonly butted: boolean },
): { readonly edges: readonly BoardEdge[]; readonly work: readonly EdgeWork[] } {
  if (!moulded) return { edges: outline.map(() => SQUARE_EDGE), work: [] };
  const depth = Math.max(...outline.map((p) => p[1]));
  const named = outline.map((p, i): string => {
    const q = outline[(i + 1) % outline.length];
    if (Math.abs(p[1]) < SAME_LENGTH && Math.abs(q[1]) < SAME_LENGTH) return 'front edge';
    if (Math.abs(p[1] - depth) < SAME_LENGTH && Math.abs(q[1] - depth) < SAME_LENGTH) return '';
    const side = q[1] > p[1] ? 'right' : 'left';
    return ends[side] && shows(run[side], ends.butted) ? `${side} end` : '';
  });
  return {
    edges: named.map((name) => (name ? moulded.edge : SQUARE_EDGE)),
    work: named.flatMap((edge): EdgeWork[] => (edge ? [{ edge, work: 'moulded', cutter: moulded.cutter.name }] : [])),
  };
}

export const unfit = (cutter: Cutter, fault: string, limit: number): Finding => ({
  severity: 'stop',
  rule: 'top-edge-unfit',
  subject: { path: '/unit/elements/top/edge' },
  limit,
  message: `${cutter.name} can't be run along the top: ${fault}.`,
  source: 'geometry of the cutter',
  remedy: 'Choose another cutter or a thicker top. The edge stays square.',
});

/** A moulding that stops against the front of a butted length would need scribing into it: inside corners are mitred instead. */
export const mitredInside = (run: string): Finding => ({
  severity: 'note',
  rule: 'top-edge-mitred',
  subject: { run, path: '/unit/elements/top/corner' },
  message: `The front edge of the top is moulded, so the inside corner to the right of run ${run} is mitred, not butted.`,
  source: 'geometry of the corner',
  remedy: 'Nothing to do; or leave the edge square to have it butted.',
});
