import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import type { Design } from '../../../src/vocabulary/design';
import type { Part } from '../../../src/vocabulary/part';
import { cornersIn } from '../../properties/measure';
import { behindJob, openingOf } from '../behind-job';
import { findingOf, partsOf, rulesOf, runOf } from '../job-of';

function boxOf(made: Design, part: Part) {
  const points = cornersIn(runOf(made), part);
  const reach = (of: (p: (typeof points)[0]) => number) =>
    [Math.min(...points.map(of)), Math.max(...points.map(of))].map((n) => Math.round(n * 1e6) / 1e6);
  return { x: reach((p) => p.x), d: reach((p) => p.d), z: reach((p) => p.z) };
}

const cooler = { purpose: 'appliance', width: 600, height: 850, depth: 400 } as const;
const sink = { purpose: 'sink', width: 500, height: 200, depth: 350 } as const;
const own = (made: Design) => rulesOf(made).filter((r) => /^(appliance|sink|bin)/.test(r));

describe('an appliance', () => {
  test('that fits: nothing is made, and what is clear round it is said', () => {
    const made = design(behindJob([cooler]));
    const found = findingOf(made, 'appliance-air');
    // (924 − 600)/2; from the floor, where no rail runs, to 997, less 850; 462 − 400.
    expect(found.message).toContain('162 mm at each side, 147 mm above, 62 mm behind');
    expect(found.severity).toBe('note');
    expect(found.caution).toContain('licensed');
    expect(found.source).toContain('200 cm² of grille');
    expect(found.subject).toEqual({ run: 'A', path: '/unit/bays/0' });
    expect(own(made)).toEqual(['appliance-air']);
    expect(made.parts.filter((p) => p.kind === 'appliance')).toEqual([]);
  });

  test('too wide: what it wants, what fits, and the pitch it needs', () => {
    const made = design(behindJob([{ ...cooler, width: 920 }]));
    const found = findingOf(made, 'appliance-too-wide');
    // 920 + 2 · 5 against 924; at most 914; cross frames 930 + 38 from middle to middle.
    expect(found).toMatchObject({ severity: 'stop', value: 930, limit: 924 });
    expect(found.remedy).toContain('The most that fits is 914 mm wide.');
    expect(found.remedy).toContain('968 mm from middle to middle');
    expect(own(made)).toEqual(['appliance-too-wide']);
  });

  test('to the millimetre', () => {
    expect(own(design(behindJob([{ ...cooler, width: 914 }])))).toEqual(['appliance-air']);
    expect(own(design(behindJob([{ ...cooler, width: 914.1 }])))).toEqual(['appliance-too-wide']);
  });

  test('too wide for its bay, with a free one that takes it', () => {
    const runs = [{ length: 2400, rhythm: { by: 'marks', marks: [700, 1500] } as const }];
    const made = design(behindJob([{ ...cooler, width: 700 }], { runs }));
    // Cross frames behind the pillars' middles: 719 to 1481 is 762 wide, 1519 to 2362 is 843.
    expect(findingOf(made, 'appliance-too-wide').remedy).toContain('Bay 2 of run A is free and 762 mm wide.');
    const taken = design(
      behindJob(
        [
          { ...cooler, width: 700 },
          { ...cooler, bay: 2 },
        ],
        { runs },
      ),
    );
    expect(findingOf(taken, 'appliance-too-wide').remedy).toContain('Bay 3 of run A is free and 843 mm wide.');
  });

  test('too high and too deep, each with its number', () => {
    const made = design(behindJob([{ ...cooler, height: 990, depth: 450 }]));
    expect(findingOf(made, 'appliance-too-high')).toMatchObject({ value: 1000, limit: 997 });
    const deep = findingOf(made, 'appliance-too-deep');
    expect(deep).toMatchObject({ value: 500, limit: 462 });
    expect(deep.remedy).toContain('38 mm deeper');
  });

  test('whose sizes are not stated is not checked, and that is said', () => {
    const made = design(behindJob([{ ...cooler, width: 0, depth: 0 }]));
    expect(findingOf(made, 'appliance-not-stated').message).toContain('width, depth not stated');
  });

  test('under a worktop has the bearer on the front frame over it', () => {
    const worktop = { height: 900, of: 'sheet', sheet: 'mdf-25', depth: 400 };
    const made = design(behindJob([cooler], { elements: { worktop, carcass: { rearRail: false } } }));
    // 875 less the bearer's 63.
    expect(findingOf(made, 'appliance-too-high')).toMatchObject({ value: 860, limit: 812 });
  });
});

describe('a sink', () => {
  test('has a bearer at each side of the bowl, from the front frame to the rear rail', () => {
    const made = design(behindJob([sink]));
    // Middle 500; 250 + 5 to each side; on edge under the top. The rear rail lies from −525 to −487.
    expect(partsOf(made, 'SR').map((p) => boxOf(made, p))).toEqual([
      { x: [207, 245], d: [-487, -63], z: [997, 1060] },
      { x: [755, 793], d: [-487, -63], z: [997, 1060] },
    ]);
    const marks = made.marks.A.filter((m) => m.part?.startsWith('A-SR')).map((m) => m.x);
    expect(marks).toEqual([245, 755]);
  });

  test('without rear rails has one behind the bowl too', () => {
    const made = design(behindJob([sink], { elements: { carcass: { rearRail: false } } }));
    expect(partsOf(made, 'SR').map((p) => boxOf(made, p))[0]).toEqual({
      x: [38, 962],
      d: [-525, -487],
      z: [997, 1060],
    });
    expect(partsOf(made, 'SR')).toHaveLength(3);
  });

  test('must clear the rear rail', () => {
    // 462 − 38 = 424 deep; 380 + 50 wanted.
    const made = design(behindJob([{ ...sink, depth: 380 }]));
    expect(findingOf(made, 'sink-too-deep')).toMatchObject({ value: 430, limit: 424 });
    expect(partsOf(made, 'SR')).toEqual([]);
  });

  test('too wide for bearers beside it is said, with the widest', () => {
    const made = design(behindJob([{ ...sink, width: 880 }]));
    const found = findingOf(made, 'sink-without-bearers');
    // 880 + 10 + 2 · 38 against 924; 924 − 10 − 76.
    expect(found).toMatchObject({ value: 966, limit: 924 });
    expect(found.remedy).toContain('838 mm');
    expect(partsOf(made, 'SR')).toEqual([]);
  });

  test('wants a hole over it: in the top an opening, in a worktop by template', () => {
    const hole = (x: number) =>
      openingOf({ name: 'sink', through: 'top', use: 'grille', x, z: 330, width: 300, height: 200 });
    expect(rulesOf(design(behindJob([sink])))).toContain('sink-without-hole');
    expect(rulesOf(design(behindJob([sink], { openings: [hole(500)] })))).not.toContain('sink-without-hole');
    const worktop = { height: 900, of: 'sheet', sheet: 'mdf-25', depth: 500 };
    expect(findingOf(design(behindJob([sink], { elements: { worktop } })), 'sink-without-hole').message).toContain(
      'worktop',
    );
    // A hole over a bearer has no place: the left one lies from 207 to 245.
    const wrong = design(behindJob([sink], { openings: [hole(260)] }));
    expect(wrong.openings).toEqual([]);
  });

  test('of unknown width gets no bearers', () => {
    const made = design(behindJob([{ ...sink, width: 0 }]));
    expect(findingOf(made, 'sink-not-stated').remedy).toContain('no bearers');
    expect(partsOf(made, 'SR')).toEqual([]);
  });
});

describe('a bin', () => {
  test('that fits stays open, with nothing to say', () => {
    const made = design(behindJob([{ purpose: 'bin', width: 500, height: 700, depth: 400 }]));
    expect(own(made)).toEqual([]);
    expect(made.parts.filter((p) => ['shelf', 'appliance', 'door'].includes(p.kind))).toEqual([]);
  });

  test('that does not is said', () => {
    const made = design(behindJob([{ purpose: 'bin', width: 500, height: 1000, depth: 400 }]));
    expect(findingOf(made, 'bin-too-high')).toMatchObject({ value: 1010, limit: 997 });
  });
});
