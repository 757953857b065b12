import { describe, expect, it } from 'vitest';
import { rectangle } from '../../../src/base/outline';
import { grooveSetUps } from '../../../src/cutting/set-ups/grooves';
import { settingsOf } from '../../../src/cutting/set-ups/index';
import type { CutBatch, SheetPlan } from '../../../src/vocabulary/cut-plan';
import type { Outline } from '../../../src/vocabulary/geometry';
import type { GrooveWork, Part } from '../../../src/vocabulary/part';
import { partOf, stickOf } from '../../making/parts';

/** n flutes 16 wide, 5 apart, on the middle of a face; depth 5, so r = 16²/(8·5) + 5/2 = 8.9. */
function flutes(n: number, face: number, stops?: readonly [number, number]): readonly GrooveWork[] {
  const first = (face - (16 * n + 5 * (n - 1))) / 2 + 8;
  return Array.from({ length: n }, (_, i) => ({ centre: first + 21 * i, width: 16, depth: 5, radius: 8.9, stops }));
}
const pillar = (mark: string, grooves: readonly GrooveWork[], section: Outline = rectangle(140, 18)): Part =>
  partOf({ shape: stickOf(section, 900), grooves }, mark);
const fencesOf = (...parts: readonly Part[]): readonly number[] => grooveSetUps(parts).map(({ fence }) => fence);

describe('flutes', () => {
  it.each([1, 2, 3, 4, 5, 6, 7])('%i evenly on a board need ⌈n/2⌉ settings, the middle one first', (n) => {
    const setUps = grooveSetUps([pillar('P1', flutes(n, 160), rectangle(160, 18))]);
    expect(setUps).toHaveLength(Math.ceil(n / 2));
    const passes = setUps.flatMap((setUp) => setUp.passes.map(({ groove }) => groove));
    expect([...passes].sort()).toEqual(Array.from({ length: n }, (_, i) => i + 1));
    // On a board 160 wide the middle of an odd number lies at 80, and pairs 21 further out each; of an even number at 80 − 10.5.
    const from = n % 2 ? 80 : 69.5;
    expect(setUps.map(({ fence }) => fence)).toEqual(setUps.map((_, i) => from - 21 * i));
    expect(setUps.map((setUp) => setUp.passes.length)).toEqual(setUps.map((_, i) => (n % 2 && i === 0 ? 1 : 2)));
  });

  it('of a pair are run from either edge, the board turned end for end', () => {
    const [middle, outer] = grooveSetUps([pillar('P1', flutes(3, 140))]);
    expect([middle.fence, outer.fence, outer.radius, outer.depth]).toEqual([70, 49, 8.9, 5]);
    expect(outer.passes).toEqual([
      { mark: 'P1', groove: 1, against: 'left' },
      { mark: 'P1', groove: 3, against: 'right' },
    ]);
  });

  it('stopped unequally say their stops for both ways', () => {
    // 60 plain below, 30 above, on 900: the cutter's centre keeps 68 and 38 from the ends. With the left edge at the fence the upper end leads:
    // the board begins with its trailing, lower end 900 − 38 behind the cutter, and stops with its upper end 900 − 68 before it.
    const [, outer] = grooveSetUps([pillar('P1', flutes(3, 140, [60, 30]))]);
    expect(outer.passes.map(({ against, stops }) => [against, stops])).toEqual([
      ['left', { lower: 60, upper: 30, begin: 862, end: 832 }],
      ['right', { lower: 60, upper: 30, begin: 832, end: 862 }],
    ]);
  });

  it('of boards with one cutter share a fence where it is the same', () => {
    // 140 wide: 70, 49, 28. 98 wide, three flutes: 49, 28.
    const setUps = grooveSetUps([pillar('P1', flutes(5, 140)), pillar('P2', flutes(3, 98), rectangle(98, 18))]);
    expect(
      setUps.map(({ fence, passes }) => [
        fence,
        passes
          .map(({ mark }) => mark)
          .sort()
          .join(' '),
      ]),
    ).toEqual([
      [70, 'P1'],
      [49, 'P1 P1 P2'],
      [28, 'P1 P1 P2 P2'],
    ]);
  });

  it('of a corner board are set from the edge that bears on the fence', () => {
    // A face of 110 on a board 18 thick, mitred at 45° on the left. Outside: the face is the wider, its arris bears on the fence: as any board.
    const outside: Outline = {
      start: [0, 0],
      segments: [{ to: [92, 0] }, { to: [110, 18] }, { to: [0, 18] }, { to: [0, 0] }],
    };
    expect(fencesOf(pillar('P1', flutes(3, 110), outside))).toEqual([55, 34]);
    // Inside: the back stands 18 beyond the face there. From the left 52, 73, 94; from the right 76, 55, 34: none is like
    // another, and each is run from the nearer edge.
    const inside: Outline = {
      start: [0, 0],
      segments: [{ to: [128, 0] }, { to: [110, 18] }, { to: [0, 18] }, { to: [0, 0] }],
    };
    expect(fencesOf(pillar('P1', flutes(3, 110), inside))).toEqual([55, 52, 34]);
  });
});

describe('work from the parts', () => {
  const moulded = { edge: 'front upper arris', work: 'moulded', cutter: 'Ovolo 9' } as const;
  const block = (mark: string, length: number, edges = [moulded] as Part['edges']): Part =>
    partOf({ shape: stickOf(rectangle(150, 25), length), edges, work: ['pilot hole in the back'] }, mark);
  const bevelled = { edge: 'right long edge', work: 'bevelled', angleDeg: 45, longSide: 'face' } as const;
  const parts = [
    block('B1', 150),
    block('B2', 150),
    block('B3', 145),
    partOf({ shape: stickOf(rectangle(110, 18), 900), edges: [bevelled] }, 'P1'),
    partOf({ shape: stickOf(rectangle(400, 40), 2000), edges: [{ ...moulded, edge: 'front edge' }] }, 'T1'),
    partOf({ shape: stickOf(rectangle(300, 18), 500, { end: { at: 482, perAcross: 0, perOut: 1 } }) }, 'C1'),
  ];
  // 150 + 150 + 145 and two kerfs of 3: a strip of 451.
  const batch: CutBatch = {
    id: 'mdf',
    name: 'MDF',
    problem: {
      kind: 'sheets',
      kerf: 3,
      trim: 0,
      stock: [{ length: 2440, width: 1220, price: 40 }],
      pieces: [
        { length: 451, width: 150, quantity: 1 },
        { length: 900, width: 110, quantity: 1 },
        { length: 500, width: 300, quantity: 1 },
      ],
    },
    marks: [[['B1', 'B2', 'B3']], [['P1']], [['C1']]],
    from: [{ item: 'mdf' }],
  };
  const nothing: SheetPlan = {
    kind: 'sheets',
    cost: 0,
    bound: 0,
    proven: false,
    used: [],
    unplaced: [],
    sheets: [],
  };
  const settings = settingsOf([{ batch, plan: nothing }], parts);

  it('strips are moulded before blocks are cut off them; the last block is what remains', () => {
    expect(settings.profiles).toEqual([
      {
        kind: 'profile',
        cutter: 'Ovolo 9',
        edge: 'front upper arris',
        passes: [{ marks: ['B1', 'B2', 'B3'], length: 451 }],
        care: [],
      },
      { kind: 'profile', cutter: 'Ovolo 9', edge: 'front edge', passes: [{ marks: ['T1'], length: 2000 }], care: [] },
    ]);
    const [only] = settings.lengths;
    expect(settings.lengths).toHaveLength(1);
    expect([only.at['length stop'], only.blocks.map(({ marks }) => marks.join())]).toEqual([150, ['B1', 'B2']]);
  });

  it('a strip that is longer than its blocks gives the last one by a cut as well', () => {
    const kerfs = settingsOf([{ batch, plan: nothing }], parts, { blockKerf: 2 });
    expect(kerfs.lengths.map(({ at, blocks }) => [at['length stop'], blocks.length])).toEqual([
      [150, 2],
      [145, 1],
    ]);
  });

  it('edges and ends that are not square are cut after that, then other work', () => {
    const told = settings.bevels.map(({ of, tiltDeg, mitreDeg, passes }) => [of, tiltDeg, mitreDeg, passes]);
    expect(told).toEqual([
      ['edge', 45, 0, [{ fence: 110, marks: ['P1'] }]],
      ['end', 45, 0, [{ fence: 500, marks: ['C1'] }]],
    ]);
    expect(settings.work).toEqual([{ kind: 'work', what: 'pilot hole in the back', marks: ['B1', 'B2', 'B3'] }]);
  });
});
