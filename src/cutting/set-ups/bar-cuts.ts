import type { CutBar, PlacedOnBar } from '../../vocabulary/cut-plan';
import type { BarProblem, Slant } from '../../vocabulary/cut-problem';
import type { BarCut, BarCuts } from '../../vocabulary/set-up';
import { kerfFactor } from '../bars/ends';
import { anglesOf, cornersOf, endsOf, liesOver, planeAt, SQUARE, sameSlant, seenOver } from './planes';
import { SAME } from './tree-cuts';
import { needsOf, type Task, type Work } from './work';

/** A cut at a plane: at `at` where u = v = 0. */
interface Plane {
  readonly slant: Slant;
  readonly at: number;
}

/**
 * The cuts of a bar from left to right: its rough end, then each piece to the stop. Where the next piece begins at another angle than the last
 * one ended with, its end is cut clean first. A piece that lies face down in the plan is cut with the bar rolled over, so that the saw need
 * not be swung or tilted to the other side.
 */
export function cutsOfBar(problem: BarProblem, { stock, pieces, offcut }: CutBar): BarCuts {
  const { kerf, section } = problem;
  const bar = problem.stock[stock].length;
  const cuts: Omit<BarCut, 'number'>[] = [];
  const cut = (what: BarCut['what'], { slant, at }: Plane, over: boolean, rest: Partial<BarCut> = {}): void => {
    const corners = cornersOf(slant, section);
    const [a, b, c, d] = corners.map((x) => x + at);
    cuts.push({
      what,
      ...anglesOf(seenOver(slant, over)),
      over,
      edge: { below: [a, b], above: [c, d] },
      waste: what === 'trim' || what === 'clean' ? 'left' : 'right',
      frees: [],
      ...rest,
    });
  };
  let made: Plane | undefined;
  let whole: PlacedOnBar | undefined;
  pieces.forEach((piece, i) => {
    const [left, right] = endsOf(problem.pieces[piece.piece].ends, piece.turn);
    const over = liesOver(piece.turn);
    const begins = { slant: left, at: planeAt(left, piece.at, 'left', section) };
    const ends = { slant: right, at: planeAt(right, piece.at + piece.length, 'right', section) };
    if (!made) {
      if (piece.at > SAME || !sameSlant(left, SQUARE)) cut('trim', begins, over);
    } else if (!sharesCut(made, begins, kerf)) cut('clean', begins, over);
    const asBought = i === pieces.length - 1 && sameSlant(right, SQUARE) && bar - ends.at <= SAME;
    const frees = [{ kind: 'piece', piece } as const];
    if (!asBought) cut('piece', ends, over, { stop: piece.length, frees });
    else {
      const last = cuts.pop();
      if (last) cuts.push({ ...last, frees: [...last.frees, ...frees] });
      else whole = piece;
    }
    made = ends;
  });
  if (offcut) {
    const left = { kind: 'left', at: offcut.at, length: offcut.length, reusable: true } as const;
    const end = offcut.at + offcut.length;
    if (bar - end > SAME) cut('end', { slant: SQUARE, at: end }, false, { frees: [left] });
    else {
      const last = cuts.pop();
      if (last) cuts.push({ ...last, frees: [...last.frees, left] });
    }
  }
  return { kind: 'bar', stock, cuts: cuts.map((one, n) => ({ number: n + 1, ...one })), whole };
}

/** The cut that ended one piece also begins the next. */
const sharesCut = (made: Plane, begins: Plane, kerf: number): boolean =>
  sameSlant(made.slant, begins.slant) && begins.at - made.at <= kerf * kerfFactor(made.slant) + SAME;

/** Needs of a cut; the stop of one that has none stays where it is. */
const barNeeds = ({ mitreDeg, tiltDeg, stop }: Pick<BarCut, 'mitreDeg' | 'tiltDeg' | 'stop'>) =>
  needsOf({ mitre: mitreDeg, tilt: tiltDeg, 'length stop': stop });

/** Cuts of one bar, one after the other. */
export function barWork(cuts: readonly Omit<BarCut, 'number'>[]): Work {
  const tasks = cuts.map((cut): Task => ({ needs: barNeeds(cut), opens: [] }));
  return { tasks, lines: [{ tasks: tasks.map((_, i) => i), opens: [] }], start: [0] };
}
