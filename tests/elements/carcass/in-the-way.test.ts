import { describe, expect, it } from 'vitest';
import { design } from '../../../src/flow';
import type { Design } from '../../../src/vocabulary/design';
import type { Decision } from '../../../src/vocabulary/field';
import type { Opening } from '../../../src/vocabulary/job';
import { cornersIn } from '../../properties/measure';
import { openingOf } from '../behind-job';
import { findingOf, jobOf, partsOf, rulesOf, runOf, type Said } from '../job-of';

/*
 * Timber 38 × 63 in front and behind, the top 400 deep and 75 over the face: the front frame's back at d = −63, posts at −285. A worktop 32
 * thick at 900 and 500 deep has its posts at −553 and bearers 63 high from 805 to 868.
 */

const hole = (said: Partial<Opening>) => openingOf({ use: 'grille', x: 2600, z: 840, width: 60, height: 60, ...said });
const made = (said: Said, worktop: Readonly<Record<string, Decision>> = {}): Design =>
  design(jobOf({ ...said, elements: { panel: { rows: 0 }, worktop, carcass: { build: true }, ...said.elements } }));

describe('a worktop in the way of an opening', () => {
  const runs = [{ length: 3000, deflectionDeg: 90 }, { length: 2800 }];

  it('runs on past the last cross frame, into an outside corner: that frame ends at 3000 − 563 = 2437, the worktop’s rear edge', () => {
    const one = made({ runs, openings: [hole({ x: 2600 })] }, { height: 900, depth: 500 });
    expect(runOf(one).crossLines.at(-1)?.to).toBeCloseTo(2437, 9);
    expect(one.openings).toEqual([]);
    expect(findingOf(one, 'opening-refused').message).toContain('the worktop and its bearer');
    // Its other side too: the next run begins at the corner.
    const other = made({ runs, openings: [hole({ run: 2, x: 300 })] }, { height: 900, depth: 500 });
    expect(findingOf(other, 'opening-refused').message).toContain('the worktop and its bearer');
    // Below the bearer it has its place: 805 − 30 and what is kept clear.
    expect(made({ runs, openings: [hole({ z: 760 })] }, { height: 900, depth: 500 }).openings).toHaveLength(1);
  });
  it('no opening in the front comes out at a bearer, wherever it is along the run', () => {
    for (let x = 2200; x < 2950; x += 25) {
      const one = made({ runs, openings: [hole({ x })] }, { height: 900, depth: 500 });
      const bearers = partsOf(one, 'BE').map((p) => cornersIn(runOf(one), p).map((c) => c.x));
      for (const o of one.openings)
        expect(bearers.filter((xs) => Math.min(...xs) < o.to && Math.max(...xs) > o.from)).toEqual([]);
    }
  });
});

it('without rear rails an opening through the top has its place where they would be', () => {
  const said: Said = {
    runs: [{ length: 3000 }],
    openings: [hole({ through: 'top', x: 1000, z: 320, use: 'pipe', width: 40 })],
  };
  expect(made(said).openings).toEqual([]);
  expect(made({ ...said, elements: { carcass: { build: true, rearRail: false } } }).openings).toHaveLength(1);
});

it('a bearer shorter than 60 beyond the last cross frame is left out', () => {
  // From posts at −285 to the bearer's back at −101: 184 · tan(φ/2), which is 59.8 at 36° and 61.6 at 37°.
  const beyond = (deflectionDeg: number): number => {
    const one = made({ runs: [{ length: 3000, deflectionDeg }, { length: 2800 }] }, { height: 900, depth: 200 });
    const last = runOf(one).crossLines.at(-1)?.to ?? 0;
    return partsOf(one, 'BE').filter((p) => Math.min(...cornersIn(runOf(one), p).map((c) => c.x)) > last - 1).length;
  };
  expect([beyond(36), beyond(37)]).toEqual([0, 1]);
});

describe('posts moved back to a worktop’s edge', () => {
  it('are said, with what was wished and what is made', () => {
    // 63 + 250 = 313 behind the face; the top's back edge lies at 325, so 12 in front of it. Wished: 40, at 285.
    const said = findingOf(made({}, { height: 900, depth: 250 }), 'carcass-posts-moved');
    expect(said).toMatchObject({ severity: 'note', value: 12, limit: 40 });
    for (const figure of ['40 mm', '285 mm', '12 mm', '313 mm']) expect(said.message).toContain(figure);
  });
  it('where they stand as wished, or stop under it, nothing is said', () => {
    // 63 + 222 = 285.
    expect(rulesOf(made({}, { height: 900, depth: 222 }))).not.toContain('carcass-posts-moved');
    expect(rulesOf(made({}, { height: 900, depth: 222.1 }))).toContain('carcass-posts-moved');
    expect(rulesOf(made({}, { height: 900, depth: 500 }))).not.toContain('carcass-posts-moved');
  });
  it('as deep as the top they still go through to it; a tenth deeper they stop under the worktop', () => {
    // 75 − 400 = −325 = −63 − 262.
    expect(made({}, { height: 900, depth: 262 }).rod.carcass).toMatchObject({ back: -325, high: 1060 });
    expect(made({}, { height: 900, depth: 262.1 }).rod.carcass).toMatchObject({ high: 868 });
  });
});
