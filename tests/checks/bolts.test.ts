import { describe, expect, it } from 'vitest';
import { design } from '../../src/flow';
import type { Job } from '../../src/vocabulary/job';
import { jobOf, partsOf, runOf, type Said } from '../elements/job-of';
import { reachOf } from '../properties/measure';

/** A counter of 3600 in two sections, bolted at these heights. */
const bolted = (bolts: readonly number[], said: Said = {}): Job =>
  jobOf({ runs: [{ length: 3600 }], joins: { by: 'least' }, carry: { vanLength: 2400 }, fit: { bolts }, ...said });
const found = (job: Job) => design(job).findings.filter((f) => f.rule === 'bolt-at-noggin');
const withBolts = (job: Job, diameter?: number): Job => ({
  ...job,
  stock: {
    ...job.stock,
    fixings: job.stock.fixings
      .filter((f) => diameter !== undefined || f.kind !== 'bolt')
      .map((f) => (f.kind === 'bolt' ? { ...f, diameter: diameter ?? 8 } : f)),
  },
});

describe('a bolt at a join', () => {
  it('stands beside studs where noggins of 511 to 549 end', () => {
    const made = design(bolted([]));
    const [join] = made.joins;
    const beside = partsOf(made, 'NG').filter((p) => {
      const { from, to } = reachOf(runOf(made), p);
      return Math.abs(to - (join.x - 38)) < 0.1 || Math.abs(from - (join.x + 38)) < 0.1;
    });
    const rows = beside.map((p) => Math.round(p.place.origin[2]));
    expect(rows).toContain(511);
    expect(rows.filter((z) => z > 400 && z < 700 && z !== 511)).toEqual([]);
  });

  it('needs half its washer and 10 mm for the spanner clear: M8 has a washer of 16, so 18', () => {
    // 511 − 500 = 11; free at 511 − 18 = 493.
    const [finding] = found(bolted([500]));
    expect(finding).toMatchObject({ severity: 'warn', limit: 18, subject: { run: 'A', path: '/fit/bolts' } });
    expect(finding.value).toBeCloseTo(11, 9);
    expect(finding.message).toContain('within 11 mm of a noggin (511 to 549)');
    expect(finding.message).toContain('at J1;');
    expect(finding.remedy).toContain('493 mm');
    expect(found(bolted([493]))).toEqual([]);
    expect(found(bolted([494]))).toHaveLength(1);
    // 549 + 18.
    expect(found(bolted([567]))).toEqual([]);
  });

  it('in the middle of one comes against it; the nearer side is named, above or below', () => {
    const [finding] = found(bolted([545]));
    expect(finding.value).toBe(0);
    expect(finding.message).toContain('come against a noggin');
    expect(finding.remedy).toContain('567 mm');
  });

  it('keeps clear of the plates too', () => {
    // The bottom plate ends at 38; 50 is 12 above it. From 71 to 109 is the skirting's noggin: between the two 33 are clear, 36 are
    // needed; above it 109 + 18 = 127 is free.
    const [low] = found(bolted([50]));
    expect(low.message).toContain('within 12 mm of a plate (0 to 38)');
    expect(low.remedy).toContain('127 mm');
    expect(found(bolted([127]))).toEqual([]);
    // Below the top plate, from 1022, the panel frame's noggin reaches from 956 to 994: 956 − 18 = 938.
    const [high] = found(bolted([1010]));
    expect(high.message).toContain('within 12 mm of a plate (1022 to 1060)');
    expect(high.remedy).toContain('938 mm');
  });

  it('of M10 has a washer of 20 and needs 20; without a bolt in the book it is taken to be M8', () => {
    expect(found(withBolts(bolted([492]), 10))[0]).toMatchObject({ limit: 20 });
    expect(found(withBolts(bolted([491]), 10))).toEqual([]);
    expect(found(withBolts(bolted([492])))).toEqual([]);
    expect(found(withBolts(bolted([500])))[0]).toMatchObject({ limit: 18 });
  });

  it('is not hindered by the carcass behind: its rails end on the back of the studs', () => {
    const behind = (bolts: readonly number[]) => found(bolted(bolts, { elements: { carcass: { build: true } } }));
    // The top rail of the cross frame at the join reaches from 997 to 1060; the noggins decide, as without.
    expect(behind([493])).toEqual([]);
    expect(behind([500])).toHaveLength(found(bolted([500])).length);
  });

  it('at a corner is looked at in the bay of the run that stops there', () => {
    const at = (through: 'this' | 'next') =>
      found(
        jobOf({
          runs: [{ deflectionDeg: 90, through }, {}],
          joins: { by: 'hand', at: [{ run: 1 }] },
          fit: { bolts: [50] },
        }),
      ).map((f) => f.subject.run);
    expect(at('this')).toEqual(['B']);
    expect(at('next')).toEqual(['A']);
  });

  it('says nothing where there is no join, or nothing is in the way', () => {
    expect(found(jobOf({ fit: { bolts: [50, 500] } }))).toEqual([]);
    expect(found(bolted([]))).toEqual([]);
  });
});
