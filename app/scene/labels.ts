import type { Vec2 } from '../../src/vocabulary/geometry';

/** A point as the camera throws it on to the picture, before division: across, up, and depth (not above 0: behind the viewer). */
export type Thrown = readonly [x: number, y: number, w: number];

/** Nearer to the viewer than this there is no picture. */
const NEAR = 1e-6;

/** How far a point is on the right side of each edge of the picture, and before the viewer. */
const INSIDE: readonly ((point: Thrown) => number)[] = [
  ([, , w]) => w - NEAR,
  ([x, , w]) => w + x,
  ([x, , w]) => w - x,
  ([, y, w]) => w + y,
  ([, y, w]) => w - y,
];

/** The middle of what is seen of a line, in pixels from the upper left; null where nothing of it is seen. */
export function seenMiddle(a: Thrown, b: Thrown, width: number, height: number): Vec2 | null {
  let from = 0;
  let to = 1;
  for (const inside of INSIDE) {
    const [atA, atB] = [inside(a), inside(b)];
    if (atA < 0 && atB < 0) return null;
    const cross = atA / (atA - atB);
    if (atA < 0) from = Math.max(from, cross);
    else if (atB < 0) to = Math.min(to, cross);
  }
  if (from > to) return null;
  const pixel = (t: number): Vec2 => {
    const [x, y, w] = [0, 1, 2].map((k) => a[k as 0] + (b[k as 0] - a[k as 0]) * t) as unknown as Thrown;
    return [((x / w + 1) / 2) * width, ((1 - y / w) / 2) * height];
  };
  const [p, q] = [pixel(from), pixel(to)];
  return [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
}

/** A figure that is to be written over the picture: where its middle wants to be, and half its width and height, px. */
export interface Label {
  readonly at: Vec2;
  readonly half: Vec2;
}

/** Free space between two figures, px. */
const GAP = 2;
/** How many times its own size a figure may be moved out of the way of another. */
const MOST_STEPS = 6;
const WAYS: readonly Vec2[] = [
  [0, 1],
  [0, -1],
  [-1, 0],
  [1, 0],
];

/**
 * Middles of figures, whole within the picture and none over another; the first are served first. Null for one that finds no
 * place near its own.
 */
export function spread(labels: readonly Label[], width: number, height: number): readonly (Vec2 | null)[] {
  const placed: Label[] = [];
  return labels.map(({ at, half }) => {
    for (let step = 0; step <= MOST_STEPS; step++) {
      for (const [right, down] of step === 0 ? [[0, 0] as const] : WAYS) {
        const spot: Vec2 = [
          within(at[0] + right * step * half[0], half[0], width),
          within(at[1] + down * step * half[1], half[1], height),
        ];
        if (placed.some((other) => overlap({ at: spot, half }, other))) continue;
        placed.push({ at: spot, half });
        return spot;
      }
    }
    return null;
  });
}

const within = (at: number, half: number, size: number): number => Math.max(half, Math.min(size - half, at));

const overlap = (a: Label, b: Label): boolean =>
  Math.abs(a.at[0] - b.at[0]) < a.half[0] + b.half[0] + GAP &&
  Math.abs(a.at[1] - b.at[1]) < a.half[1] + b.half[1] + GAP;
