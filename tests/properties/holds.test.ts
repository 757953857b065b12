import { describe, expect, it } from 'vitest';
import { design } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import type { BayWish } from '../../src/vocabulary/job';
import type { Part } from '../../src/vocabulary/part';
import type { RodRun } from '../../src/vocabulary/rod';
import { jobOf } from '../elements/job-of';
import { HOLDS } from './holds/index';
import { overlaps, referee, touchingNothing } from './referee';

const BAY: Omit<BayWish, 'run' | 'bay' | 'purpose'> = {
  ...{ panels: true, count: 1, shelves: 'fixed', besides: 0, above: 0, behind: 0 },
  ...{ width: 0, height: 0, depth: 0 },
};

/** A unit with nothing wrong: corners, a flap, a join behind a pillar, an opening, a frame behind, a foot rail, a worktop, doors and shelves. */
const good = design(
  jobOf({
    runs: [
      { length: 2600, over: 'plinth', deflectionDeg: 60 },
      { length: 2200, over: 'top', deflectionDeg: -45 },
      { length: 2000, rhythm: { by: 'count', count: 3 }, flap: { width: 700, hinge: 'left', gate: true } },
      { length: 1800, rhythm: { by: 'count', count: 2 } },
    ],
    rightEnd: { kind: 'free' },
    depth: 600,
    fit: { tolerance: 6, scribe: 15 },
    elements: {
      carcass: { build: true },
      footrail: { wanted: true },
      worktop: { height: 900 },
      top: { fitted: 'workshop' },
      frame: { cableWay: 20 },
    },
    joins: { by: 'hand', at: [{ run: 1, x: 1300 }, { run: 2 }] },
    openings: [
      { name: 'socket', run: 4, through: 'front', use: 'socket', x: 500, z: 600, width: 86, height: 86 },
      { name: 'waste', run: 3, through: 'top', use: 'pipe', x: 1000, z: 300, width: 60, height: 60 },
    ],
    bays: [
      { ...BAY, run: 3, bay: 1, purpose: 'doors', count: 1 },
      { ...BAY, run: 3, bay: 2, purpose: 'shelves', count: 2 },
    ],
  }),
);

/** The unit with one of its parts changed. */
function spoilt(which: (part: Part) => boolean, change: (part: Part) => Partial<Part>): Design {
  const i = good.parts.findIndex(which);
  if (i < 0) throw new Error('no such part');
  return { ...good, parts: good.parts.map((part, k) => (k === i ? { ...part, ...change(part) } : part)) };
}

const is =
  (code: string, run = 'A') =>
  (part: Part) =>
    part.code === code && part.run === run;
const moved =
  (mm: number) =>
  (part: Part): Partial<Part> => {
    const { origin, ...axes } = part.place;
    return { place: { ...axes, origin: [origin[0] + mm, origin[1], origin[2]] } };
  };
const without = (which: (part: Part) => boolean): Design => ({ ...good, parts: good.parts.filter((p) => !which(p)) });
const withRuns = (change: (run: RodRun) => RodRun): Design => ({
  ...good,
  rod: { ...good.rod, runs: good.rod.runs.map(change) },
});
const turned: Design = {
  ...good,
  rod: { ...good.rod, runs: good.rod.runs.map((r, i) => (i === 1 ? { ...r, along: [0.6, 0.8] } : r)) },
};

const lifted =
  (mm: number) =>
  (part: Part): Partial<Part> => {
    const { origin, ...axes } = part.place;
    return { place: { ...axes, origin: [origin[0], origin[1], origin[2] + mm] } };
  };
/** Along a run that is turned in plan. */
const slid =
  (mm: number) =>
  (part: Part): Partial<Part> => {
    const run = good.rod.runs.find((r) => r.id === part.run);
    const { origin, ...axes } = part.place;
    const [x, y] = run ? run.along : [0, 0];
    return { place: { ...axes, origin: [origin[0] + x * mm, origin[1] + y * mm, origin[2]] } };
  };
/** Over and under the socket, and beside it. */
const over = good.parts.filter((p) => p.code === 'NG' && p.where === 'trimmer');
const trimmers = good.parts.filter((p) => p.code === 'ST' && p.where === 'trimmer');
const inSocket: Design = (() => {
  const [socket] = good.openings;
  return { ...good, openings: [{ ...socket, from: socket.from + 1, to: socket.to + 1 }] };
})();
const uncut = (part: Part): Partial<Part> =>
  part.shape.kind === 'board' ? { shape: { ...part.shape, holes: [] } } : {};
const cut = (part: Part): boolean => part.code === 'CL' && part.shape.kind === 'board' && part.shape.holes.length > 0;

/** For each property units that break it. */
const SPOILT: Readonly<Record<string, readonly Design[]>> = {
  'runs lie end to end, turned as asked': [
    turned,
    { ...good, rod: { ...good.rod, runs: good.rod.runs.map((r, i) => (i === 3 ? { ...r, origin: [0, 0] } : r)) } },
  ],
  'every layer keeps the corner rule, and a length is found on the layer it was taken over': [
    spoilt(is('CL'), moved(0.001)),
    spoilt((p) => p.code === 'BK' && p.run === 'D' && p.where === 'right end', slid(0.01)),
  ],
  'pillars and bays add up to the face, the bays equal': [
    spoilt((p) => p.code === 'PI' && p.where === 'pillar 2', moved(0.1)),
    spoilt((p) => p.code === 'PI' && p.where === 'left end', moved(0.1)),
  ],
  'studs and gaps add up to the frame, within the centres; noggins fit': [
    spoilt(is('NG'), moved(0.1)),
    spoilt(is('PL'), moved(0.1)),
    without((p) => p === good.parts.find((q) => q.code === 'ST' && q.where === 'centres')),
    without((p) => p.code === 'ST' && p.run === 'A' && p.where.includes('end')),
    {
      ...good,
      rod: {
        ...good.rod,
        runs: good.rod.runs.map((r) => ({ ...r, joins: r.joins.map((j) => ({ ...j, x: j.x + 1 })) })),
      },
    },
  ],
  'every number is finite': [{ ...good, totals: { ...good.totals, weightKg: Number.NaN } }],
  'every part has a size and a weight': [spoilt(is('SK'), () => ({ weightKg: 0 }))],
  'every part lies in the unit': [
    spoilt(is('PL'), moved(-0.1)),
    spoilt(is('BR', 'D'), moved(0.1)),
    spoilt(is('FR'), moved(-0.1)),
    spoilt(is('WT'), lifted(0.1)),
    spoilt(is('LF', 'C'), lifted(-0.1)),
    spoilt(is('JB', 'D'), moved(900)),
    spoilt(is('DR', 'C'), (p) => ({ place: { ...p.place, origin: [p.place.origin[0], p.place.origin[1] + 20, 0] } })),
    spoilt(is('SK'), () => ({ code: 'XX' })),
  ],
  'every edge of the skin has timber behind it': [
    without((p) => p.code === 'ST'),
    without((p) => p.code === 'PL' && p.where === 'top' && p.run === 'A'),
  ],
  'what joins are nothing to is the same in one piece and parted': [
    // As if pillars made way for joins.
    withRuns((r) => ({ ...r, pillars: r.pillars.map((p) => ({ ...p, from: p.from + 1, to: p.to + 1 })) })),
    // As if skirting, and panels, were divided at them.
    withRuns((r) => ({ ...r, bays: r.bays.map((b) => ({ ...b, footTo: b.footTo - 1 })) })),
  ],
  'every part is in one section or fitted on site, and none fitted in the workshop crosses a join': [
    spoilt(is('ST'), () => ({ inSection: 'S9' })),
    spoilt(
      (p) => p.fitted === 'site',
      () => ({ inSection: 'S1' }),
    ),
    spoilt(is('CL'), moved(1)),
    { ...good, sections: good.sections.slice(1) },
    { ...good, totals: { ...good.totals, weightKg: good.totals.weightKg + 0.001 } },
  ],
  'every opening is cut where it is wished, and no frame part meets its hole': [
    spoilt((p) => p === trimmers.at(0), moved(60)),
    spoilt((p) => p === trimmers.at(-1), moved(-60)),
    spoilt((p) => p === over.at(0), lifted(30)),
    spoilt((p) => p === over.at(-1), lifted(-30)),
    inSocket,
    spoilt(cut, uncut),
    spoilt(cut, moved(1)),
  ],
  'every part says how it is held': [
    spoilt(is('SK'), () => ({ holds: [] })),
    spoilt(is('TP'), () => ({ holds: undefined })),
  ],
  'the mirrored job gives the mirrored unit': [spoilt(is('BK', 'B'), moved(0.01)), without(is('ST', 'D'))],
  'the same job gives the same design': [spoilt(is('TP'), () => ({ shopLength: 1 }))],
  'a run that is not touched stays as it was': [spoilt(is('SK'), () => ({ mark: 'A-SK9' }))],
};

describe('the properties can fail', () => {
  it.each(Object.entries(HOLDS))('%s', (name, property) => {
    expect(property(good).wrong).toEqual([]);
    expect(property(good).looked).toBeGreaterThan(0);
    expect(SPOILT[name].length).toBeGreaterThan(0);
    for (const [i, spoiled] of SPOILT[name].entries()) expect(property(spoiled).wrong, `spoilt ${i}`).not.toEqual([]);
  });

  it('two parts that share wood are found, turned in plan or not', async () => {
    const kernel = await referee();
    expect(overlaps(kernel, good.parts, 1)).toEqual([]);
    expect(touchingNothing(kernel, good.parts, 0.5)).toEqual([]);
    // A stud lifted off the bottom plate, by less and by more than a gap that counts.
    const plate = good.parts.find((p) => p.code === 'PL' && p.run === 'A' && p.where === 'bottom') as Part;
    const stud = good.parts.find(is('ST')) as Part;
    const lifted = (mm: number): Part => {
      const [x, y, z] = stud.place.origin;
      return { ...stud, place: { ...stud.place, origin: [x, y, z + mm] } };
    };
    expect(touchingNothing(kernel, [plate, lifted(0.4)], 0.5)).toEqual([]);
    expect(touchingNothing(kernel, [plate, lifted(0.6)], 0.5)).toEqual([plate.mark, stud.mark]);
    for (const run of ['A', 'B']) expect(overlaps(kernel, spoilt(is('SK', run), moved(0.5)).parts, 1)).not.toEqual([]);
  });
});
