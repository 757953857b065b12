import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { design, readJob } from '../../src/flow';
import type { StockItem } from '../../src/vocabulary/book';
import type { Design } from '../../src/vocabulary/design';
import { SEED } from '../base/seed';
import { cannotBeBuilt } from './buildable';
import { anyWhole } from './random-whole';
import { overlaps, referee, solidOf, touchingNothing } from './referee';
import { inWords } from './sample';

/** Drawn so that at least the number wanted is left when those that say they can't be built are put aside. */
const DRAWN = 220;
const LEAST = 200;
/** mm³: a speck of dust; two parts that only touch share less by a millionfold. */
const LIMIT = 1;

/** Further than this from every other part it is held by nothing, mm. */
const GAP = 0.5;

const examples = join(import.meta.dirname, '..', '..', 'public', 'examples');

function exampleOf(file: string): Design {
  const job = readJob(readFileSync(join(examples, file), 'utf8'));
  if (!job.ok) throw new Error(`${file}: ${JSON.stringify(job.issues)}`);
  return design(job.value);
}

describe(`against a solid kernel that shares no code with the engine (seed ${SEED})`, () => {
  const buildable = fc
    .sample(anyWhole, { numRuns: DRAWN, seed: SEED })
    .map((job) => design(job))
    .filter((one) => !cannotBeBuilt(one))
    .slice(0, LEAST);
  const files = readdirSync(examples).filter((name) => name.endsWith('.job.json'));
  const made = new Map<string, Design>([
    ...buildable.map((one, i) => [`unit ${i}: ${inWords(one.job)}`, one] as const),
    ...files.map((file) => [file, exampleOf(file)] as const),
  ]);
  let kernel: Awaited<ReturnType<typeof referee>>;
  beforeAll(async () => {
    kernel = await referee();
  });

  it(`at least ${LEAST} random units can be built, and the examples`, () => {
    expect(buildable.length).toBe(LEAST);
    expect(files.length).toBeGreaterThanOrEqual(4);
  });

  it(`no two parts share more than ${LIMIT} mm³`, { timeout: 240_000 }, () => {
    const wrong = [...made].flatMap(([name, { parts }]) => {
      const found = overlaps(kernel, parts, LIMIT);
      return found.length > 0 ? [`${JSON.stringify(found.slice(0, 3))} in ${name}`] : [];
    });
    expect(wrong).toEqual([]);
  });

  it(`every part is no further than ${GAP} mm from another`, { timeout: 240_000 }, () => {
    const wrong = [...made].flatMap(([name, { parts }]) => {
      const loose = touchingNothing(kernel, parts, GAP);
      return loose.length > 0 ? [`${loose.slice(0, 3).join(', ')} in ${name}`] : [];
    });
    expect(wrong).toEqual([]);
  });

  it('a part weighs its solid’s volume at its stuff’s density, and the unit all its parts', {
    timeout: 240_000,
  }, () => {
    const wrong: string[] = [];
    for (const [name, { job, parts, totals }] of made) {
      const density = new Map(job.stock.items.map((item: StockItem) => [item.id, item.densityKgM3]));
      let all = 0;
      for (const part of parts) {
        const solid = solidOf(kernel, part);
        const kg = solid.volume() * 1e-9 * (density.get(part.material) ?? Number.NaN);
        solid.delete();
        all += kg;
        if (!(Math.abs(kg - part.weightKg) <= 1e-6 * kg))
          wrong.push(`${part.mark} weighs ${part.weightKg}, its solid ${kg} kg, in ${name}`);
      }
      if (!(Math.abs(all - totals.weightKg) <= 1e-6 * all))
        wrong.push(`${totals.weightKg}, its solids ${all} kg: ${name}`);
    }
    expect(wrong.slice(0, 3)).toEqual([]);
  });
});
