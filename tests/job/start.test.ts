import { describe, expect, it } from 'vitest';
import { reachOf } from '../../src/base/edge-path.ts';
import { defaultsOf } from '../../src/base/fields.ts';
import { boundsOf, flatten } from '../../src/base/outline.ts';
import { rooms } from '../../src/elements/index.ts';
import { makeReader } from '../../src/job/read.ts';
import { newJob, startingStock, startingTools } from '../../src/job/start.ts';
import { writeJob } from '../../src/job/write.ts';

describe('a new job', () => {
  it('is one that can be read, with every decision at its default', () => {
    const job = newJob('Servery', rooms);
    expect(makeReader(rooms)(writeJob(job))).toEqual({ ok: true, value: job });
    for (const room of rooms) expect(job.unit.elements[room.kind]).toEqual(defaultsOf(room.fields));
    expect(Object.keys(job.unit.elements)).toHaveLength(rooms.length);
    expect(rooms.length).toBeGreaterThan(0);
  });
});

describe('the starting book', () => {
  const { items, fixings } = startingStock;
  const ids = [...items, ...fixings, ...startingTools.cutters].map(({ id }) => id);

  it('has the usual things', () => {
    const usual = [
      'mdf-6',
      'mdf-9',
      'mdf-12',
      'mdf-12-long',
      'mdf-15',
      'mdf-18',
      'mdf-25',
      'mdf-30',
      'sawn-38x63',
      'sawn-38x89',
    ];
    const moulded = [
      'skirting-ogee-120',
      'skirting-torus-145',
      'skirting-chamfer-95',
      'panel-ogee-30',
      'panel-ovolo-22',
      'panel-bead-25',
    ];
    const cutters = ['ovolo-9', 'ogee-12', 'chamfer-6', 'cavetto-9', 'torus-12'];
    expect(ids).toEqual(expect.arrayContaining([...usual, ...moulded, ...cutters, 'oak-40', 'ash-32', 'walnut-40']));
    expect(new Set(ids).size).toBe(ids.length);
  });

  // A name ends in the sizes that are printed on it: they must be the sizes that are worked with.
  it.each(items.filter((item) => item.kind === 'moulding').map((item) => [item.name, item] as const))(
    '%s has a section of that size, lying on its back',
    (name, item) => {
      // "120 × 18", or of a round rail "45 round".
      const [, width, thickness = width] = /(\d+)(?: × (\d+)| round)$/.exec(name) ?? [];
      const { min, max } = boundsOf(item.section);
      const reached = [...min, ...max].map((mm) => Number(mm.toFixed(9)) + 0);
      expect(reached).toEqual([0, 0, Number(width), Number(thickness)]);
      expect(flatten(item.section).length).toBeGreaterThan(4);
      expect(item.id.endsWith(`-${width}`)).toBe(true);
    },
  );

  it.each(startingTools.cutters.map((cutter) => [cutter.id, cutter] as const))(
    '%s keeps within the arris',
    (id, cutter) => {
      const { height, depth } = reachOf(cutter);
      expect(height).toBeGreaterThan(0);
      expect(Math.max(height, depth)).toBeGreaterThanOrEqual(Number(id.split('-')[1]));
      expect(Math.max(height, depth)).toBeLessThan(25);
    },
  );

  // From memory, typical MDF sheet weights: 12 mm 2440 × 1220 27.15 kg, 18 mm 40.19 kg, 25 mm 54.33 kg (thickness × density).
  it.each([
    ['mdf-12', 27.15],
    ['mdf-18', 40.19],
    ['mdf-25', 54.33],
  ])('a sheet of %s weighs %d kg', (id, kg) => {
    const sheet = items.find((item) => item.id === id);
    if (sheet?.kind !== 'sheet') throw new Error(`${id} is no sheet`);
    expect((sheet.length * sheet.width * sheet.thickness * sheet.densityKgM3) / 1e9).toBeCloseTo(kg, 2);
  });
});
