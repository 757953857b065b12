import { describe, expect, it } from 'vitest';
import { floorGap } from '../../src/checks/floor-gap';
import { design } from '../../src/flow';
import { findingOf, jobOf, rulesOf, type Said } from '../elements/job-of';

/** A floor that is surveyed at both ends of run A. */
const falling = (left: number, right: number, said: Said = {}) =>
  design(
    jobOf({
      ...said,
      survey: {
        levels: [
          { run: 1, along: 0, height: left },
          { run: 1, along: 2400, height: right },
        ],
      },
    }),
  );

describe('what stays open at the floor', () => {
  it('is what the floor falls below its highest point, where it is lowest', () => {
    const finding = findingOf(falling(0, -7), 'floor-gap');
    expect(finding).toMatchObject({ severity: 'warn', value: 7, limit: 2, subject: { run: 'A' } });
    expect(finding.message).toContain('as much as 7 mm stays open below, most at 2400 mm along it');
    expect(finding.message).toMatch(/plinth block.*skirting/);
    expect(finding.remedy).toContain('Leave 7 mm on');
    expect(findingOf(falling(-7, 0), 'floor-gap').message).toContain('most at 0 mm along it');
  });

  it('is nothing up to 2 mm, which filler hides, and on a level floor', () => {
    expect(rulesOf(falling(0, -2))).not.toContain('floor-gap');
    expect(rulesOf(falling(4, 4))).not.toContain('floor-gap');
    expect(rulesOf(falling(0, -2.1))).toContain('floor-gap');
  });

  it('is below a kick board too, which is seen, and a board along the foot', () => {
    const names = (style: string) =>
      findingOf(falling(0, -7, { elements: { plinth: { style, height: 100, recess: 30 } } }), 'floor-gap').message;
    expect(names('kicked')).toContain('kick board');
    expect(names('plain')).toContain('plinth board');
  });

  it('is less by what is left on at the lower edge, and told run by run', () => {
    const scribe = { where: 'floor, run B: plinth board', run: 'B', length: 900, most: 9, left: 0 };
    expect(floorGap({ floorScribes: [{ ...scribe, left: 7 }] })).toEqual([]);
    const [finding] = floorGap({ floorScribes: [{ ...scribe, left: 4 }] });
    // 9 − 4
    expect(finding).toMatchObject({ value: 5, subject: { run: 'B', path: '/survey/levels' } });
    expect(finding.message).toContain('4 mm is left on');
    expect(floorGap({})).toEqual([]);
    const made = design(
      jobOf({
        runs: [{ deflectionDeg: 90 }, { length: 1800 }],
        survey: {
          levels: [
            { run: 1, along: 0, height: 0 },
            { run: 1, along: 2400, height: 0 },
            { run: 2, along: 0, height: 0 },
            { run: 2, along: 1800, height: -5 },
          ],
        },
      }),
    );
    expect(made.findings.filter((f) => f.rule === 'floor-gap').map((f) => f.subject.run)).toEqual(['B']);
  });
});
