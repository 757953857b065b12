import { describe, expect, it } from 'vitest';
import { rectangle } from '../../src/base/outline';
import { placeOf } from '../../src/base/place';
import { design, making } from '../../src/flow';
import { floorOf } from '../../src/making/floor';
import { layoutsOf, type Setting } from '../../src/making/layouts';
import { packersOf } from '../../src/making/packers';
import { floorScribes } from '../../src/making/scribes';
import { jobOf } from '../elements/job-of';
import { partOf, stickOf } from './parts';

const level = (along: number, height: number, run = 1) => ({ run, along, height });
const { rod } = design(jobOf({}));
const [run] = rod.runs;
const floorBy = (...levels: readonly ReturnType<typeof level>[]) => {
  const floor = floorOf(levels, rod);
  if (!floor) throw new Error('nothing surveyed');
  return floor;
};

describe('the lowest point of a stretch of floor', () => {
  const hollow = floorBy(level(0, 0), level(1000, -8), level(2000, 0));

  it('is the hollow where it lies within, else the end nearer to it', () => {
    expect(hollow.lowest(run)).toEqual({ x: 1000, height: -8 });
    expect(hollow.lowest(run, 900, 1800)).toEqual({ x: 1000, height: -8 });
    // 8 in 1000: 0.008 for each.
    expect(hollow.lowest(run, 1500, 1800)).toEqual({ x: 1500, height: -4 });
    expect(hollow.lowest(run, 250, 750)).toEqual({ x: 750, height: -6 });
  });
});

describe('packers', () => {
  it('are no thinner than half a millimetre', () => {
    // All studs stand beyond the last point, where the floor is level.
    const packed = (fall: number) =>
      making(design(jobOf({ survey: { levels: [level(0, 0), level(1, -fall)] } }))).site.packers.map(
        (p) => p.thickness,
      );
    expect(packed(0.5)).toEqual([]);
    const thin = packed(0.6);
    expect(thin.length).toBe(design(jobOf({})).framing[0].studs.length);
    expect(new Set(thin)).toEqual(new Set([0.6]));
  });

  it('are no further apart than 600 under a piece that nothing carries', () => {
    const floor = floorBy(level(0, 0), level(1, -3));
    const under = (length: number) => {
      const sill = partOf(
        { shape: stickOf(rectangle(38, 38), length), place: placeOf([100, 0, 0], [1, 0, 0], [0, 0, 1]) },
        'X',
      );
      return packersOf([sill], rod, floor, new Map()).map((p) => p.x);
    };
    expect(under(1200)).toEqual([100, 700, 1300]);
    expect(under(600)).toEqual([100, 700]);
    // 1203 in three: 401.
    expect(under(1203)).toEqual([100, 501, 902, 1303]);
  });
});

describe('what is left on to scribe to the floor', () => {
  it('is what a piece has left on at its foot, whatever its sides are called', () => {
    const floor = floorBy(level(0, 0), level(2400, -4));
    const board = (oversize: readonly { side: string; amount: number; on: 'width'; reason: string; below?: true }[]) =>
      partOf(
        {
          shape: stickOf(rectangle(18, 100), 2400),
          place: placeOf([0, 0, 0], [1, 0, 0], [0, 0, 1]),
          from: 'finished',
          finish: 'paint',
          oversize,
        },
        'SK1',
      );
    const left = (part: ReturnType<typeof board>) => floorScribes([part], rod, floor).map((s) => [s.most, s.left, s.x]);
    const on = { amount: 6, on: 'width', reason: 'scribed' } as const;
    expect(left(board([{ ...on, side: 'Unterkante', below: true }]))).toEqual([[4, 6, 2400]]);
    expect(left(board([{ ...on, side: 'lower left end' }]))).toEqual([[4, 0, 2400]]);
  });
});

describe('the fixing map from the right', () => {
  it('has every stud by its distance from the right end of the frame line', () => {
    const made = design(
      jobOf({
        runs: [{ length: 2500 }],
        rightEnd: { kind: 'free' },
        fit: { tolerance: 5 },
        elements: { frame: { datum: 'right' } },
      }),
    );
    const [map] = making(made).maps;
    const timber = map.timber.filter((t) => t.name === 'stud');
    const [{ studs }] = made.framing;
    // The wall, and so what is taken off for it, is at the far end only.
    expect(studs[0].from).toBe(5);
    expect(timber).toHaveLength(studs.length);
    [...studs].reverse().forEach((stud, i) => {
      expect(timber[i].from).toBeCloseTo(2500 - stud.to, 6);
      expect(timber[i].to).toBeCloseTo(2500 - stud.from, 6);
    });
    expect(timber[0].from).toBeCloseTo(0, 6);
    expect(timber.at(-1)?.to).toBeCloseTo(2495, 6);
  });
});

describe('layouts', () => {
  const tried = (leastCentres: number, mostRows: number) => {
    const settings: Setting[] = [];
    const now: Setting = { centres: 600, method: 'module', datum: 'left', nogginRows: 1 };
    layoutsOf(now, { kind: 'frame', leastCentres, mostRows, step: 0.1 }, (setting) => {
      settings.push(setting);
      return { rod, framing: [] };
    });
    return settings;
  };
  const centres = (least: number) => [...new Set(tried(least, 3).map((s) => s.centres))];

  it('try no centres closer than may be decided', () => {
    expect(centres(300)).toEqual([600, 300, 400, 406.4]);
    expect(centres(300.5)).toEqual([600, 400, 406.4]);
    expect(centres(406.4)).toEqual([600, 406.4]);
    expect(centres(500)).toEqual([600]);
  });

  it('try no more rows than may be decided', () => {
    const rows = (most: number) => [...new Set(tried(500, most).map((s) => s.nogginRows))];
    expect(rows(3)).toEqual([1, 2]);
    expect(rows(1)).toEqual([1]);
  });
});

describe('setting up at a wall with a skirting', () => {
  it('says that it is notched over where the skirting stays, and only there', () => {
    const scribing = (skirtingHeight?: number) => {
      const wall = {
        name: 'bay',
        directionDeg: 90,
        leanDeg: 0,
        ...(skirtingHeight === undefined ? {} : { skirtingHeight, skirtingThickness: 18 }),
      };
      const made = design(jobOf({ survey: { walls: [wall] }, leftEnd: { kind: 'wall', wall: 'bay' } }));
      return making(made)
        .steps.filter((s) => s.place === 'site' && /^Scribe/.test(s.what))
        .map((s) => s.what);
    };
    expect(scribing(120)).toEqual(['Scribe to the wall what meets it, and notch it over the skirting that stays.']);
    expect(scribing(0)).toEqual(['Scribe to the wall what meets it.']);
    expect(scribing()).toEqual(['Scribe to the wall what meets it.']);
  });
});
