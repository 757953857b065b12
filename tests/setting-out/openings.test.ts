import { describe, expect, test } from 'vitest';
import { design } from '../../src/flow';
import { placeOpenings } from '../../src/setting-out/openings';
import type { Opening } from '../../src/vocabulary/job';
import type { Obstacle } from '../../src/vocabulary/opening';
import { openingOf } from '../elements/behind-job';
import { findingOf, jobOf, type Said } from '../elements/job-of';

/**
 * 3000 of frame, 1100 high under a top of 40, so 1060 to its underside; pillars of 140 in 4 bays: openings (3000 − 2·140 − 3·140)/4 = 575,
 * so bays 140–715, 855–1430, 1570–2145, 2285–2860. Timber 38 × 63: plates up to 38 and from 1022.
 */
const rodOf = (said: Said = {}) =>
  design(jobOf({ runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }], height: 1100, ...said })).rod;
const place = (openings: readonly Opening[], obstacles: readonly Obstacle[] = [], said: Said = {}) =>
  placeOpenings(rodOf(said), openings, obstacles);
const only = (opening: Opening, obstacles: readonly Obstacle[] = [], said: Said = {}) => {
  const { placed, findings } = place([opening], obstacles, said);
  expect(placed).toEqual([]);
  expect(findings).toHaveLength(1);
  return findings[0];
};

describe('an opening in a good place', () => {
  test('has it, and nothing is said', () => {
    const { placed, findings } = place([openingOf({ name: 'till' })]);
    expect(findings).toEqual([]);
    expect(placed).toEqual([
      {
        index: 0,
        name: 'till',
        run: 'A',
        through: 'front',
        use: 'socket',
        round: false,
        from: 357.5,
        to: 502.5,
        low: 457.5,
        high: 542.5,
      },
    ]);
  });
  test('for a pipe is round: as high as it is wide', () =>
    expect(place([openingOf({ use: 'pipe', width: 60 })]).placed[0]).toMatchObject({
      round: true,
      low: 470,
      high: 530,
    }));
  test('may touch a pillar, and reach to 5 mm from a plate', () => {
    // 715 − 72.5 = 642.5; 38 + 5 + 42.5 = 85.5.
    expect(place([openingOf({ x: 642.5, z: 85.5 })]).findings).toEqual([]);
    expect(only(openingOf({ x: 642.6, z: 85.5 })).rule).toBe('opening-refused');
    expect(only(openingOf({ x: 642.5, z: 85.4 })).rule).toBe('opening-refused');
  });
});

describe('an opening that meets something is refused', () => {
  test('a pillar: by how much, and how far the nearest good place is', () => {
    // 700 + 72.5 − 715 = 57.5 into the pillar; over to the other side it would be 855 + 72.5 − 700 = 227.5.
    expect(only(openingOf({ x: 700, name: 'till' }))).toMatchObject({
      severity: 'stop',
      rule: 'opening-refused',
      subject: { run: 'A', path: '/unit/openings/0' },
      value: 57.5,
      message:
        'Opening 1 (till) in run A meets pillar 2 by 57.5 mm. The nearest good place is 57.5 mm to the left, to 642.5 mm.',
      remedy: 'Move it 57.5 mm to the left, to 642.5 mm. It is left out.',
    });
    expect(only(openingOf({ x: 860 })).remedy).toContain('67.5 mm to the right, to 927.5 mm');
  });
  test('the bottom plate: up. 38 − (60 − 42.5) = 20.5, and 5 are kept clear', () =>
    expect(only(openingOf({ z: 60 }))).toMatchObject({
      value: 20.5,
      limit: 0,
      message: expect.stringContaining(
        'meets the bottom plate by 20.5 mm. The nearest good place is 25.5 mm up, to 85.5 mm, which leaves 5 mm clear.',
      ),
    }));
  test('or comes too near to it: 83 − 42.5 − 38 = 2.5', () =>
    expect(only(openingOf({ z: 83 }))).toMatchObject({
      value: 2.5,
      limit: 5,
      message: expect.stringContaining(
        'comes within 2.5 mm of the bottom plate; 5 mm stays clear. The nearest good place is 2.5 mm up, to 85.5 mm',
      ),
    }));
  test('or touches it', () =>
    expect(only(openingOf({ z: 80.5 })).message).toContain('touches the bottom plate; 5 mm stays clear.'));
  test('the top plate: down. 1000 + 42.5 − 1022 = 20.5', () =>
    expect(only(openingOf({ z: 1000 }))).toMatchObject({
      value: 20.5,
      remedy: 'Move it 25.5 mm down, to 974.5 mm. It is left out.',
    }));
  test('the end of the run, or beyond it', () => {
    // Pillar 1 ends at 140 and its inner stud with it, 5 clear of which is 145: 145 + 72.5 = 217.5.
    expect(only(openingOf({ x: -500 })).remedy).toContain('717.5 mm to the right, to 217.5 mm');
    expect(only(openingOf({ x: 9000 })).remedy).toContain('to the left, to 2782.5 mm');
  });
  test('a join and its two studs, where no pillar stands', () => {
    // A strip of 40 covers the join at 880, in the bay from 855; the stud beyond ends at 918, and 5 more are kept: 923 + 72.5.
    const said: Said = { joins: { by: 'hand', at: [{ run: 1, x: 880 }] } };
    const finding = only(openingOf({ x: 960 }), [], said);
    expect(finding.message).toContain('meets join J1 with its two studs by 30.5 mm');
    expect(finding.remedy).toContain('35.5 mm to the right, to 995.5 mm');
  });
  test('another opening that was there first, which stays: 20 mm must be left between', () => {
    const { placed, findings } = place([openingOf(), openingOf({ x: 560 })]);
    expect(placed.map((p) => p.index)).toEqual([0]);
    // 502.5 + 20 + 72.5 = 595.
    expect(findings).toMatchObject([
      { rule: 'opening-refused', subject: { path: '/unit/openings/1' }, remedy: expect.stringContaining('to 595 mm') },
    ]);
    expect(place([openingOf(), openingOf({ x: 595 })]).findings).toEqual([]);
  });
  test('what a room says is there', () => {
    const rail: Obstacle = {
      run: 'A',
      through: 'front',
      from: 140,
      to: 715,
      low: 480,
      high: 520,
      what: 'rail in bay 1',
    };
    // Up: 520 + 42.5 = 562.5; down: 480 − 42.5 = 437.5: both 62.5 off.
    expect(only(openingOf(), [rail]).message).toMatch(/meets rail in bay 1 by 62\.5 mm.*62\.5 mm (up|down)/);
    expect(place([openingOf()], [{ ...rail, run: 'B' }]).findings).toEqual([]);
    expect(place([openingOf()], [{ ...rail, through: 'top' }]).findings).toEqual([]);
  });
  test('the two figures are seen the same way, and say what is kept', () => {
    const at = { run: 'A', through: 'front' as const, from: 140, to: 715 };
    const boards: readonly Obstacle[] = [
      { ...at, low: 480, high: 520, what: 'rail', clear: 5 },
      { ...at, low: 570, high: 1060, what: 'board' },
    ];
    // Wished from 477.5 to 562.5: up out of the rail 520 − 477.5 = 42.5, but then at most 50 are free. Down: 562.5 − 480 = 82.5, and 5.
    expect(only(openingOf({ z: 520, x: 427.5, width: 560 }), boards)).toMatchObject({
      value: 82.5,
      message:
        'Opening 1 in run A meets rail by 82.5 mm. The nearest good place is 87.5 mm down, to 432.5 mm, which leaves 5 mm clear.',
    });
  });
  test('and name what it then lies against, where that is another', () => {
    const at = { run: 'A', through: 'front' as const, low: 400, high: 600 };
    const boards: readonly Obstacle[] = [
      { ...at, from: 400, to: 715, what: 'board' },
      { ...at, from: 330, to: 400, what: 'ledge' },
    ];
    // Wished from 357.5 to 502.5; left of the ledge: 330 − 72.5 = 257.5. The board is met by 102.5 to its left.
    expect(only(openingOf(), boards).message).toContain(
      'meets board by 102.5 mm. The nearest good place is 142.5 mm up, to 642.5 mm.',
    );
    const high = boards.map((b) => ({ ...b, low: 0, high: 1060 }));
    expect(only(openingOf(), high).message).toContain(
      'meets board by 102.5 mm. The nearest good place is 172.5 mm to the left, to 257.5 mm, just clear of ledge.',
    );
  });
  test('by way of both directions, where one alone will not do', () => {
    const shut = (from: number, to: number, low: number, high: number): Obstacle => ({
      run: 'A',
      through: 'front',
      from,
      to,
      low,
      high,
      what: 'board',
    });
    // Everything at that height, and everything above and below it there; free from 600 up in the third bay only.
    const boards = [shut(0, 3000, 0, 600), shut(0, 1570, 600, 1060), shut(2145, 3000, 600, 1060)];
    expect(only(openingOf(), boards).remedy).toBe(
      'Move it 1212.5 mm to the right, to 1642.5 mm and 142.5 mm up, to 642.5 mm. It is left out.',
    );
  });
  test('and moving it there is good', () => {
    for (const [x, z] of [
      [700, 500],
      [860, 20],
      [1500, 1100],
      [2999, 300],
    ]) {
      const [, way, at] = only(openingOf({ x, z })).remedy.match(/ (left|right|up|down), to ([\d.]+) mm/) ?? [];
      const first = /left|right/.test(way) ? { x: Number(at), z } : { x, z: Number(at) };
      const second = only(openingOf({ x, z })).remedy.match(/ and [\d.]+ mm (?:up|down), to ([\d.]+) mm/);
      const moved = second ? { ...first, z: Number(second[1]) } : first;
      expect(place([openingOf(moved)]).findings).toEqual([]);
    }
  });
  test('in a run that the plan has not, or that can’t be built', () => {
    expect(only(openingOf({ run: 3 }))).toMatchObject({ rule: 'opening-in-no-run', value: 3 });
    expect(only(openingOf(), [], { runs: [{ length: 100 }, { length: 100 }], depth: 600 }).severity).toBe('stop');
  });
});

describe('an opening larger than what there is', () => {
  /** One bay of 720 between pillars of 140 in a run of 1000, with a panel frame 60 in, its members 30 wide. */
  const frame = (from: number, to: number, low: number, high: number): Obstacle => ({
    run: 'A',
    through: 'front',
    from,
    to,
    low,
    high,
    what: 'panel frame in bay 1',
  });
  const members = [
    frame(200, 800, 180, 210),
    frame(200, 800, 970, 1000),
    frame(200, 230, 180, 1000),
    frame(770, 800, 180, 1000),
  ];
  const said: Said = { runs: [{ length: 1000, rhythm: { by: 'count', count: 1 } }] };

  test('the field of a panel: both sizes, and the largest that fits', () => {
    // Inside the members 800 − 200 − 2·30 = 540 by 1000 − 180 − 2·30 = 760.
    const finding = only(openingOf({ use: 'grille', x: 500, z: 600, width: 600, height: 300 }), members, said);
    expect(finding).toMatchObject({ rule: 'opening-too-large', value: 600, limit: 540 });
    expect(finding.message).toContain('It is 600 × 300 mm, and the clear field that comes nearest is 540 × 760 mm');
    expect(finding.remedy).toContain('Make it 540 × 300 mm at most, its middle at 500 mm along and 600 mm up');
  });
  test('a round one keeps its shape', () => {
    const finding = only(openingOf({ use: 'pipe', x: 500, z: 600, width: 600 }), members, said);
    expect(finding.remedy).toContain('Make it 540 mm across at most');
  });
  test('the bay: 860 − 140 = 720, less 5 mm beside the studs of either end pillar', () =>
    expect(only(openingOf({ use: 'grille', x: 500, z: 600, width: 900 }), [], said)).toMatchObject({
      rule: 'opening-too-large',
      limit: 710,
    }));
  test('so in a job with its own panel frames: 575 − 2·60 − 2·30 = 395', () => {
    const d = design(
      jobOf({
        runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }],
        height: 1100,
        elements: { panel: { margin: 60, moulding: 'panel-ogee-30', rows: 1 } },
        openings: [openingOf({ use: 'grille', x: 427.5, z: 600, width: 600, height: 300 })],
      }),
    );
    expect(d.openings).toEqual([]);
    expect(findingOf(d, 'opening-too-large')).toMatchObject({ severity: 'stop', value: 600, limit: 395 });
    expect(findingOf(d, 'opening-too-large').remedy).toContain('Make it 395 × 300 mm at most');
    // Nothing else moves: the unit is made as without it.
    expect(d.parts).toEqual(design({ ...d.job, unit: { ...d.job.unit, openings: [] } }).parts);
  });
  test('a run that has nothing to cut it in', () => {
    const ever = { from: -Infinity, to: Infinity, low: -Infinity, high: Infinity };
    const none: Obstacle = { run: 'A', through: 'front', ...ever, what: 'the cladding, which has no height' };
    expect(only(openingOf(), [none], said).message).toBe(
      'Opening 1 in run A meets the cladding, which has no height. There is no clear field for an opening of any size in this run.',
    );
  });
  test('a run without any clear field', () => {
    const finding = only(openingOf(), [frame(0, 1000, 0, 1100)], said);
    expect(finding).toMatchObject({ rule: 'opening-refused', remedy: expect.stringContaining('another run') });
  });
});

describe('an opening through the top', () => {
  // Overhang 60, depth 600: its plate below lies from 60 to 123 back, 5 clear of which is 128.
  const said: Said = { depth: 600, elements: { top: { overhang: 60 } }, rightEnd: { kind: 'free' } };
  const grommet = (more: Partial<Opening> = {}): Opening =>
    openingOf({ through: 'top', use: 'pipe', width: 80, x: 1000, z: 300, ...more });
  test('keeps 50 from its edges and 5 from the frame below', () => {
    expect(place([grommet({ z: 168 })], [], said).findings).toEqual([]);
    expect(only(grommet({ z: 100 }), [], said).remedy).toContain('68 mm to the back, to 168 mm');
    expect(place([grommet({ z: 510 })], [], said).findings).toEqual([]);
    expect(only(grommet({ z: 520 }), [], said).remedy).toContain('10 mm to the front, to 510 mm');
    expect(only(grommet({ x: 20 }), [], said).remedy).toContain('70 mm to the right, to 90 mm');
  });
  test('says how near an edge it comes', () =>
    // 600 − 555 − 40 = 5.
    expect(only(grommet({ x: 1000, z: 555 }), [], said).message).toContain(
      'comes within 5 mm of the back edge of the top; 50 mm stays clear. The nearest good place is 45 mm to the front, to 510 mm',
    ));
  test('is measured at a corner along the mitre', () => {
    // Outside 90°: the mitre's line lies at x = 3000 + (60 − back). At 260 back that is 2800, and 50 square to it are 70.7 along.
    const corner: Said = { ...said, runs: [{ length: 3000, deflectionDeg: 90 }, { length: 2000 }] };
    expect(place([grommet({ x: 2600, z: 220 })], [], corner).findings).toEqual([]);
    const finding = only(grommet({ x: 2760, z: 220 }), [], corner);
    expect(finding.message).toContain('the right end of the run by 70.7 mm');
  });
  test('meets what a room says is there, and not what is in the front', () => {
    const rail: Obstacle = { run: 'A', through: 'top', from: 0, to: 3000, low: 290, high: 330, what: 'rear rail' };
    expect(only(grommet(), [rail], said).message).toContain('rear rail');
    expect(place([grommet()], [{ ...rail, through: 'front' }], said).findings).toEqual([]);
  });
});
