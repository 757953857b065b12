import fc from 'fast-check';
import { design } from '../../src/flow';
import { cannotBeBuilt } from '../properties/buildable';
import { parted } from '../properties/holds/sections';
import { anyWhole } from '../properties/random-whole';
import { overlaps, referee, touchingNothing } from '../properties/referee';
import { inWords } from '../properties/sample';

/*
 * A long trial of random units with everything on, against the solid kernel: `npx tsx tests/tools/trial.ts SEED NUMBER [FIRST]`.
 * Prints each failure with its job, then what was looked at. Ends with 1 when anything failed.
 */
const [seed, number, first] = [
  Number(process.argv[2] ?? 1),
  Number(process.argv[3] ?? 200),
  Number(process.argv[4] ?? 0),
];
const jobs = fc.sample(anyWhole, { numRuns: number, seed });
const kernel = await referee();
const tally = { units: 0, unbuildable: 0, threw: 0, overlapping: 0, loose: 0, parted: 0, parts: 0 };
for (const [i, job] of jobs.entries()) {
  if (i < first) continue;
  tally.units++;
  try {
    const made = design(job);
    tally.parts += made.parts.length;
    const { wrong } = parted(made);
    if (wrong.length > 0) {
      tally.parted++;
      console.log(`${i} sections: ${wrong.slice(0, 3).join('; ')}`);
    }
    if (cannotBeBuilt(made)) {
      tally.unbuildable++;
      continue;
    }
    const where = (mark: string): string => {
      const part = made.parts.find((p) => p.mark === mark);
      return `${mark} (${part?.name}, ${part?.where})`;
    };
    const shared = overlaps(kernel, made.parts, 1);
    if (shared.length > 0) {
      tally.overlapping++;
      console.log(
        `${i} overlap: ${shared
          .slice(0, 4)
          .map((o) => `${where(o.a)} × ${where(o.b)} ${o.mm3.toFixed(1)} mm³`)
          .join('; ')}`,
      );
    }
    const loose = touchingNothing(kernel, made.parts, 0.5);
    if (loose.length > 0) {
      tally.loose++;
      console.log(`${i} touches nothing: ${loose.slice(0, 5).map(where).join('; ')}`);
    }
    if (process.argv.includes('--words') && (shared.length > 0 || loose.length > 0)) console.log(`   ${inWords(job)}`);
  } catch (error) {
    tally.threw++;
    console.log(`${i} threw: ${error instanceof Error ? error.stack?.split('\n').slice(0, 4).join(' | ') : error}`);
  }
}
console.log(`seed ${seed}: ${JSON.stringify(tally)}`);
process.exitCode = tally.threw + tally.overlapping + tally.loose + tally.parted > 0 ? 1 : 0;
