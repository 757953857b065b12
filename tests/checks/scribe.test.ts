import { describe, expect, it } from 'vitest';
import { scribeEnough } from '../../src/checks/scribe';
import { design } from '../../src/flow';
import { jobOf } from '../elements/job-of';

/** Between two walls that lean by so much, with 15 mm left on. */
const leaning = (leanDeg: number) =>
  design(
    jobOf({
      leftEnd: { kind: 'wall', wall: 'Left wall' },
      rightEnd: { kind: 'wall', wall: 'Right wall' },
      height: 1100,
      depth: 400,
      fit: { scribe: 15 },
      survey: {
        walls: ['Left wall', 'Right wall'].map((name) => ({ name, directionDeg: 90, leanDeg })),
      },
    }),
  ).findings.filter((f) => f.rule === 'scribe-too-small');

describe('what is left on to be scribed', () => {
  it('is enough for a wall that leans less', () => {
    // tan 0.7° · 1100 = 13.4 at the top.
    expect(leaning(0.7)).toEqual([]);
  });

  it('is warned of where the wall takes more, with both numbers and what to leave on', () => {
    // tan 1°: over the front's 1060 it is 18.5, up to the top, 1100, 19.2; at both ends.
    const found = leaning(1);
    expect(found.map((f) => [f.severity, Math.round((f.value ?? 0) * 10) / 10, f.limit])).toEqual(
      [18.5, 19.2, 18.5, 19.2].map((most) => ['warn', most, 15]),
    );
    expect(found[0].message).toContain('18.5 mm');
    expect(found[0].remedy).toContain('at least 19 mm');
    expect(found[0].subject).toEqual({ run: 'A', path: '/fit/scribe' });
  });

  it('may be short by what a bead of filler hides, 2 mm', () => {
    const scribe = { where: 'front', run: 'A', length: 1100, most: 16.9, left: 15 };
    expect(scribeEnough({ scribes: [scribe] })).toEqual([]);
    expect(scribeEnough({ scribes: [{ ...scribe, most: 17.1 }] })).toHaveLength(1);
    expect(scribeEnough({ scribes: [{ ...scribe, most: 0, left: 0 }] })).toEqual([]);
  });
});
