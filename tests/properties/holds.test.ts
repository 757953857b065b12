import { describe, expect, it } from 'vitest';
import { design } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import type { Part } from '../../src/vocabulary/part';
import { jobOf } from '../elements/job-of';
import { HOLDS } from './holds/index';
import { overlaps, referee, touchingNothing } from './referee';

/** A unit with nothing wrong. */
const good = design(
  jobOf({
    runs: [
      { length: 2600, over: 'plinth', deflectionDeg: 60 },
      { length: 2200, over: 'top', deflectionDeg: -45 },
      { length: 2000, rhythm: { by: 'count', count: 3 } },
    ],
    rightEnd: { kind: 'free' },
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
const turned: Design = {
  ...good,
  rod: { ...good.rod, runs: good.rod.runs.map((r, i) => (i === 1 ? { ...r, along: [0.6, 0.8] } : r)) },
};

const SPOILT: Readonly<Record<string, Design>> = {
  'runs lie end to end, turned as asked': turned,
  'every layer keeps the corner rule, and a length is found on the layer it was taken over': spoilt(
    is('CL'),
    moved(0.001),
  ),
  'pillars and bays add up to the face, the bays equal': spoilt(
    (p) => p.code === 'PI' && p.where === 'pillar 2',
    moved(0.1),
  ),
  'studs and gaps add up to the frame, within the centres; noggins fit': spoilt(is('NG'), moved(0.1)),
  'every number is finite': { ...good, totals: { ...good.totals, weightKg: Number.NaN } },
  'every part has a size and a weight': spoilt(is('SK'), () => ({ weightKg: 0 })),
  'every part lies in the unit': spoilt(is('PL'), moved(-1)),
  'every edge of the skin has timber behind it': without((p) => p.code === 'ST'),
  'the mirrored job gives the mirrored unit': spoilt(is('BK', 'B'), moved(0.01)),
  'the same job gives the same design': spoilt(is('TP'), () => ({ shopLength: 1 })),
  'a run that is not touched stays as it was': spoilt(is('SK'), () => ({ mark: 'A-SK9' })),
};

describe('the properties can fail', () => {
  it.each(Object.entries(HOLDS))('%s', (name, property) => {
    expect(property(good).wrong).toEqual([]);
    expect(property(good).looked).toBeGreaterThan(0);
    expect(property(SPOILT[name]).wrong).not.toEqual([]);
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
