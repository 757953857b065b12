import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { wishOf } from '../behind-job';
import { findingOf, jobOf, partsOf, rulesOf } from '../job-of';

const carcass = { build: true, setBack: 40 };
const worktop = { height: 850, depth: 500 };
const madeWith = (more: object, elements: object = {}) =>
  design(jobOf({ depth: 640, height: 1100, elements: { carcass, worktop, ...elements }, ...more }));

describe('a worktop', () => {
  test('from wall to wall leaves nothing open', () => {
    expect(rulesOf(madeWith({ runs: [{ length: 2400 }] }))).not.toContain('worktop-left-open');
  });

  test('round an outside corner leaves nothing open', () => {
    const made = madeWith({ runs: [{ length: 2400, deflectionDeg: 90 }, { length: 2400 }] });
    expect(rulesOf(made)).not.toContain('worktop-left-open');
    expect(rulesOf(made)).not.toContain('worktop-corner-open');
  });

  test('where a join leaves no room for two cross frames: from where to where, and no bearer there', () => {
    // B's carcass begins where A's does on the corner's line, 601 behind B's end; joined at 750 the piece between is 149, under 226.
    const made = madeWith({
      runs: [
        { length: 2400, deflectionDeg: 90 },
        { length: 2400, rhythm: { by: 'marks', marks: [750] } },
      ],
      joins: { by: 'hand', at: [{ run: 2, x: 750 }] },
    });
    const found = made.findings.filter((f) => f.rule === 'worktop-left-open');
    // A's ends square on its last cross frame, 563 before its end and so 500 before the mitre.
    expect(found.map((f) => [f.subject.run, f.value])).toEqual([
      ['A', expect.closeTo(500, 9)],
      ['B', 687],
    ]);
    expect(found[1].message).toContain('from 63 to 750 mm');
    // A's bearer ends with its last cross frame: nothing of B's worktop comes up to the corner.
    const ends = partsOf(made, 'BE').map((p) => p.place.origin[0] + p.size.length);
    const last = made.rod.runs[0].crossLines.at(-1);
    expect(Math.max(...ends)).toBeCloseTo(last?.from ?? NaN, 6);
  });

  test('behind an inside corner the piece between two is said', () => {
    const made = madeWith({ runs: [{ length: 2400, deflectionDeg: -90 }, { length: 2400 }] });
    expect(findingOf(made, 'worktop-corner-open')).toMatchObject({ severity: 'note', value: 500 });
    expect(rulesOf(made)).not.toContain('worktop-left-open');
  });

  test('behind an inside corner nothing parts where only one run has a worktop', () => {
    // No cross frames have room behind 140.
    const made = madeWith({ runs: [{ length: 2400, deflectionDeg: -90 }, { length: 140 }] });
    expect(made.rod.runs.map((run) => run.crossLines.length > 0)).toEqual([true, false]);
    expect(rulesOf(made)).not.toContain('worktop-corner-open');
  });

  test('at an impossible height is left out, and what stands behind stays as for the nearest', () => {
    const bays = [wishOf({ purpose: 'shelves' })];
    const runs = [{ length: 2400 }];
    const at = (height: number) => madeWith({ runs, bays }, { worktop: { ...worktop, height, depth: 560 } });
    const found = findingOf(at(1090), 'worktop-too-high');
    const nearest = at(found.limit ?? 0);
    expect(partsOf(at(1090), 'WT')).toEqual([]);
    expect(partsOf(nearest, 'WT')).toHaveLength(1);
    const others = (made: ReturnType<typeof at>) =>
      made.parts.filter((p) => p.code !== 'WT').map((p) => [p.mark, p.place]);
    expect(others(at(1090))).toEqual(others(nearest));
  });
});
