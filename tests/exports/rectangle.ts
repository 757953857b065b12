import type { Drawing, Stroke } from '../../src/vocabulary/drawing';

/** A drawing of one rectangle, and dimensions if need be. */
export const rectangle = (width: number, height: number, strokes: readonly Stroke[] = []): Drawing => ({
  id: 'A-front',
  title: 'Run A: front elevation',
  strokes: [
    {
      kind: 'polygon',
      points: [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ],
      fill: 'none',
      pen: 'wide',
    },
    ...strokes,
  ],
  bounds: { min: [0, 0], max: [width, height] },
});
