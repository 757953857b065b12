import fc from 'fast-check';
import { design } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import type { Job } from '../../src/vocabulary/job';
import { anyJob } from './random-job';

/** What a property found: what is wrong, in words, and how many things it looked at. */
export interface Found {
  readonly wrong: readonly string[];
  readonly looked: number;
}

/** A property of a design. */
export type Property = (made: Design) => Found;

/** Random jobs, worked out: the same for the same seed. */
export const sampleOf = (count: number, seed: number): readonly Design[] =>
  fc.sample(anyJob, { numRuns: count, seed }).map((job) => design(job));

/** A job in one line, so that a failure can be read without running it again. */
export function inWords({ unit, carry, fit }: Job): string {
  const { runs, leftEnd, rightEnd } = unit.plan;
  const end = (e: typeof leftEnd): string => (e.kind === 'return' ? `return ${e.length}` : e.kind);
  const each = runs.map(
    (r, i) =>
      `${r.length} over ${r.over}${r.rhythm ? ` ${JSON.stringify(r.rhythm)}` : ''}${i < runs.length - 1 ? ` turn ${r.deflectionDeg} through ${r.through}` : ''}${r.flap ? ` ${JSON.stringify(r.flap)}` : ''}`,
  );
  const { joins, openings, bays } = unit;
  const more = [
    joins.by === 'none' ? {} : { joins, carry, fit },
    openings.length > 0 ? { openings } : {},
    bays.length > 0 ? { bays } : {},
  ];
  return `${end(leftEnd)} | ${each.join(' | ')} | ${end(rightEnd)}; ${unit.height} high, ${unit.depth} deep; ${JSON.stringify(Object.assign({}, ...more, { elements: unit.elements }))}`;
}

/** What a property has against a sample: each complaint with its job's number and words; and how much it looked at in all. */
export function holdTo(property: Property, sample: readonly Design[]): Found {
  const wrong: string[] = [];
  let looked = 0;
  sample.forEach((made, i) => {
    const found = property(made);
    looked += found.looked;
    if (found.wrong.length > 0) wrong.push(`job ${i}: ${found.wrong.slice(0, 3).join('; ')} <- ${inWords(made.job)}`);
  });
  return { wrong, looked };
}
