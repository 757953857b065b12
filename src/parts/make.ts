import { toStep } from '../base/round';
import { volumeOf } from '../base/solid/volume';
import type { Part, PartDraft } from '../vocabulary/part';
import { measure } from './measure';
import type { Measure } from './measured';

/** Cubic metres in a cubic millimetre. */
const M3_PER_MM3 = 1e-9;

/** When a part is fitted, and on which section it leaves. */
export type Fitting = Pick<Part, 'fitted' | 'inSection'>;

const IN_ONE_PIECE: Fitting = { fitted: 'workshop' };

/**
 * Parts from drafts, in the drafts' order: marks (run, code, number within both), sizes, ends, volumes and weights.
 * `densityOf` gives kg/m³ of a stock item by its id; `roundingStep` (mm) is what shop lengths are rounded to, here and nowhere
 * else; `fittingOf` says when each is fitted (not given: in the workshop). Throws for a step or density that is not above 0.
 */
export function makeParts(
  drafts: readonly PartDraft[],
  densityOf: (material: string) => number,
  roundingStep: number,
  fittingOf: (draft: PartDraft) => Fitting = () => IN_ONE_PIECE,
): Part[] {
  if (!(roundingStep > 0)) throw new Error(`lengths can't be rounded to ${roundingStep} mm; the step must be above 0`);
  const numbers = new Map<string, number>();
  return drafts.map((draft) => {
    const stem = `${draft.run}-${draft.code}`;
    const number = (numbers.get(stem) ?? 0) + 1;
    numbers.set(stem, number);
    const density = densityIn(draft.material, densityOf);
    const volumeMm3 = volumeOf(draft.shape);
    return partOf(
      draft,
      `${stem}${number}`,
      fittingOf(draft),
      measure(draft.shape, draft.edgeNames),
      volumeMm3,
      volumeMm3 * M3_PER_MM3 * density,
      roundingStep,
    );
  });
}

/** Every field by name, so that all parts are built alike: what looks at thousands of them goes much faster. */
function partOf(
  draft: PartDraft,
  mark: string,
  { fitted, inSection }: Fitting,
  { size, shortPoint, ends }: Measure,
  volumeMm3: number,
  weightKg: number,
  roundingStep: number,
): Part {
  const { kind, code, name, run, material, finish, from, shape, place, edges, edgeNames, section, grooves } = draft;
  const { where, set, fit, meets, dividesAtJoins, byCentres, holds, oversize, hardware, work } = draft;
  return {
    kind,
    code,
    name,
    run,
    material,
    finish,
    from,
    shape,
    place,
    edges,
    edgeNames,
    section,
    grooves,
    where,
    set,
    fit,
    meets,
    dividesAtJoins,
    byCentres,
    holds,
    oversize,
    hardware,
    work,
    mark,
    size,
    shopLength: toStep(size.length, roundingStep),
    shortPoint,
    ends,
    volumeMm3,
    weightKg,
    fitted,
    inSection,
  } satisfies { readonly [K in keyof Required<Part>]: Part[K] };
}

/** What a draft weighs, kg, without measuring it. `densityOf` as for `makeParts`. */
export const weightOf = ({ material, shape }: PartDraft, densityOf: (material: string) => number): number =>
  volumeOf(shape) * M3_PER_MM3 * densityIn(material, densityOf);

function densityIn(material: string, densityOf: (material: string) => number): number {
  const density = densityOf(material);
  if (!(density > 0)) throw new Error(`${material} has a density of ${density} kg/m³; it must be above 0`);
  return density;
}
