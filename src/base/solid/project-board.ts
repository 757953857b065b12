import type { Vec2 } from '../../vocabulary/geometry';
import type { Board } from '../../vocabulary/shape';
import { hull, isConvex } from '../polygon';
import { type LocalView, SQUARE_ON } from './project-local';
import { type Ring, ringsOf } from './rings';

/**
 * Seen square on, a board shows the furthest that its sides stand out anywhere between back and face; otherwise null. Where two
 * neighbours stand out furthest at different heights, the small notch at their corner is not shown.
 */
export function boardOutline(board: Board, view: LocalView): Vec2[] | null {
  if (Math.abs(view.toward[2]) < SQUARE_ON) return null;
  const rings = ringsOf(board);
  const points = silhouette(board, rings).map(([a, b]) => view.onPaper(a, b, board.thickness));
  return view.toward[2] > 0 ? points : points.reverse();
}

function silhouette(board: Board, rings: readonly Ring[]): readonly Vec2[] {
  if (rings.every((ring) => ring.points === rings[0].points)) return rings[0].points;
  return isConvex(board.outline) ? hull(rings.flatMap((ring) => ring.points)) : furthest(board, rings);
}

/** Seen square on, the arris round the near face where edges slope or are moulded; otherwise none. */
export function boardLines(board: Board, view: LocalView): Vec2[][] {
  if (Math.abs(view.toward[2]) < SQUARE_ON) return [];
  const rings = ringsOf(board);
  const near = view.toward[2] > 0 ? rings[rings.length - 1] : rings[0];
  const n = near.points.length;
  const lines: Vec2[][] = [];
  for (let i = 0; i < n; i++) {
    const [a, b] = [near.points[i], near.points[(i + 1) % n]];
    lines.push([view.onPaper(a[0], a[1], near.out), view.onPaper(b[0], b[1], near.out)]);
  }
  return lines;
}

/** Each side as far out as any ring has it, made to meet its neighbours there. */
function furthest(board: Board, rings: readonly Ring[]): readonly Vec2[] {
  const { outline } = board;
  const n = outline.length;
  const growth = outline.map((a, i) => {
    const b = outline[(i + 1) % n];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const [nx, ny] = [(b[1] - a[1]) / length, (a[0] - b[0]) / length];
    return Math.max(...rings.map((ring) => (ring.points[i][0] - a[0]) * nx + (ring.points[i][1] - a[1]) * ny));
  });
  const widest: Board = {
    ...board,
    holes: [],
    edges: growth.map((g) => ({ kind: 'moulded', steps: [[0, g]] })),
  };
  return ringsOf(widest)[0].points;
}
