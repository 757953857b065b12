import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { design } from '../../../src/flow';
import type { Design } from '../../../src/vocabulary/design';
import { SEED } from '../../base/seed';
import { cannotBeBuilt } from '../../properties/buildable';
import { overlaps, referee, touchingNothing } from '../../properties/referee';
import { inWords } from '../../properties/sample';
import { varied } from './varied';

const DRAWN = 130;
const LEAST = 100;
/** mm³ shared, and mm to the nearest part. */
const [SHARED, GAP] = [1, 0.5];

/** What is looked at: pillars, their bases and caps, plinths of every kind. */
const CODES = ['PI', 'PS', 'PC', 'PR', 'BK', 'BR', 'PB', 'KB'];

describe(`pillars and plinths of random units (seed ${SEED})`, () => {
  const units = fc
    .sample(varied, { numRuns: DRAWN, seed: SEED })
    .map((job) => design(job))
    .filter((made) => !cannotBeBuilt(made));
  const codeOf = (made: Design) => new Map(made.parts.map((p) => [p.mark, p.code]));
  let kernel: Awaited<ReturnType<typeof referee>>;
  beforeAll(async () => {
    kernel = await referee();
  });

  it(`are made in at least ${LEAST} units, every kind of them often`, () => {
    expect(units.length).toBeGreaterThanOrEqual(LEAST);
    for (const code of CODES)
      expect(units.flatMap((u) => u.parts.filter((p) => p.code === code)).length, code).toBeGreaterThan(10);
  });

  it(`share no more than ${SHARED} mm³ with any part, and touch one`, { timeout: 300_000 }, () => {
    const wrong = units.flatMap((made) => {
      const codes = codeOf(made);
      const isMine = (mark: string): boolean => CODES.includes(codes.get(mark) ?? '');
      const shared = overlaps(kernel, made.parts, SHARED).filter(({ a, b }) => isMine(a) || isMine(b));
      const loose = touchingNothing(kernel, made.parts, GAP).filter(isMine);
      return shared.length + loose.length > 0
        ? [`${JSON.stringify([shared.slice(0, 3), loose])} <- ${inWords(made.job)}`]
        : [];
    });
    expect(wrong.slice(0, 3), `${wrong.length} of ${units.length}`).toEqual([]);
  });

  it('say how each is held', () => {
    const silent = units.flatMap((u) => u.parts.filter((p) => CODES.includes(p.code) && !p.holds?.length));
    expect(silent.map((p) => p.mark)).toEqual([]);
  });
});
