import { describe, expect, test } from 'vitest';
import { divide, type Front } from '../../src/setting-out/bays';
import type { RunEnd } from '../../src/vocabulary/rod';

const end = (kind: RunEnd['kind']): RunEnd => ({
  kind,
  deflectionDeg: kind === 'corner' ? 90 : 0,
  grows: kind === 'corner' ? 1 : 0,
  through: true,
  frameAt: 0,
  toReturn: false,
  topBeyond: 0,
  scribe: 0,
  flap: false,
});
const front = (said: Partial<Front>): Front => ({
  run: 'A',
  path: '/unit/plan/runs/0/length',
  from: 0,
  to: 3000,
  left: end('wall'),
  right: end('wall'),
  width: 100,
  cornerWidth: 60,
  footOverhang: 5,
  rhythm: { by: 'count', count: 3 },
  atCorners: true,
  bareFrom: said.from ?? 0,
  bareTo: said.to ?? 3000,
  wishes: [],
  ...said,
});

describe('by number', () => {
  test('equal bays between equal pillars', () => {
    const { pillars, bays, findings } = divide(front({ from: 0, to: 3400 }));
    expect(findings).toEqual([]);
    expect(pillars.map((p) => [p.from, p.to])).toEqual([
      [0, 100],
      [1100, 1200],
      [2200, 2300],
      [3300, 3400],
    ]);
    expect(bays.map((b) => b.to - b.from)).toEqual([1000, 1000, 1000]);
  });

  test('a corner board of its own width at a corner, mitred', () => {
    const { pillars } = divide(front({ from: -30, left: end('corner') }));
    expect(pillars[0]).toMatchObject({ from: -30, to: 30, where: 'left', mitred: true });
    expect(pillars.at(-1)).toMatchObject({ where: 'right', mitred: false, from: 2900, to: 3000 });
  });

  test('feet are wider than their pillars, but not past the ends', () => {
    const { pillars, bays } = divide(front({}));
    expect([pillars[0].footFrom, pillars[0].footTo]).toEqual([0, 105]);
    expect([pillars.at(-1)?.footFrom, pillars.at(-1)?.footTo]).toEqual([2895, 3000]);
    expect(bays[0].footTo - bays[0].footFrom).toBeCloseTo(bays[0].to - bays[0].from - 10, 9);
  });
});

describe('by pitch', () => {
  const count = (pitch: number): number => divide(front({ rhythm: { by: 'pitch', pitch } })).bays.length;

  // 3000 between walls, 100 wide: 2900 from the first centre to the last.
  test.each([
    [2900, 1],
    [2899, 2],
    [1450, 2],
    [1449, 3],
    [725, 4],
    [724.999, 5],
  ])('of at most %d: %d bays', (pitch, bays) => expect(count(pitch)).toBe(bays));

  test('float noise asks for no further bay', () => expect(count(2900 / 7)).toBe(7));
});

describe('by marks', () => {
  test('pillars stand where they were put', () => {
    const { pillars } = divide(front({ rhythm: { by: 'marks', marks: [700, 1900] } }));
    expect(pillars.map((p) => p.centre)).toEqual([50, 700, 1900, 2950]);
  });

  test('marks that overlap an end pillar are left out, and said', () => {
    const { pillars, findings } = divide(front({ rhythm: { by: 'marks', marks: [120, 1900] } }));
    expect(pillars).toHaveLength(2);
    expect(findings).toMatchObject([{ severity: 'stop', rule: 'bays-too-narrow', value: -30, limit: 0 }]);
  });
});

describe('what can’t be', () => {
  test('end pillars wider than the face: no pillars, with what is needed and what there is', () => {
    const { pillars, bays, findings } = divide(front({ to: 180 }));
    expect([pillars, bays]).toEqual([[], []]);
    expect(findings).toMatchObject([{ rule: 'pillars-wider-than-run', value: 180, limit: 200, subject: { run: 'A' } }]);
    expect(findings[0].message).toContain('need 200 mm');
  });

  test('more bays than go: the pillars between are left out, with the width of the bay that was left', () => {
    const { pillars, bays, findings } = divide(front({ rhythm: { by: 'count', count: 40 } }));
    expect(pillars.map((p) => p.where)).toEqual(['left', 'right']);
    expect(bays).toHaveLength(1);
    // (2800 − 39 · 100)/40
    expect(findings[0]).toMatchObject({ rule: 'bays-too-narrow', limit: 0 });
    expect(findings[0].value).toBeCloseTo(-27.5, 9);
  });
});
