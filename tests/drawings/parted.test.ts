import { describe, expect, it } from 'vitest';
import { elevationOf } from '../../src/drawings/elevation';
import { boundsOf } from '../../src/drawings/view';
import { design } from '../../src/flow';
import type { PlacedOpening } from '../../src/vocabulary/opening';
import { openingOf } from '../elements/behind-job';
import { jobOf } from '../elements/job-of';
import { box, byHand } from './fixture';
import { at, of, texts } from './strokes';

const run = byHand.rod.runs[0]!;
const join = { id: 'J1', x: 900, behind: 'pillar', coverFrom: 830, coverTo: 970 } as const;
const withRun = (change: Partial<typeof run>, rest: Partial<typeof byHand> = {}) => ({
  ...byHand,
  ...rest,
  rod: { ...byHand.rod, runs: [{ ...run, ...change }] },
});

/** A carcass by hand: posts from −460 to −500 at each end and in the middle, a rail along the bottom, a shelf and a door. */
const behind = { from: 'finished', d: [-480, -462] } as const;
const carcass = [
  ...[0, 881, 1762].map((x, i) =>
    box({
      kind: 'carcass',
      mark: `A-RP${i + 1}`,
      name: 'post',
      from: 'framed',
      x: [x, x + 38],
      z: [0, 1010],
      d: [-500, -437],
    }),
  ),
  box({ kind: 'carcass', mark: 'A-RA1', name: 'rail', from: 'framed', x: [38, 881], z: [0, 63], d: [-500, -462] }),
  box({ kind: 'shelf', mark: 'A-SH1', name: 'shelf', ...behind, x: [38, 881], z: [400, 418], d: [-460, -80] }),
  box({ kind: 'door', mark: 'A-DR1', name: 'door', ...behind, x: [922, 1759], z: [20, 1000], d: [-518, -500] }),
];
const whole = withRun(
  {
    crossLines: [
      { from: 0, to: 38, why: 'end' },
      { from: 881, to: 919, why: 'bay' },
      { from: 1762, to: 1800, why: 'end' },
    ],
  },
  { parts: [...byHand.parts, ...carcass] },
);

describe('joins on the elevations', () => {
  const parted = withRun({ joins: [join], joinAtRight: 'J2' });

  it.each(['front', 'framing', 'behind'] as const)('%s: a narrow chain line over the whole height at each', (kind) => {
    const drawn = elevationOf(parted, 'A', kind);
    const centres = kind === 'front' ? [70, 900, 1730] : [];
    const lines = of(drawn, 'line').filter((line) => line.style === 'chain');
    const atJoins = lines.slice(centres.length);
    // From behind the left end is at the right.
    expect(atJoins.map((line) => line.points[0][0])).toEqual(kind === 'behind' ? [900, 0] : [900, 1800]);
    for (const { points, pen } of atJoins) {
      expect(pen).toBe('narrow');
      expect(points[0][1]).toBeLessThan(0);
      expect(points[1][1]).toBeGreaterThan(1010);
    }
  });

  it('are named with where they are, measured from the left end of the frame line', () => {
    expect(texts(at(elevationOf(parted, 'A', 'front'), 'horizontal', 20))).toEqual(['J1 900', 'J2 1800']);
    expect(texts(at(elevationOf(parted, 'A', 'behind'), 'horizontal', 10))).toEqual(['J1 900', 'J2 1800']);
    const framing = texts(at(elevationOf(parted, 'A', 'framing'), 'horizontal', 10));
    expect(framing).toEqual(expect.arrayContaining(['0 frame line', '800', 'J1 900', 'J2 1800']));
  });

  it('at the left end takes the place of the datum', () => {
    const runs = [{ ...run, id: 'Z', joinAtRight: 'J1' }, run];
    const framing = elevationOf({ ...byHand, rod: { ...byHand.rod, runs } }, 'A', 'framing');
    const row = at(framing, 'horizontal', 10);
    expect(texts(row)).toContain('J1 0 frame line');
    expect(texts(row)).not.toContain('0 frame line');
  });

  it('part the plates: each length has its own figure', () => {
    const plates = [
      { from: 3, to: 900 },
      { from: 900, to: 1800 },
    ];
    const framing = [{ ...byHand.framing[0]!, from: 3, plates }];
    const row = texts(at(elevationOf({ ...parted, framing }, 'A', 'framing'), 'horizontal', -20));
    expect(row).toEqual(['plates 897', 'plates 900', '3']);
  });
});

describe('what stands behind', () => {
  it('is left out of the framing view, which shows the front frame', () => {
    const shown = of(elevationOf(whole, 'A', 'framing'), 'polygon').map((polygon) => polygon.part);
    expect(shown.filter((mark) => carcass.some((part) => part.mark === mark))).toEqual([]);
    expect(shown).toContain('A-ST1');
  });

  it('is hidden by the front, and seen from behind, where it hides the front', () => {
    const marks = (kind: 'front' | 'behind') =>
      new Set(of(elevationOf(whole, 'A', kind), 'polygon').map((polygon) => polygon.part));
    const seen = [...marks('behind')];
    for (const { mark } of carcass) {
      expect(marks('front').has(mark)).toBe(false);
      expect(seen).toContain(mark);
    }
    // Pillars, skirting and panel frames lie on the other side of the skin.
    expect(seen.filter((mark) => /PB|SK|PM/.test(mark ?? ''))).toEqual([]);
    // The door, 922 to 1759, hides the stud at 1200 but for what stands above and below it.
    expect(seen.indexOf('A-DR1')).toBeGreaterThan(seen.indexOf('A-ST4'));
  });

  it('stands the other way round from behind', () => {
    const door = of(elevationOf(whole, 'A', 'behind'), 'polygon').find((polygon) => polygon.part === 'A-DR1')!;
    const xs = door.points.map(([x]) => x);
    // 1800 − 1759 to 1800 − 922.
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([41, 878]);
  });

  it('has the clear widths between cross frames, and heights: shelves to their upper face', () => {
    const drawn = elevationOf(whole, 'A', 'behind');
    expect(texts(at(drawn, 'horizontal', -10))).toEqual(['38', '843', '38', '843', '38']);
    expect(texts(at(drawn, 'horizontal', -20))).toEqual(['frame line 1800']);
    expect(texts(at(drawn, 'vertical', 10))).toEqual(['20', '418', '1000', '1010', '1050']);
  });

  it('is lettered where it is seen, its frame without a note where there is no room', () => {
    const letters = of(elevationOf(whole, 'A', 'behind'), 'text');
    expect(letters.map(({ text }) => text).sort()).toEqual([
      'A-DR1',
      'A-RA1',
      'A-RP1',
      'A-RP2',
      'A-RP3',
      'A-SH1',
      'A-TP1',
    ]);
    expect(letters.find(({ text }) => text === 'A-RP1')?.otherwise).toBe('');
    expect(letters.find(({ text }) => text === 'A-SH1')?.otherwise).toBe('A-SH1 (by hand)');
  });
});

describe('openings', () => {
  const opening = (change: Partial<PlacedOpening>): PlacedOpening => ({
    index: 0,
    name: 'Urn socket',
    run: 'A',
    through: 'front',
    use: 'socket',
    round: false,
    from: 1000,
    to: 1145,
    low: 400,
    high: 485,
    ...change,
  });
  it('are dashed in the framing view and said in words, round ones as such; those of other runs and of the top are not', () => {
    const openings = [
      opening({}),
      opening({ index: 1, name: '', round: true, from: 300, to: 360, low: 270, high: 330 }),
      opening({ index: 2, name: 'elsewhere', run: 'B' }),
      opening({ index: 3, name: 'Tap', through: 'top' }),
    ];
    const drawn = elevationOf({ ...byHand, openings }, 'A', 'framing');
    const dashed = of(drawn, 'line').filter((line) => line.style === 'dashed');
    expect(dashed).toHaveLength(2);
    expect(dashed[0].points).toEqual([
      [1000, 400],
      [1145, 400],
      [1145, 485],
      [1000, 485],
      [1000, 400],
    ]);
    for (const [x, y] of dashed[1].points) expect(Math.hypot(x - 330, y - 300)).toBeCloseTo(30, 9);
    const said = (drawn.notes ?? []).filter((note) => note.includes('its middle'));
    expect(said).toEqual([
      'Urn socket: 145 × 85, its middle 1072.5 along and 442.5 up.',
      'Opening 2: 60 round, its middle 330 along and 300 up.',
    ]);
    expect(elevationOf({ ...byHand, openings }, 'A', 'front').notes).toEqual(expect.arrayContaining(said));
  });

  it('are drawn on the front as holes of the skin, at their size and place; the timber round them stays hidden', () => {
    const made = design(
      jobOf({
        openings: [openingOf({ name: 'Socket', x: 450 })],
      }),
    );
    const polygons = of(elevationOf(made, 'A', 'front'), 'polygon');
    const holes = polygons.filter((polygon) => polygon.fill === 'none');
    const { min, max } = boundsOf(holes.flatMap(({ points }) => points));
    expect(holes.map(({ part }) => part)).toEqual(['A-CL1']);
    // 450 ± 72.5 and 500 ± 42.5.
    expect([...min, ...max].map((mm) => Number(mm.toFixed(6)))).toEqual([377.5, 457.5, 522.5, 542.5]);
    const shown = new Set(polygons.map((polygon) => polygon.part));
    expect(made.parts.filter((part) => part.from === 'framed' && shown.has(part.mark))).toEqual([]);
  });
});
