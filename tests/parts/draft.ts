import type { PartDraft } from '../../src/vocabulary/part';
import type { EndPlane, Shape } from '../../src/vocabulary/shape';

/** A draft for tests: a thing of that shape, all else usual. */
export const draft = (shape: Shape, over: Partial<PartDraft> = {}): PartDraft => ({
  kind: 'frame',
  code: 'ST',
  name: 'Stud',
  run: 'A',
  material: 'sawn-38x63',
  finish: 'bare',
  from: 'framed',
  shape,
  place: { origin: [0, 0, 0], along: [1, 0, 0], across: [0, 1, 0], out: [0, 0, 1] },
  edges: [],
  grooves: [],
  where: '',
  ...over,
});

export const plane = (at: number, perAcross = 0, perOut = 0): EndPlane => ({ at, perAcross, perOut });
