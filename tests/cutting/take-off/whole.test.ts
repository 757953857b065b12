import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../../src/base/outline';
import { eachCorner } from '../../../src/base/solid/corners';
import { cutBatches, design, readJob } from '../../../src/flow';
import type { CutBatch } from '../../../src/vocabulary/cut-plan';
import type { BarProblem, Slant } from '../../../src/vocabulary/cut-problem';
import type { Design } from '../../../src/vocabulary/design';
import type { Part } from '../../../src/vocabulary/part';
import { SEED } from '../../base/seed';
import { anyWhole } from '../../properties/random-whole';
import { inWords } from '../../properties/sample';

const folder = join(import.meta.dirname, '..', '..', '..', 'public', 'examples');
const examples = readdirSync(folder).map((file): readonly [string, Design] => {
  const read = readJob(readFileSync(join(folder, file), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return [file, design(read.value)];
});

/** Rules by which a part is left out. */
const LEFT_OUT = ['longer-than-stock', 'longer-than-bar', 'longer-than-blank', 'larger-than-sheet'];
/** Sizes are kept to a hundredth. */
const KEPT = 0.006;

/** All that is wrong with what was taken off a design, in words. */
function faultsOf(made: Design): readonly string[] {
  const { batches, findings } = cutBatches(made);
  const wrong: string[] = [];
  const seen = new Map<string, string>();
  for (const batch of batches) {
    const { id, problem, marks, from } = batch;
    if (from.length !== problem.stock.length) wrong.push(`${id}: not all its stock comes from somewhere`);
    if (marks.length !== problem.pieces.length) wrong.push(`${id}: not all its pieces have marks`);
    problem.pieces.forEach((piece, i) => {
      if (marks[i]?.length !== piece.quantity) wrong.push(`${id}: ${piece.quantity} off, ${marks[i]?.length} marked`);
      for (const mark of marks[i].flat()) {
        if ((seen.get(mark) ?? id) !== id) wrong.push(`${mark} is in ${id} and in ${seen.get(mark)}`);
        seen.set(mark, id);
      }
    });
    wrong.push(...tooSmall(made, batch));
    if (problem.kind === 'bars') wrong.push(...badEnds(made, batch, problem));
  }
  // Twice only where one piece of its stuff is too thin for it.
  for (const [mark, times] of countsOf(batches.flatMap(({ marks }) => marks.flat(2)))) {
    const part = partOf(made, mark);
    const item = made.job.stock.items.find(({ id }) => id === part.material);
    const thick = item && 'thickness' in item ? item.thickness : Infinity;
    const wide = item?.kind === 'timber' ? item.width : Infinity;
    if (times > 1 && part.size.thickness <= thick && part.size.width <= wide)
      wrong.push(`${mark} is in ${times} times`);
  }
  const out = new Set(findings.flatMap((f) => (LEFT_OUT.includes(f.rule) ? [f.subject.part] : [])));
  for (const { mark } of made.parts)
    if (seen.has(mark) === out.has(mark))
      wrong.push(`${mark} is ${out.has(mark) ? 'both in and' : 'neither in nor'} left out`);
  for (const { message, remedy } of findings)
    if (/NaN|undefined|Infinity/.test(message + remedy)) wrong.push(message + remedy);
  return wrong;
}

function countsOf(marks: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const mark of marks) counts.set(mark, (counts.get(mark) ?? 0) + 1);
  return counts;
}

const partOf = (made: Design, mark: string): Part => made.parts.find((p) => p.mark === mark) as Part;

/** No piece is smaller than the parts in it. */
function tooSmall(made: Design, { id, problem, marks }: CutBatch): readonly string[] {
  return problem.pieces.flatMap((piece, i) =>
    marks[i].flatMap((within): readonly string[] => {
      const parts = within.map((mark) => partOf(made, mark));
      const long = parts.reduce((sum, p) => sum + p.size.length, 0);
      if (piece.length < long - KEPT * parts.length) return [`${id}: ${piece.length} for ${within.join('+')}, ${long}`];
      if (problem.kind === 'bars' || !('width' in piece)) return [];
      // Stuff is as thick as one of the two sides; the other is the width.
      const { width, thickness } = parts[0].size;
      return piece.width < Math.min(width, thickness) - KEPT ? [`${id}: ${piece.width} wide for ${within[0]}`] : [];
    }),
  );
}

/** Corners of each part, against the planes that its piece is to be cut by: they lie between them, and touch both. */
function badEnds(made: Design, { id, marks }: CutBatch, { pieces, section }: BarProblem): readonly string[] {
  return pieces.flatMap(({ length, ends }, i) => {
    if (!ends) return [];
    if (!section) return [`${id} has no section`];
    return marks[i].flatMap(([mark]) => {
      const part = partOf(made, mark);
      if (part.oversize?.length) return [];
      const [left, right] = ends;
      const base = part.shape.kind === 'stick' ? boundsOf(part.shape.section).min : ([0, 0] as const);
      const at = ([a, o]: Slant, u: number, v: number): number => a * u + o * v;
      const corners = [0, section.width].flatMap((u) => [0, section.thickness].map((v) => [u, v] as const));
      const least = Math.min(...corners.map(([u, v]) => at(left, u, v)));
      const most = Math.max(...corners.map(([u, v]) => at(right, u, v)));
      let [first, last] = [Infinity, -Infinity];
      eachCorner(part.shape, (x, across, out) => {
        const [u, v] = [across - base[0], out - base[1]];
        first = Math.min(first, x - at(left, u, v) + least);
        last = Math.max(last, x - at(right, u, v) + most);
      });
      const off = last - first - length;
      return Math.abs(off) < 0.02 ? [] : [`${mark}: between its planes ${last - first}, said ${length}`];
    });
  });
}

describe('every part is cut once, large enough, or is said', () => {
  test.each(examples)('%s', (_, made) => {
    expect(faultsOf(made)).toEqual([]);
    expect(cutBatches(made).batches.length).toBeGreaterThan(5);
  });

  test(`random units with everything on (seed ${SEED})`, () => {
    const jobs = fc.sample(anyWhole, { numRuns: 8, seed: SEED });
    const wrong = jobs.flatMap((job) =>
      faultsOf(design(job))
        .slice(0, 3)
        .map((fault) => `${fault} <- ${inWords(job)}`),
    );
    expect(wrong).toEqual([]);
  });
});
