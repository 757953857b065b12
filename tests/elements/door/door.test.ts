import { describe, expect, test } from 'vitest';
import { hingesFor, mostOf } from '../../../src/elements/door/divide';
import { design, making } from '../../../src/flow';
import type { Design } from '../../../src/vocabulary/design';
import type { Part } from '../../../src/vocabulary/part';
import { cornersIn } from '../../properties/measure';
import { behindJob } from '../behind-job';
import { findingOf, partsOf, rulesOf, runOf, type Said } from '../job-of';

function boxOf(made: Design, part: Part) {
  const points = cornersIn(runOf(made), part);
  const reach = (of: (p: (typeof points)[0]) => number) =>
    [Math.min(...points.map(of)), Math.max(...points.map(of))].map((n) => Math.round(n * 1e6) / 1e6);
  return { x: reach((p) => p.x), d: reach((p) => p.d), z: reach((p) => p.z) };
}

const doors = { purpose: 'doors', count: 2 } as const;
const drawers = { purpose: 'drawers', count: 3 } as const;

describe('doors on the posts', () => {
  test('cover half of each post less half a gap, and stand clear of the floor', () => {
    const made = design(behindJob([doors]));
    // 924 + 38 − 3 = 959, less the gap between two, halved: 478. From 38 − 17.5. Height from 15 to 1060 − 3.
    expect(partsOf(made, 'DR').map((p) => boxOf(made, p))).toEqual([
      { x: [20.5, 498.5], d: [-543, -525], z: [15, 1057] },
      { x: [501.5, 979.5], d: [-543, -525], z: [15, 1057] },
    ]);
    expect(partsOf(made, 'DR')[0].size).toMatchObject({ length: 1042, width: 478, thickness: 18 });
  });

  test('neighbouring bays keep one gap between their doors', () => {
    const made = design(
      behindJob([doors, { ...doors, bay: 2 }], { runs: [{ length: 2000 }], elements: { pillar: { bays: 2 } } }),
    );
    const [, second, third] = partsOf(made, 'DR').map((p) => boxOf(made, p));
    expect(third.x[0] - second.x[1]).toBeCloseTo(3, 5);
  });

  test('begin a gap above the rails where there is a recess for toes', () => {
    const made = design(behindJob([doors], { elements: { carcass: { toeHeight: 120 } } }));
    expect(boxOf(made, partsOf(made, 'DR')[0]).z).toEqual([123, 1057]);
  });

  test('end a gap below a worktop', () => {
    // 860 deep: rear edge −63 − 560 = −623, behind the top's −565, so the posts stop under it, 20 before its edge.
    const worktop = { height: 900, of: 'sheet', sheet: 'mdf-25', depth: 560, behind: 20 };
    const made = design(behindJob([doors], { elements: { worktop } }));
    expect(boxOf(made, partsOf(made, 'DR')[0])).toMatchObject({ d: [-621, -603], z: [15, 872] });
    expect(rulesOf(made)).not.toContain('fronts-proud-of-top');
  });

  test('have hinges by their height, and a handle', () => {
    const hardware = (height: number) => partsOf(design(behindJob([doors], { height })), 'DR')[0].hardware;
    // 957 − 40 − 3 − 15 = 899; 959 makes it 901.
    expect(hardware(957)).toEqual([
      { what: 'overlay hinge', count: 2 },
      { what: 'handle', count: 1 },
    ]);
    expect(hardware(959)?.[0].count).toBe(3);
    expect([900, 900.1, 1600, 1600.1, 2100.1].map(hingesFor)).toEqual([2, 3, 3, 4, 5]);
  });
});

describe('doors between the posts', () => {
  const made = design(behindJob([doors], { elements: { door: { lie: 'inset' } } }));

  test('leave a gap all round, flush with the posts', () => {
    // 924 − 3 · 3 = 915, halved. From rail to rail 63 to 997, less a gap each.
    expect(partsOf(made, 'DR').map((p) => boxOf(made, p))).toEqual([
      { x: [41, 498.5], d: [-525, -507], z: [66, 994] },
      { x: [501.5, 959], d: [-525, -507], z: [66, 994] },
    ]);
  });

  test('shut against stops on the posts', () => {
    expect(partsOf(made, 'DS').map((p) => boxOf(made, p))).toEqual([
      { x: [38, 63], d: [-507, -469], z: [63, 997] },
      { x: [937, 962], d: [-507, -469], z: [63, 997] },
    ]);
  });
});

describe('drawer fronts', () => {
  test('lie one above the other, all alike', () => {
    const made = design(behindJob([drawers]));
    // (1057 − 15 − 2 · 3)/3 = 345 1/3.
    expect(partsOf(made, 'DF').map((p) => boxOf(made, p).z)).toEqual([
      [15, 360.333333],
      [363.333333, 708.666667],
      [711.666667, 1057],
    ]);
    expect(partsOf(made, 'DF')[0].size).toMatchObject({ length: 959, thickness: 18 });
    expect(partsOf(made, 'DF')[0].hardware).toEqual([
      { what: 'pair of drawer runners, at most 462 mm', count: 1 },
      { what: 'handle', count: 1 },
    ]);
  });

  test('are marked at both ends on the rod, once a bay', () => {
    const made = design(behindJob([drawers]));
    const marks = made.marks.A.filter((m) => m.lane === 'behind' && m.part?.startsWith('A-DF'));
    expect(marks.map((m) => Math.round(m.x * 1e6) / 1e6)).toEqual([20.5, 979.5]);
  });
});

describe('fronts that can’t be made', () => {
  const none = (made: Design) => expect(made.parts.filter((p) => p.kind === 'door')).toEqual([]);

  test('a third door has nothing to hang on', () => {
    const made = design(behindJob([{ ...doors, count: 3 }]));
    expect(findingOf(made, 'doors-without-post')).toMatchObject({
      severity: 'stop',
      value: 3,
      limit: 2,
      subject: { path: '/unit/bays/0' },
    });
    none(made);
  });

  test('too narrow: how wide, and the most that fit', () => {
    const made = design(behindJob([doors], { runs: [{ length: 240 }], elements: { pillar: { width: 40 } } }));
    // 240 − 76 = 164 clear: (164 + 38 − 3 − 3)/2 = 98. One of 199 fits.
    const found = findingOf(made, 'fronts-too-small');
    expect(found).toMatchObject({ value: 98, limit: 100 });
    expect(found.remedy).toContain('The most that fit: 1.');
    none(made);
    expect(mostOf(203, 3, 100)).toBe(2);
  });

  test('larger than the sheet', () => {
    const made = design(behindJob([drawers], { runs: [{ length: 3000 }] }));
    // 3000 − 76 + 38 − 3
    expect(findingOf(made, 'front-larger-than-sheet')).toMatchObject({ value: 2959, limit: 2440 });
    none(made);
  });

  test('timber too thin to lie on, or too shallow for stops', () => {
    const thin = { stock: { 'sawn-38x63': { thickness: 20 } }, elements: { door: { gap: 10 } } };
    // (20 − 10)/2
    expect(findingOf(design(behindJob([doors], thin)), 'fronts-without-hold')).toMatchObject({ value: 5, limit: 8 });
    const shallow = { stock: { 'sawn-38x63': { width: 38 } }, elements: { door: { lie: 'inset', sheet: 'mdf-30' } } };
    // 38 − 30 is just enough; of 37 seven are left.
    expect(rulesOf(design(behindJob([doors], shallow)))).not.toContain('fronts-without-hold');
    const less = { ...shallow, stock: { 'sawn-38x63': { width: 37, thickness: 37 } } };
    expect(findingOf(design(behindJob([doors], less)), 'fronts-without-hold').value).toBe(7);
  });

  test('past the line of a sharp corner', () => {
    const said = { runs: [{ length: 4000, deflectionDeg: 120 }, { length: 4000 }], elements: { pillar: { bays: 2 } } };
    const made = design(behindJob([{ ...doors, bay: 2 }], said));
    // Over their thickness of 18 the line comes 18·tan 60° nearer; half a post and half a gap lie between: 19 + 1.5.
    expect(findingOf(made, 'fronts-past-corner').value).toBeCloseTo(18 * Math.tan(Math.PI / 3) - 20.5, 9);
    none(made);
    const inset = design(
      behindJob([{ ...doors, bay: 2 }], { ...said, elements: { ...said.elements, door: { lie: 'inset' } } }),
    );
    expect(partsOf(inset, 'DR')).toHaveLength(2);
  });

  test('are told to lie between the posts only where that would do', () => {
    const said = { runs: [{ length: 4000, deflectionDeg: 120 }, { length: 4000 }], elements: { pillar: { bays: 2 } } };
    const remedy = (door: Readonly<Record<string, string>>, stock: Said['stock'] = {}): string =>
      findingOf(
        design(behindJob([{ ...doors, bay: 2 }], { ...said, stock, elements: { ...said.elements, door } })),
        'fronts-past-corner',
      ).remedy ?? '';
    expect(remedy({})).toBe('Let them lie between the posts, or choose a bay further from the corner. None is made.');
    // Stops 10 thick leave 10 − 3 = 7 to shut on; 8 is the least.
    expect(remedy({}, { 'sawn-25x38': { thickness: 10 } })).toBe('Choose a bay further from the corner. None is made.');
  });
});

describe('fronts beside a return', () => {
  const ends = { left: { kind: 'return', length: 480 }, right: { kind: 'return', length: 480 } } as const;
  const made = (lie: 'overlay' | 'inset', length: number = ends.right.length) =>
    design(
      behindJob([doors], {
        runs: [{ length: 1100 }],
        leftEnd: { ...ends.left, length },
        rightEnd: { ...ends.right, length },
        elements: { door: { lie } },
      }),
    );

  test('are made: only its frame, 63 deep, stands behind the end of the run', () => {
    // Posts from 63 to 101 and from 999 to 1037; half a post less half a gap lies on each: 101 − 17.5 and 999 + 17.5.
    for (const length of [480, 700]) {
      const [first, second] = partsOf(made('overlay', length), 'DR').map((p) => boxOf(made('overlay', length), p));
      expect([first.x[0], second.x[1]]).toEqual([83.5, 1016.5]);
      expect(rulesOf(made('overlay', length))).not.toContain('fronts-past-corner');
      expect(rulesOf(made('overlay', length))).not.toContain('fronts-beside-corner');
    }
  });

  test('so between the posts', () => {
    const [first, second] = partsOf(made('inset'), 'DR').map((p) => boxOf(made('inset'), p));
    // A gap from each post.
    expect([first.x[0], second.x[1]]).toEqual([104, 996]);
  });
});

test('doors and drawer fronts travel loose; the stops stay', () => {
  const made = design(
    behindJob([doors, { ...drawers, bay: 2 }], {
      runs: [{ length: 2000 }],
      elements: { pillar: { bays: 2 }, door: { lie: 'inset' } },
    }),
  );
  const fitted = (code: string): readonly string[] => [...new Set(partsOf(made, code).map((p) => p.fitted))];
  expect([fitted('DR'), fitted('DF'), fitted('DS')]).toEqual([['site'], ['site'], ['workshop']]);
  // They hang again when the unit stands.
  const steps = making(made).steps.filter(({ what }) => /door|drawer/.test(what) && what.startsWith('Hang'));
  expect(steps.map((s) => s.place)).toEqual(['site']);
});

describe('fronts that will be a nuisance', () => {
  test('beside the corner between two backs', () => {
    const made = design(
      behindJob([{ ...doors, bay: 3 }], {
        runs: [{ length: 4000, deflectionDeg: 90 }, { length: 4000 }],
        elements: { pillar: { bays: 3 } },
      }),
    );
    const found = findingOf(made, 'fronts-beside-corner');
    expect(found.value).toBeCloseTo(20.5, 9);
    expect(found.limit).toBe(60);
    expect(partsOf(made, 'DR')).toHaveLength(2);
  });

  test('wide doors, and fronts proud of the top', () => {
    const made = design(behindJob([{ ...doors, count: 1 }], { elements: { carcass: { setBack: 10 } } }));
    expect(findingOf(made, 'door-wide')).toMatchObject({ severity: 'warn', value: 959, limit: 600 });
    // Posts 10 before the back edge, fronts 18 thick.
    expect(findingOf(made, 'fronts-proud-of-top').value).toBeCloseTo(8, 9);
    expect(findingOf(made, 'fronts-proud-of-top').remedy).toContain('between the posts');
    // Stops 10 thick leave 7 to shut on: then that is no remedy.
    const thin = behindJob([{ ...doors, count: 1 }], {
      elements: { carcass: { setBack: 10 } },
      stock: { 'sawn-25x38': { thickness: 10 } },
    });
    expect(findingOf(design(thin), 'fronts-proud-of-top').remedy).toBe('Set the posts further back from that edge.');
  });
});
