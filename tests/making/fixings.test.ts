import { describe, expect, it } from 'vitest';
import { rectangle } from '../../src/base/outline';
import { placeOf } from '../../src/base/place';
import { design, making, newJob } from '../../src/flow';
import { tubOf } from '../../src/making/adhesives';
import { contactsOf } from '../../src/making/contacts';
import { alongLength, countOfHold } from '../../src/making/fixing-counts';
import { chosenFor } from '../../src/making/fixing-sizes';
import { fixingsOf } from '../../src/making/fixings';
import { touchingOf } from '../../src/making/touching';
import type { Design } from '../../src/vocabulary/design';
import type { Fixings } from '../../src/vocabulary/making';
import type { Hold, Part } from '../../src/vocabulary/part';
import { behindJob } from '../elements/behind-job';
import { jobOf } from '../elements/job-of';
import { block, boardOf, partOf, stickOf } from './parts';

const plain = design(jobOf({}));
/** The fixings of some parts by themselves. */
const of = (parts: readonly Part[], joins: Design['joins'] = []): Fixings =>
  fixingsOf({ ...plain, parts, joins }, touchingOf(contactsOf(parts)));

const sheetHold: Hold = {
  by: 'screw',
  through: 12,
  where: { at: 'sheet', edges: 150, field: 300 },
  rule: 'sheet on studs',
};
/** A sheet of 1200 × 600 × 12, its back at x = 63 against studs from x = 0: along y, across z. */
const sheet = (holds: readonly Hold[]): Part =>
  partOf(
    {
      shape: boardOf(
        [
          [0, 0],
          [1200, 0],
          [1200, 600],
          [0, 600],
        ],
        12,
      ),
      // along y, out x: across = out × along = z.
      place: placeOf([63, 0, 0], [0, 1, 0], [1, 0, 0]),
      holds,
      name: 'sheet',
      from: 'clad',
    },
    'S',
  );
/** A stud of 38 × 63 behind it. */
const stud = (mark: string, y: number): Part => block(mark, [0, y, 0], [63, 38, 600], { name: 'stud' });
const THREE = [stud('ST1', 0), stud('ST2', 581), stud('ST3', 1162)];

describe('the number of fixings', () => {
  it('is that in each end, twice; so many in all; or by centres', () => {
    const size = { size: { length: 1000, width: 50, thickness: 20 } };
    const at = (where: Hold['where']): number => countOfHold({ ...sheetHold, where }, size, []).amount;
    expect(at({ at: 'ends', each: 2 })).toBe(4);
    expect(at({ at: 'all', each: 5 })).toBe(5);
    // 1000 − 2 · 25 = 950; at 250 four spaces, five fixings.
    expect(at({ at: 'length', centres: 250 })).toBe(5);
    expect(alongLength(40, 250)).toBe(2);
  });

  it('of a sheet runs round its edges and along the studs between', () => {
    const { parts } = of([...THREE, sheet([sheetHold])]);
    // Round: 2 · (1200 / 150 + 600 / 150) = 24. The stud in the middle, 600 long at 300: its ends lie on the edges, one between.
    // Through 12: 24 to 30 long, the longest of which the book has 30.
    expect(parts).toEqual([expect.objectContaining({ part: 'S', item: 'screw-4x30', amount: 25, unit: 'pieces' })]);
  });
});

describe('the screw chosen', () => {
  it('does not come out behind: what lies behind is found', () => {
    // 12 of sheet and a batten of 16 behind: 4 × 30 would come through by 2, and nothing shorter is in the book.
    const batten = block('B', [47, 0, 0], [16, 1200, 600]);
    const [line] = of([batten, sheet([sheetHold])]).parts;
    expect(line.item).toBeUndefined();
    expect(line.name).toBe('Wood screw, 25 long, to be bought');
    // With another batten behind that one there is stuff enough.
    const second = block('C', [0, 0, 0], [47, 1200, 600]);
    expect(of([second, batten, sheet([sheetHold])]).parts[0].item).toBe('screw-4x30');
  });

  it('goes through a skin to the timber behind, where the hold says so', () => {
    const skin = sheet([]);
    const board = partOf(
      {
        ...sheet([{ ...sheetHold, through: 24 }]),
        shape: skin.shape,
        place: placeOf([75, 0, 0], [0, 1, 0], [1, 0, 0]),
      },
      'D',
    );
    // 24 through skin and board, 63 of stud behind: of 48 to 60 the book has none, 65 is the next.
    expect(of([...THREE, skin, board]).parts[0]).toMatchObject({ part: 'D', item: 'screw-5x65' });
  });

  it('does not go on into the next section, which stands beside it only when both are on site', () => {
    // A bearer of 25 on a post of 38 at a join, the next section's post behind: 63, and 5 × 65 would come out by 2.
    const post = (mark: string, y: number, inSection: string): Part => ({
      ...block(mark, [0, y, 0], [63, 38, 600], { name: 'post' }),
      inSection,
    });
    const bearer = (said: Partial<Part>): Part => ({
      ...partOf(
        {
          shape: stickOf(rectangle(63, 25), 400),
          place: placeOf([0, 38, 200], [1, 0, 0], [0, 1, 0]),
          holds: [{ by: 'screw', through: 25, where: { at: 'all', each: 2 }, rule: 'bearer' }],
        },
        'B',
      ),
      ...said,
    });
    const [mine, next] = [post('P1', 0, 'S1'), post('P2', -38, 'S2')];
    expect(of([mine, next, bearer({})]).parts[0]).toMatchObject({
      part: 'B',
      item: 'screw-4x40',
      how: '2 in all, counterbored 5',
    });
    // With both posts in its own section it may.
    expect(of([mine, { ...next, inSection: 'S1' }, bearer({})]).parts[0]).toMatchObject({ item: 'screw-5x65' });
    // What is fitted on site, when both stand there, goes no further than the post it lies on either.
    const onSite = of([mine, next, { ...bearer({}), fitted: 'site', inSection: undefined }]).parts[0];
    expect(onSite).toMatchObject({ item: 'screw-4x40' });
  });

  it('from below is let in where a whole one would come through the top', () => {
    // A rail of 38 under a top of 40, of which 5 stay whole: 76 at least, 73 at most. 65 / 2 = 32.5 in the top: let in 5.5.
    const rail = block('R', [0, 0, 0], [1000, 63, 38]);
    const top = block('T', [0, 0, 38], [1000, 400, 40], {
      holds: [{ by: 'screw', through: 38, where: { at: 'length', centres: 300 }, into: 'itself', rule: 'from below' }],
    });
    expect(of([rail, top]).parts[0]).toMatchObject({
      item: 'screw-5x65',
      how: 'no more than 300 apart along it, counterbored 5.5',
    });
  });

  it.each([
    ['oak-32', 'hardwood', 32],
    ['mdf-25', 'sheet', 25],
  ])('from below never comes out of a worktop of %s', (stuff, of, thickness) => {
    const worktop = { height: 850, of, ...(of === 'hardwood' ? { hardwood: stuff } : { sheet: stuff }) };
    const made = design(behindJob([], { elements: { worktop } }));
    const lines = making(made).fixings.parts.filter(({ part, unit }) => part.includes('-WT') && unit === 'pieces');
    expect(lines.length).toBeGreaterThan(0);
    for (const { item, how } of lines) {
      const length = made.job.stock.fixings.find(({ id }) => id === item)?.length ?? Infinity;
      // 25 of the rail are left under it; what is let in besides goes that much deeper.
      const letIn = Number(/counterbored ([\d.]+)/.exec(how)?.[1] ?? 0);
      expect(length + letIn - 25).toBeLessThanOrEqual(thickness - 5);
      expect(length / 2).toBeLessThanOrEqual(length + letIn - 25 + 1e-9);
    }
  });

  it('is asked for by its size where the book has none that suits', () => {
    const { name, item } = chosenFor({ ...sheetHold, through: 120 }, undefined, plain.job.stock.fixings);
    expect({ name, item }).toEqual({
      name: 'Coach screw or threaded rod, at least 240 long, to be bought',
      item: undefined,
    });
    expect(chosenFor({ ...sheetHold, by: 'brad', through: 20 }, undefined, []).name).toBe(
      'Brad, 50 to 60 long, to be bought',
    );
    expect(chosenFor({ ...sheetHold, by: 'dowel', through: 30 }, undefined, []).name).toBe(
      'Dowel, 60 long, to be bought',
    );
  });
});

describe('adhesive', () => {
  it('is weighed by the area that bears: PVA at 150 g/m²', () => {
    const { parts } = of([...THREE, sheet([{ ...sheetHold, by: 'glue' }])]);
    // Three studs, 38 × 600 each: 0.0684 m², 10.26 g.
    expect(parts).toHaveLength(1);
    expect(parts[0].amount).toBeCloseTo(10.26, 6);
    expect(parts[0]).toMatchObject({ item: 'pva-1kg', unit: 'g' });
  });

  it('is measured by the metre of bead: grab adhesive, on each stud of a sheet, or along a piece', () => {
    const [, glue] = of([...THREE, sheet([{ ...sheetHold, glue: 'grab' }])]).parts;
    // Three studs of 600.
    expect(glue).toMatchObject({ item: 'grab-310ml', unit: 'm of bead', amount: 1.8 });
    const moulding = block('M', [0, 0, 0], [2000, 15, 30], {
      holds: [{ by: 'brad', through: 15, where: { at: 'length', centres: 250 }, glue: 'grab', rule: 'moulding' }],
    });
    expect(of([moulding]).parts[1].amount).toBe(2);
  });

  it('is found by its name, and what one holds is read from it', () => {
    const fixing = plain.job.stock.fixings[0];
    const tub = (name: string) => ({ ...fixing, kind: 'adhesive' as const, id: 'a', name });
    expect(tubOf('pva', [tub('Wood glue, 500 g')])?.holds).toBe(500);
    // 1.08 g/ml
    expect(tubOf('pva', [tub('PVA 250 ml')])?.holds).toBeCloseTo(270, 9);
    expect(tubOf('grab', [tub('Grab, some')])?.holds).toBe(0);
    expect(tubOf('grab', [tub('PVA 250 ml')])).toBeUndefined();
  });
});

describe('what there is to buy', () => {
  it('is like with like, a tenth to spare, in whole packs', () => {
    const [line] = of([...THREE, sheet([sheetHold]), partOf({ ...sheet([sheetHold]) }, 'S2')]).totals;
    // Twice 25; a tenth is 5; packs of 200.
    expect(line).toMatchObject({ item: 'screw-4x30', amount: 50, spare: 5, packs: 1 });
  });

  it('has ironmongery as it is counted, without spare', () => {
    const flap = block('F', [0, 0, 0], [700, 400, 40], { hardware: [{ what: 'flap hinge', count: 2 }] });
    expect(of([flap]).totals).toEqual([expect.objectContaining({ name: 'flap hinge', amount: 2, spare: 0, packs: 2 })]);
  });

  it('leaves the number of packs open where nothing in the book suits', () => {
    const long = block('L', [0, 0, 0], [900, 120, 120], {
      holds: [{ ...sheetHold, through: 120, where: { at: 'all', each: 3 } }],
    });
    expect(of([long]).totals[0]).toMatchObject({ amount: 3, spare: 1, packs: 0 });
  });

  it('has the bolts of every join, long enough for both studs', () => {
    const made = design(jobOf({ runs: [{ length: 3600 }], joins: { by: 'least' }, carry: { vanLength: 2400 } }));
    expect(made.joins.length).toBeGreaterThan(0);
    const bolts = making(made).fixings.parts.filter((line) => made.joins.some((join) => join.id === line.part));
    expect(bolts.map((line) => [line.part, line.item, line.amount])).toEqual(
      made.joins.map((join) => [join.id, 'bolt-m8x90', join.bolts.length]),
    );
  });

  it('names a rule with every line, and every part of a new job that says how it is held has one', () => {
    const made = design(newJob('x'));
    const { parts, totals } = making(made).fixings;
    for (const line of [...parts, ...totals.map((t) => ({ rule: t.rules.join() }))]) expect(line.rule).not.toBe('');
    const held = new Set(parts.map((line) => line.part));
    expect(made.parts.filter((p) => p.holds && p.holds.length > 0 && !held.has(p.mark))).toEqual([]);
    expect(totals.every((line) => line.amount > 0 && Number.isFinite(line.amount))).toBe(true);
  });
});
