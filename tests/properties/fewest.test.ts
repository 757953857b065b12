import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { design } from '../../src/flow';
import { leastApart, placesIn } from '../../src/setting-out/joins';
import type { Design } from '../../src/vocabulary/design';
import type { Job, JoinMark } from '../../src/vocabulary/job';
import { SEED } from '../base/seed';
import { jobOf } from '../elements/job-of';
import { parted } from './holds/sections';
import { anyWhole } from './random-whole';
import { inWords } from './sample';

/** Drawn, until so many have so few places for a join that every way of parting them can be tried. */
const DRAWN = 240;
const MOST_PLACES = 6;
const TRIED = 20;
/** Looked at for where their parts are. */
const LOOKED_AT = 120;

const withJoins = (job: Job, joins: Job['unit']['joins']): Job => ({ ...job, unit: { ...job.unit, joins } });
/** Every way of choosing so many places. Fewer need not be tried: one join more only makes lighter and shorter sections. */
const ways = (places: readonly JoinMark[], count: number): readonly (readonly JoinMark[])[] =>
  Array.from({ length: 1 << places.length }, (_, bits) => places.filter((__, i) => bits & (1 << i))).filter(
    (way) => way.length === count,
  );

/** Everything that keeps a section from being carried. */
const breaches = (made: Design): number => made.sections.reduce((sum, s) => sum + s.breaches.length, 0);

/** A way of parting the unit at these places with one join fewer than it has, such that every section can be carried. */
function fewerThatDo({ job, joins }: Design, places: readonly JoinMark[]): readonly JoinMark[] | undefined {
  const chosen = joins.filter((j) => j.at !== 'flap').length;
  return ways(places, chosen - 1).find((at) => breaches(design(withJoins(job, { by: 'hand', at }))) === 0);
}

/** Behind pillars and at corners: where a unit is parted if that will do. */
function placesOf({ rod }: Design): readonly JoinMark[] {
  return rod.runs.flatMap((run): JoinMark[] => {
    if (!run.sound) return [];
    const number = run.jobIndex === null ? 0 : run.jobIndex + 1;
    const inRun = run.jobIndex === null ? [] : placesIn(run, rod.timber.face).filter((p) => p.behind === 'pillar');
    return [
      ...inRun.map(({ x }): JoinMark => ({ run: number, x })),
      ...(run.right.kind === 'corner' ? [{ run: number }] : []),
    ];
  });
}

describe(`the fewest sections, against every other way (seed ${SEED})`, () => {
  const jobs = fc.sample(anyWhole, { numRuns: DRAWN, seed: SEED }).map((job) => withJoins(job, { by: 'least' }));

  it('no fewer would do', { timeout: 120_000 }, () => {
    let tried = 0;
    for (const job of jobs) {
      const made = design(job);
      const places = placesOf(made);
      if (places.length > MOST_PLACES || made.joins.every((j) => j.at === 'flap') || breaches(made) > 0) continue;
      if (tried++ === TRIED) break;
      const fewer = fewerThatDo(made, places);
      if (fewer) expect.fail(`${JSON.stringify(fewer)} would do: one join fewer <- ${inWords(job)}`);
    }
    expect(tried).toBeGreaterThanOrEqual(TRIED);
  });

  it('every part is in one section or site-fitted, none fitted in the workshop crosses a join', {
    timeout: 120_000,
  }, () => {
    let looked = 0;
    for (const job of jobs.slice(0, LOOKED_AT)) {
      const found = parted(design(job));
      looked += found.looked;
      expect(found.wrong, inWords(job)).toEqual([]);
    }
    expect(looked).toBeGreaterThan(LOOKED_AT);
  });

  it('the check can fail: a unit parted once more than it must be is found', () => {
    expect(leastApart(38)).toBe(176);
    const whole = design(jobOf({ runs: [{ length: 2400 }], joins: { by: 'least' } }));
    const [place] = placesOf(whole);
    expect(whole.joins).toEqual([]);
    expect(breaches(whole)).toBe(0);
    const once = design(withJoins(whole.job, { by: 'hand', at: [place] }));
    expect(once.joins).toHaveLength(1);
    expect(fewerThatDo(once, [place])).toEqual([]);
  });
});
