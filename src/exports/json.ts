import type { Design } from '../vocabulary/design';
import type { Drawing } from '../vocabulary/drawing';
import type { Alike, Part } from '../vocabulary/part';
import { asSawn } from './table/part-columns';

/** The parts and totals as plain JSON, lengths in mm. */
export const partsJson = (design: Pick<Design, 'job' | 'parts' | 'totals'>): string =>
  pretty({ job: design.job.name, units: 'mm', totals: design.totals, parts: design.parts });

/** The cutting list as plain JSON: identical parts together, their number and marks with one of them; lengths in mm. `sawn`: to saw to, what is left on among it. */
export const cuttingJson = (
  { job, parts }: Pick<Design, 'job' | 'parts'>,
  alike: (parts: readonly Part[]) => readonly Alike[],
): string =>
  pretty({
    job: job.name,
    units: 'mm',
    alike: alike(parts).map(({ marks, part }) => {
      const { size, shopLength } = asSawn(part, job);
      return { number: marks.length, marks, sawn: { ...size, shopLength }, part };
    }),
  });

/** The setting-out as plain JSON: the rod, the framing and every run's marks, lengths in mm. */
export const rodJson = (design: Pick<Design, 'job' | 'rod' | 'framing' | 'marks'>): string =>
  pretty({ job: design.job.name, units: 'mm', rod: design.rod, framing: design.framing, marks: design.marks });

/** The findings as plain JSON. */
export const findingsJson = (design: Pick<Design, 'job' | 'findings'>): string =>
  pretty({ job: design.job.name, findings: design.findings });

/** A drawing's strokes as plain JSON, model mm. */
export const drawingJson = (drawing: Drawing): string => pretty(drawing);

const pretty = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
