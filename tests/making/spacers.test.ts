import { describe, expect, it } from 'vitest';
import { design, layoutsBySpacers, making } from '../../src/flow';
import { spacersOf } from '../../src/making/spacers';
import type { RunFraming } from '../../src/vocabulary/backing';
import type { Decision } from '../../src/vocabulary/field';
import type { Job } from '../../src/vocabulary/job';
import { jobOf } from '../elements/job-of';

const made = design(jobOf({}));
/** A frame from 0 to 1000 high, timber of 38 face. */
const rod = {
  ...made.rod,
  frameLow: 0,
  frameHeight: 1000,
  timber: { ...made.rod.timber, face: 38, stock: 'sawn-38x63' },
};
const stud = (from: number) => ({ from, to: from + 38, reasons: [] });
const framing = (studs: readonly number[], noggins: readonly (readonly [number, number, number])[]): RunFraming => ({
  run: 'A',
  from: 0,
  to: 1000,
  plates: [],
  studs: studs.map(stud),
  noggins: noggins.map(([from, to, low]) => ({ from, to, low, high: low + 38, reasons: [] })),
  fillets: [],
});

describe('spacers', () => {
  it('are one for each different clear gap, with how often and where it is used', () => {
    // Gaps between studs: 362, 362, 124. In the first two noggins at 238: 200 under, 1000 − 38 − 276 = 686 above.
    const frame = framing(
      [0, 400, 800, 962],
      [
        [38, 400, 238],
        [438, 800, 238],
      ],
    );
    expect(spacersOf([frame], rod, 0.1)).toEqual([
      { length: 124, shopLength: 124, stock: 'sawn-38x63', times: 1, where: ['between studs, run A'] },
      { length: 200, shopLength: 200, stock: 'sawn-38x63', times: 2, where: ['under the lowest noggin, run A'] },
      { length: 362, shopLength: 362, stock: 'sawn-38x63', times: 2, where: ['between studs, run A'] },
      { length: 686, shopLength: 686, stock: 'sawn-38x63', times: 2, where: ['above the highest noggin, run A'] },
    ]);
  });

  it('run from noggin to noggin, and are none where timbers stand tight', () => {
    // Under 100 − 38 = 62; between 200 − 138 = 62, the same block; the third lies on the second; above 962 − 276 = 686.
    const frame = framing(
      [0, 400],
      [
        [38, 400, 200],
        [38, 400, 100],
        [38, 400, 238],
      ],
    );
    expect(spacersOf([frame], rod, 0.1).map((s) => [s.length, s.times, s.where.length])).toEqual([
      [62, 2, 2],
      [362, 1, 1],
      [686, 1, 1],
    ]);
  });

  it('are one where both are cut to the same shop length, and two where they are not', () => {
    const gaps = (second: number): readonly number[] =>
      spacersOf([framing([0, 400, 800 + second], [])], rod, 0.5).map((s) => s.shopLength);
    expect(gaps(0.2)).toEqual([362]);
    expect(gaps(0.3)).toEqual([362, 362.5]);
    // 362.249 and 362.251 round to different halves, but no one can tell them apart.
    expect(spacersOf([framing([0, 400.249, 800.5], [])], rod, 0.5)).toHaveLength(1);
  });

  it('of runs are used together', () => {
    const [first, second] = [framing([0, 400], []), { ...framing([0, 400], []), run: 'B' }];
    expect(spacersOf([first, second], rod, 0.1)).toEqual([
      expect.objectContaining({ times: 2, where: ['between studs, run A', 'between studs, run B'] }),
    ]);
  });
});

describe('layouts with fewer spacers', () => {
  /** One bay of 2400 between free ends, so that studs stand by the module alone. */
  const job = jobOf({
    leftEnd: { kind: 'free' },
    rightEnd: { kind: 'free' },
    elements: { frame: { nogginRows: 0 }, pillar: { rhythm: 'count', bays: 1 }, panel: { rows: 0 } },
  });
  const withDecisions = (decisions: readonly { kind: string; key: string; value: Decision }[]): Job => {
    const elements: Record<string, Record<string, Decision>> = structuredClone(job.unit.elements);
    for (const { kind, key, value } of decisions) elements[kind][key] = value;
    return { ...job, unit: { ...job.unit, elements } };
  };
  const layouts = layoutsBySpacers(job);

  it('stand fewest first, the present one among them', () => {
    const counts = layouts.map((l) => l.spacers);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    const now = layouts.filter((l) => l.decisions.length === 0);
    expect(now).toEqual([expect.objectContaining({ spacers: making(design(job)).spacers.length })]);
  });

  it('come true when their decisions are taken', () => {
    for (const { decisions, spacers, studs, noggins } of layouts) {
      const other = design(withDecisions(decisions));
      expect(making(other).spacers).toHaveLength(spacers);
      expect(other.framing.reduce((sum, run) => sum + run.studs.length, 0)).toBe(studs);
      expect(other.framing.reduce((sum, run) => sum + run.noggins.length, 0)).toBe(noggins);
    }
  });

  it('keep to the decided centres as the widest, and to the decided rows as the fewest', () => {
    for (const { key, value } of layouts.flatMap((l) => l.decisions)) {
      if (key === 'centres') expect(value).toBeLessThan(400);
      if (key === 'nogginRows') expect(value).toBeGreaterThan(0);
    }
    expect(new Set(layouts.flatMap((l) => l.decisions.map((d) => d.key)))).toContain('method');
  });

  it('divide equally with fewer than the module where an odd gap is left over', () => {
    const now = layouts.find((l) => l.decisions.length === 0);
    const equal = layouts.find((l) => l.decisions.length === 1 && l.decisions[0].value === 'equal');
    expect(equal?.spacers).toBeLessThan(now?.spacers ?? 0);
  });

  it('are for the unit as it is taken apart', () => {
    const apart = jobOf({ runs: [{ length: 3600 }], joins: { by: 'least' }, carry: { vanLength: 2400 } });
    const now = layoutsBySpacers(apart).find((l) => l.decisions.length === 0);
    expect(design(apart).joins.length).toBeGreaterThan(0);
    expect(now?.spacers).toBe(making(design(apart)).spacers.length);
  });
});
