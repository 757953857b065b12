import type { BarPiece, BarProblem, CutProblem } from '../../vocabulary/cut-problem';
import type { Issue } from '../../vocabulary/result';
import { tooMany } from './limits';

/** What no field shows alone: too much in all, stock that is all trim, ends that cross. */
export function crossIssues(problem: CutProblem): readonly Issue[] {
  const much = tooMany(problem.pieces, '/pieces');
  const crossed = problem.kind === 'bars' ? crossedEnds(problem) : [];
  return [...(much ? [much] : []), ...allTrim(problem), ...crossed];
}

function allTrim({ stock, trim }: CutProblem): readonly Issue[] {
  return stock.flatMap((one, i): Issue[] => {
    const off = 2 * (one.trim ?? trim);
    const shortest = 'width' in one ? Math.min(one.length, one.width) : one.length;
    if (shortest > off) return [];
    return [{ path: `/stock/${i}`, message: `the trim, ${off} in all, leaves nothing of ${shortest}` }];
  });
}

/** A piece that is shorter along one of its edges than nothing. */
function crossedEnds({ section, pieces }: BarProblem): readonly Issue[] {
  if (section === undefined) return [];
  return pieces.flatMap((piece, i): Issue[] => {
    const least = shortestEdge(piece, section.width, section.thickness);
    if (least > 0) return [];
    const message = `with these ends a piece of ${piece.length} is ${Math.abs(least)} too short along one edge of the section`;
    return [{ path: `/pieces/${i}/ends`, message }];
  });
}

/** The shortest of a piece's four long edges, mm: overall, less what both planes take off there. */
function shortestEdge({ length, ends }: BarPiece, width: number, thickness: number): number {
  if (ends === undefined) return length;
  const corners = [0, width].flatMap((u) => [0, thickness].map((v) => [u, v] as const));
  const [start, end] = ends.map(([across, out]) => corners.map(([u, v]) => across * u + out * v));
  const foremost = Math.min(...start!);
  const last = Math.max(...end!);
  return Math.min(...corners.map((_, k) => length + (end![k]! - last) - (start![k]! - foremost)));
}

/** What can be planned all the same, but is likely a slip. */
export function crossWarnings(problem: CutProblem, priced: boolean): readonly Issue[] {
  const { kerf, pieces } = problem;
  const thin = pieces.flatMap((piece, i): Issue[] => {
    const least = 'width' in piece ? Math.min(piece.length, piece.width) : piece.length;
    return kerf > least
      ? [{ path: `/pieces/${i}`, message: `the kerf, ${kerf}, is wider than the piece, ${least}` }]
      : [];
  });
  const by = problem.kind === 'bars' ? 'length, and the cost is in mm' : 'area, and the cost is in mm²';
  const free = priced ? [] : [{ path: '/stock', message: `no stock has a price: planned by ${by}` }];
  return [...free, ...thin];
}
