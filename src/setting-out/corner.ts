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

/** How two square-cut frames meet: mm beyond the corner's frame-line vertex for each (negative: short of it), and the wedge between. */
export interface FrameCorner {
  readonly through: number;
  readonly butting: number;
  /** The fillet's plan points as (s, d): s from the vertex *into* the run that holds it, d outward from its face. */
  readonly fillet?: { readonly holder: 'through' | 'butting'; readonly points: CornerFillet['points'] };
}

/**
 * Frames are cut square and butted, whatever the corner: the through frame runs to the vertex, the other stops where the two would
 * meet, and a three-cornered fillet fills the wedge, so that the skin has timber up to its mitre.
 * @param deflectionDeg signed, positive outside; within ±150.
 * @param depth of the frame behind its face, mm.
 */
export function frameCorner(deflectionDeg: number, depth: number): FrameCorner {
  const turn = radians(Math.abs(deflectionDeg));
  const sin = Math.abs(deflectionDeg) === 90 ? 1 : Math.sin(turn);
  const cos = Math.abs(deflectionDeg) === 90 ? 0 : Math.cos(turn);
  if (turn === 0) return { through: 0, butting: 0 };
  if (deflectionDeg > 0) return cos >= 0 ? outsideAcute(depth, sin, cos) : outsideObtuse(depth, sin, cos);
  return Math.abs(90 - degrees(turn)) <= NEAR_SQUARE_DEG
    ? insideSquare(depth, sin, cos)
    : insideOpen(depth, sin, cos, turn);
}

/** Up to 90°: the through end is the fillet's hypotenuse, the butting end its short side. */
function outsideAcute(depth: number, sin: number, cos: number): FrameCorner {
  const along = depth * sin;
  const back = depth * cos;
  const thin = Math.min(along, back) < LEAST_FILLET;
  return {
    through: 0,
    butting: -along,
    ...(thin
      ? {}
      : {
          fillet: {
            holder: 'butting' as const,
            points: [
              [0, 0],
              [along, 0],
              [along, -back],
            ] as const,
          },
        }),
  };
}

/** Past 90° the through frame must stop short, or its back corner would stand through the neighbour's face. */
function outsideObtuse(depth: number, sin: number, cos: number): FrameCorner {
  const short = (depth * -cos) / sin;
  const butting = -(depth * (1 - cos)) / sin;
  return {
    through: -short,
    butting,
    ...(short < LEAST_FILLET
      ? {}
      : {
          fillet: {
            holder: 'through' as const,
            points: [
              [0, 0],
              [short, 0],
              [short, -depth],
            ] as const,
          },
        }),
  };
}

/**
 * The butting frame stands on the face of the through frame, which runs on to cover its end. Turned less than 90°, its back corner
 * touches first and leaves an open wedge at the front.
 */
function insideSquare(depth: number, sin: number, cos: number): FrameCorner {
  if (cos < 0) return { through: depth * sin, butting: 0 };
  const short = (depth * cos) / sin;
  return {
    through: depth / sin,
    butting: -short,
    ...(short < LEAST_FILLET
      ? {}
      : {
          fillet: {
            holder: 'butting' as const,
            points: [
              [0, 0],
              [short, 0],
              [short, -depth],
            ] as const,
          },
        }),
  };
}

/** Both run to the vertex; the open wedge behind it gets a fillet, as deep as the frames. */
function insideOpen(depth: number, sin: number, cos: number, turn: number): FrameCorner {
  if (2 * depth * Math.sin(turn / 2) < LEAST_FILLET) return { through: 0, butting: 0 };
  return {
    through: 0,
    butting: 0,
    fillet: {
      holder: 'through',
      points: [
        [0, 0],
        [0, -depth],
        [-depth * sin, -depth * cos],
      ],
    },
  };
}
