/** A thing as it is drawn, px, y downwards. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Least size at which a thing can be taken hold of, px. */
const GRASP = 16;

/** How far beside what is drawn a thing can be taken hold of, on its left, top, right and bottom. */
type Growth = { left: number; top: number; right: number; bottom: number };

/**
 * Where each thing is taken hold of: what is drawn, made large enough for a finger, but not nearer to another than half the gap between
 * the two, so that what is drawn can always be taken where it is drawn. Things that lie on one another: see `smallestLast`.
 */
export function gripsOf(boxes: readonly Box[]): readonly Box[] {
  return boxes.map((box, i) => {
    const along = Math.max(0, (GRASP - (box.right - box.left)) / 2);
    const up = Math.max(0, (GRASP - (box.bottom - box.top)) / 2);
    const grown: Growth = { left: along, right: along, top: up, bottom: up };
    boxes.forEach((other, k) => {
      if (k !== i) keepOff(box, other, grown);
    });
    return {
      left: box.left - grown.left,
      top: box.top - grown.top,
      right: box.right + grown.right,
      bottom: box.bottom + grown.bottom,
    };
  });
}

/** Holds the growth towards another thing back to half the gap, across whichever of the gaps is the wider. */
function keepOff(box: Box, other: Box, grown: Growth): void {
  const after = other.left - box.right;
  const before = box.left - other.right;
  const under = other.top - box.bottom;
  const over = box.top - other.bottom;
  const gap = Math.max(after, before, under, over);
  if (gap < 0) return;
  if (gap === after) grown.right = Math.min(grown.right, gap / 2);
  else if (gap === before) grown.left = Math.min(grown.left, gap / 2);
  else if (gap === under) grown.bottom = Math.min(grown.bottom, gap / 2);
  else grown.top = Math.min(grown.top, gap / 2);
}

/** The order in which things are drawn: the smaller lies on the greater, and is the one taken hold of where they overlap. */
export const smallestLast = <
  T extends { readonly from: number; readonly to: number; readonly low: number; readonly high: number },
>(
  things: readonly T[],
): readonly T[] => [...things].sort((a, b) => (b.to - b.from) * (b.high - b.low) - (a.to - a.from) * (a.high - a.low));
