import { alongFace } from '../../base/place';
import { CLEAR_OF_HOLE } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
import type { Obstacle } from '../../vocabulary/opening';
import type { Part } from '../../vocabulary/part';
import type { Mark, Rod, RodRun, RunEnd } from '../../vocabulary/rod';
import type { Room } from '../../vocabulary/room';
import { fields } from './fields';
import { LEAST_TOE } from './findings';
import { parts } from './parts';

/** The frame behind the front: cross frames, rear posts, rails. What stands behind stands between them. */
export const carcass: Room<typeof fields> = {
  kind: 'carcass',
  label: 'Carcass',
  group: 'behind',
  fields,
  demands({ build, timber, lines, setBack, toeHeight, toeDepth, rearRail }, book) {
    if (!build) return {};
    const { width, thickness } = book.item('timber', timber);
    return {
      carcass: {
        stock: timber,
        face: thickness,
        depth: width,
        setBack,
        lines,
        // A lower recess takes no toes, and its feet are no parts: said in a finding.
        toeHeight: toeHeight < LEAST_TOE ? 0 : toeHeight,
        toeDepth,
        rearRail,
      },
    };
  },
  obstacles: (_, { rod }) => rod.runs.flatMap((run) => inTheWay(rod, run)),
  backing: (_, { rod }) => rod.runs.flatMap(studsFor),
  parts,
  marks,
};

/** A cross frame's rails are screwed to a stud of the front frame. */
const studsFor = (run: RodRun): readonly Backing[] =>
  run.crossLines.map(({ from, to }) => ({
    kind: 'stud',
    run: run.id,
    x: (from + to) / 2,
    centred: false,
    reason: 'cross frame',
  }));

/** What comes through the front must not come out in a cross frame; what comes through the top must clear the rails under it. */
function inTheWay({ carcass: made, timber, top, frameHeight }: Rod, run: RodRun): readonly Obstacle[] {
  if (!made) return [];
  const { low, high, back, face, worktop } = made;
  // Timber behind a hole, like the front frame's own.
  const clear = CLEAR_OF_HOLE;
  const across = run.crossLines.map(({ from, to }, i) => ({ from, to, what: `cross frame ${i + 1}`, clear }));
  const first = run.crossLines[0];
  const last = run.crossLines[run.crossLines.length - 1];
  const carried = high >= frameHeight;
  // Through the top heights are distances back from its front edge.
  const behindEdge = (d: number): number => top.overhang - d;
  return [
    ...across.map((line) => ({ run: run.id, through: 'front' as const, ...line, low, high })),
    ...(worktop && first
      ? [
          {
            run: run.id,
            through: 'front' as const,
            from: first.why === 'end' && runsOn(run.left) ? Math.min(0, first.from) : first.from,
            to: last.why === 'end' && runsOn(run.right) ? Math.max(run.length, last.to) : last.to,
            low: worktop.high - worktop.thickness - made.depth,
            high: worktop.high,
            what: 'the worktop and its bearer',
            clear,
          },
        ]
      : []),
    ...(carried
      ? across.map((line) => ({
          run: run.id,
          through: 'top' as const,
          ...line,
          low: behindEdge(-timber.depth),
          high: behindEdge(back),
        }))
      : []),
    ...(carried && made.rearRail
      ? run.backBays.map(({ from, to, index }) => ({
          run: run.id,
          through: 'top' as const,
          from,
          to,
          low: behindEdge(back + face),
          high: behindEdge(back),
          what: `rear rail of space ${index + 1}`,
          clear,
        }))
      : []),
  ];
}

/** Whether a worktop and its bearer run on past the last cross frame: to the wall, or into an outside corner. */
const runsOn = ({ kind, toReturn, deflectionDeg }: RunEnd): boolean =>
  kind === 'wall' || (kind === 'corner' && !toReturn && deflectionDeg > 0);

/** Middle of each cross frame, in the lane behind. */
function marks(run: RodRun, made: readonly Part[]): readonly Mark[] {
  return made
    .filter((p) => p.code === 'RP')
    .map((p) => ({
      id: p.mark,
      x: alongFace(run, p.place.origin) - p.size.thickness / 2,
      lane: 'behind',
      reason: p.where,
      part: p.mark,
    }));
}
