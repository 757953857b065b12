import type { AlongBay } from '../../base/along-bay';
import { lying, type Stuff } from '../../base/stuff';
import type { Outline } from '../../vocabulary/geometry';
import type { PartDraft } from '../../vocabulary/part';
import type { Bay, Layer, RodRun } from '../../vocabulary/rod';

/** Skirting is fixed at 400–600, at studs (trade, from memory): here into the noggin behind it, at the least of that. */
const CENTRES = 400;

/** What all pieces have in common. */
export interface Make {
  readonly material: string;
  readonly section: Outline;
  readonly layer: Layer;
  readonly height: number;
}

/** A whole length of the moulding. */
export const stick = (run: RodRun, piece: AlongBay, { section, layer }: Make): Stuff =>
  lying(run, section, { ...piece, d: layer.inner, z: 0 });

/** What is said of every piece. */
export function draft(
  run: RodRun,
  bay: Bay,
  { material, layer }: Make,
  { shape, place }: Stuff,
  meets: AlongBay['meets'],
  work: readonly string[] = [],
): PartDraft {
  return {
    kind: 'skirting',
    code: 'SK',
    name: 'skirting',
    run: run.id,
    material,
    finish: 'paint',
    from: 'finished',
    edges: [],
    grooves: [],
    where: `bay ${bay.index + 1}`,
    holds: [
      {
        by: 'brad',
        through: layer.outer - layer.inner,
        where: { at: 'length', centres: CENTRES },
        glue: 'grab',
        rule: 'skirting at 400–600, into studs and noggins (trade, from memory)',
      },
    ],
    meets,
    work: work.length > 0 ? work : undefined,
    shape,
    place,
  };
}
