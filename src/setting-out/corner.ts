import { degrees, radians } from '../base/vec';
import type { CornerFillet } from '../vocabulary/backing';

/**
 * The corner rule: at an outside corner of deflection φ a layer at offset d is longer by d·tan(φ/2) on each side, at an
 * inside one (φ negative) shorter by as much. Returns tan(φ/2); the mitre is φ/2 for every layer.
 */
export const growth = (deflectionDeg: number): number =>
  Math.abs(deflectionDeg) === 90 ? Math.sign(deflectionDeg) : Math.tan(radians(deflectionDeg / 2));

/** A fillet thinner than this is packing, not a part (common practice, no source). */
const LEAST_FILLET = 5;

/** Inside corners this near to square are butted, the through frame running on behind (degrees from 90; common practice, no source). */
const NEAR_SQUARE_DEG = 10;

/** A wedge to be filled: its plan points as (s, d), s from the vertex *into* the run that holds it, d outward from its face. */
export interface Wedge {
  readonly holder: 'through' | 'butting';
  readonly points: CornerFillet['points'];
}

/** How two square-cut frames meet: mm beyond the corner's frame-line vertex for each (negative: short of it), and the wedges between. */
export interface FrameCorner {
  readonly through: number;
  readonly butting: number;
  readonly wedges: readonly Wedge[];
  /** Thickness of a wedge that is packed instead: too thin for a fillet, or behind the joint where no skin lies; 0 where there is none. */
  readonly packing: number;
}

/**
 * Frames are cut square and butted, whatever the corner: the through frame runs to the vertex, the other stops where the two would
 * meet, and three-cornered fillets fill the wedges, so that the skin has timber up to its mitre. Where a wedge is too thin to be
 * filled, packing serves: behind the skin no place at a corner is further than the least fillet from timber.
 * @param deflectionDeg signed, positive outside; within ±150.
 * @param depth of the frame behind its face, mm.
 */
export function frameCorner(deflectionDeg: number, depth: number): FrameCorner {
  const turn = radians(Math.abs(deflectionDeg));
  const sin = Math.abs(deflectionDeg) === 90 ? 1 : Math.sin(turn);
  const cos = Math.abs(deflectionDeg) === 90 ? 0 : Math.cos(turn);
  if (turn === 0) return { through: 0, butting: 0, wedges: [], packing: 0 };
  if (deflectionDeg > 0) return cos >= 0 ? outsideAcute(depth, sin, cos) : outsideObtuse(depth, sin, cos);
  return Math.abs(90 - degrees(turn)) <= NEAR_SQUARE_DEG
    ? insideSquare(depth, sin, cos)
    : insideOpen(depth, sin, cos, turn);
}

/** The wedges as fillets, or as packing where they are too thin. */
const filled = (thickness: number, ...wedges: Wedge[]): Pick<FrameCorner, 'wedges' | 'packing'> =>
  thickness < LEAST_FILLET ? { wedges: [], packing: thickness } : { wedges, packing: 0 };

const wedge = (holder: Wedge['holder'], ...points: CornerFillet['points']): Wedge => ({ holder, points });

/** Up to 90°: the through end is the fillet's hypotenuse, the butting end its short side. */
function outsideAcute(depth: number, sin: number, cos: number): FrameCorner {
  const along = depth * sin;
  const back = depth * cos;
  return {
    through: 0,
    butting: -along,
    ...filled(Math.min(along, back), wedge('butting', [0, 0], [along, 0], [along, -back])),
  };
}

/**
 * Past 90° the through frame must stop short, or its back corner would stand through the neighbour's face; and the butting frame
 * stops where its own back corner meets the through frame's back. Two wedges, of one section.
 */
function outsideObtuse(depth: number, sin: number, cos: number): FrameCorner {
  const short = (depth * -cos) / sin;
  const behind = depth / sin;
  const butting = behind + short;
  return {
    through: -short,
    butting: -butting,
    ...filled(
      short,
      wedge('through', [0, 0], [short, 0], [short, -depth]),
      wedge('butting', [behind, 0], [butting, 0], [butting, -depth]),
    ),
  };
}

/**
 * The butting frame stands on the face of the through frame, which runs on to cover its end. Turned less than 90°, its back corner
 * touches first and leaves an open wedge at the front.
 */
function insideSquare(depth: number, sin: number, cos: number): FrameCorner {
  if (cos < 0) return { through: depth * sin, butting: 0, wedges: [], packing: depth * -cos };
  const short = (depth * cos) / sin;
  return {
    through: depth / sin,
    butting: -short,
    ...filled(short, wedge('butting', [0, 0], [short, 0], [short, -depth])),
  };
}

/** Both run to the vertex; the open wedge behind it gets a fillet, as deep as the frames. */
function insideOpen(depth: number, sin: number, cos: number, turn: number): FrameCorner {
  const open = wedge('through', [0, 0], [0, -depth], [-depth * sin, -depth * cos]);
  return { through: 0, butting: 0, ...filled(2 * depth * Math.sin(turn / 2), open) };
}
