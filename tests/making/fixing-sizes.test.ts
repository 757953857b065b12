import { describe, expect, it } from 'vitest';
import { rectangle } from '../../src/base/outline';
import { placeOf } from '../../src/base/place';
import { design } from '../../src/flow';
import { beadOn } from '../../src/making/adhesives';
import { aroundOf, stuffBeyond } from '../../src/making/behind';
import { contactsOf } from '../../src/making/contacts';
import { boltFor, chosenFor } from '../../src/making/fixing-sizes';
import { fixingsOf } from '../../src/making/fixings';
import { touchingOf } from '../../src/making/touching';
import type { Fixings } from '../../src/vocabulary/making';
import type { Hold, Part } from '../../src/vocabulary/part';
import type { Join } from '../../src/vocabulary/section';
import { jobOf } from '../elements/job-of';
import { block, partOf, stickOf } from './parts';

const plain = design(jobOf({}));
const book = plain.job.stock.fixings;
const hold = (by: Hold['by'], through: number, more: Partial<Hold> = {}): Hold => ({
  by,
  through,
  where: { at: 'all', each: 4 },
  rule: 'as the test says',
  ...more,
});
const of = (parts: readonly Part[], joins: readonly Join[] = []): Fixings =>
  fixingsOf({ ...plain, parts, joins }, touchingOf(contactsOf(parts)));

describe('pins', () => {
  it('to be bought are asked for in lengths that are sold, 64 at most', () => {
    // 9: 22.5 to 27; 24: 60 to 72, of which 64 is the longest; 25.6: 64 exactly.
    expect(chosenFor(hold('brad', 9), undefined, []).name).toBe('Brad, 25 long, to be bought');
    expect(chosenFor(hold('brad', 18), undefined, []).name).toBe('Brad, 45 to 50 long, to be bought');
    expect(chosenFor(hold('brad', 24), undefined, []).name).toBe('Brad, 60 long, to be bought');
    expect(chosenFor(hold('brad', 25.6), undefined, []).name).toBe('Brad, 64 long, to be bought');
  });

  it('give way to screws under pellets where the stuff is too thick', () => {
    // 45 · 2.5 = 112.5. A head 8 down leaves 37: of 74 to 92.5 the book has none, 100 is the next.
    expect(chosenFor(hold('brad', 45), undefined, book)).toMatchObject({
      item: { id: 'screw-5x100' },
      work: 'counterbored 8 and pelleted',
    });
    // With 40 behind, 100 would come through (8 + 100 > 85): 65 let in by 37 − 32.5 = 4.5 more.
    expect(chosenFor(hold('brad', 45), 40, book)).toMatchObject({
      item: { id: 'screw-5x65' },
      work: 'counterbored 12.5 and pelleted',
    });
    expect(chosenFor(hold('brad', 40), undefined, [])).toMatchObject({
      name: 'Wood screw, 65 to 80 long, to be bought',
      work: 'counterbored 8 and pelleted',
    });
    // 90 − 8 = 82, 164 at least: no wood screw.
    expect(chosenFor(hold('brad', 90), undefined, [])).toMatchObject({
      name: 'Too thick for pins: glue and screw from behind',
      none: true,
    });
  });

  it('of the stock book are taken though they are longer than usual', () => {
    const [brad] = book.filter((f) => f.kind === 'brad');
    const long = { ...brad, id: 'brad-75', name: 'Brad 75', length: 75 };
    // 30 · 2.5 = 75; 30.4 · 2.5 = 76.
    expect(chosenFor(hold('brad', 30), undefined, [...book, long])).toMatchObject({ item: { id: 'brad-75' } });
    expect(chosenFor(hold('brad', 30.4), undefined, [...book, long]).work).toMatch(/pelleted/);
  });

  it('are never let in: with little behind they are short and glued, with less there are none', () => {
    // 12 and 10 behind: 30 would come through; 20 goes 8 into what is there.
    const short = chosenFor(hold('brad', 12), 10, book);
    expect(short).toMatchObject({ name: 'Brad, 20 long, to be bought', glued: true });
    expect(short.work).toMatch(/^glued too, for there is too little behind/);
    expect(chosenFor(hold('brad', 18), 1, book)).toMatchObject({
      name: 'Too little behind for pins: glue and cramp',
      none: true,
      glued: true,
    });
  });
});

describe('screws', () => {
  it('to be bought are no longer than they are sold', () => {
    expect(chosenFor(hold('screw', 70), undefined, []).name).toBe('Wood screw, 140 to 150 long, to be bought');
    expect(chosenFor(hold('screw', 75), undefined, []).name).toBe('Wood screw, 150 long, to be bought');
    // 75.5 · 2 = 151; a plate of 89 into end grain 2.5 · 89 = 222.5.
    expect(chosenFor(hold('screw', 75.5), undefined, []).name).toBe(
      'Coach screw or threaded rod, at least 155 long, to be bought',
    );
    expect(chosenFor(hold('screw', 89, { endGrain: true }), undefined, book).name).toBe(
      'Coach screw or threaded rod, at least 225 long, to be bought',
    );
    expect(chosenFor(hold('screw', 45, { endGrain: true }), undefined, []).name).toBe(
      'Wood screw, at least 115 long, to be bought',
    );
    // At least 152, but 153 comes through: not 155.
    expect(chosenFor(hold('screw', 76), 77, []).name).toBe(
      'Coach screw or threaded rod, at least 153 long, to be bought',
    );
  });

  it('are let in only as far as what is behind takes half of them', () => {
    // 38 and 32.5 behind: 65 has half of it there, let in 38 − 32.5. With 32.4 it would come through.
    expect(chosenFor(hold('screw', 38), 32.5, book)).toMatchObject({
      item: { id: 'screw-5x65' },
      work: 'counterbored 5.5',
    });
    expect(chosenFor(hold('screw', 38), 32.4, book)).toMatchObject({
      item: { id: 'screw-4x40' },
      work: 'counterbored 18',
    });
  });

  it('to be bought and let in have a length and a depth', () => {
    // 89 under a top of 30: half in 30 is 60 long, let in 89 − 30. In end grain three fifths: 50, let in 89 − 20.
    expect(chosenFor(hold('screw', 89), 30, book)).toMatchObject({
      name: 'Wood screw, 60 long, to be bought',
      work: 'counterbored 59',
    });
    expect(chosenFor(hold('screw', 89, { endGrain: true }), 30, book)).toMatchObject({
      name: 'Wood screw, 50 long, to be bought',
      work: 'counterbored 69',
    });
    expect(chosenFor(hold('screw', 89), 7, book)).toMatchObject({
      name: 'Too little behind for screws: glue and cramp',
      none: true,
      glued: true,
    });
  });
});

describe('bolts', () => {
  it('have a thread to spare beyond the nut', () => {
    // 90 − 6.8 − 2 · 1.6 − 1.25 = 78.75 of timber.
    expect(boltFor(78.75, book).item?.id).toBe('bolt-m8x90');
    // 78.8 + 11.25 = 90.05, so 95.
    const { name, item } = boltFor(78.8, book);
    expect([name, item]).toEqual(['Bolt M8, at least 95 long, with nut and washers, to be bought', undefined]);
  });

  it('at a corner go through one stud’s face and the other’s depth', () => {
    const { face, depth } = plain.rod.timber;
    expect([face, depth]).toEqual([38, 63]);
    const join = (at: Join['at']): Join => ({
      id: 'J1',
      run: 'A',
      x: 0,
      at,
      behind: at === 'corner' ? 'corner' : 'pillar',
      sections: ['S1', 'S2'],
      bolts: [200, 800],
    });
    expect(of([], [join('run')]).parts).toMatchObject([{ part: 'J1', item: 'bolt-m8x90', amount: 2 }]);
    // 38 + 63 + 11.25 = 112.25
    const [corner] = of([], [join('corner')]).parts;
    expect(corner).toMatchObject({ amount: 2, name: 'Bolt M8, at least 115 long, with nut and washers, to be bought' });
    expect(corner.item).toBeUndefined();
  });
});

describe('the line of a part', () => {
  it('that is held by others’ fixings says none, and no work', () => {
    const plate = block('PL1', [0, 0, 0], [900, 63, 38], {
      holds: [hold('screw', 46, { where: { at: 'all', each: 0 } })],
    });
    // 92 at least and 100 in the book; with 20 behind it would be let in.
    const rail = block('R', [0, 0, 38], [900, 63, 20]);
    const [line] = of([plate, rail]).parts;
    expect(line).toMatchObject({ amount: 0, how: 'none' });
    expect(of([plate, rail]).totals).toEqual([]);
  });

  it('too thick to be pinned has no pins but glue', () => {
    const thick = block('B', [0, 0, 0], [400, 90, 120], { holds: [hold('brad', 120)] });
    // 120 − 8 = 112: 5 × 100 would be let in by 62, more than half of it.
    const { parts, totals } = of([thick]);
    expect(parts.map(({ name, amount, how }) => [name, amount > 0, how])).toEqual([
      ['Too thick for pins: glue and screw from behind', false, 'none'],
      ['PVA wood glue, 1 kg', true, 'on its back'],
    ]);
    expect(totals.map((line) => line.item)).toEqual(['pva-1kg']);
  });

  it('of ironmongery is so by what it is, not by what its rule says', () => {
    const said = block('F', [0, 0, 0], [700, 400, 40], {
      hardware: [{ what: 'hinge', count: 2 }],
      holds: [hold('screw', 20, { rule: 'ironmongery’s screws' })],
    });
    const spare = of([said]).totals.map((line) => [line.unit, line.amount, line.spare]);
    // Four screws with one to spare, two hinges with none.
    expect(spare).toEqual([
      ['pieces', 4, 1],
      ['pieces', 2, 0],
    ]);
  });
});

describe('what there is behind', () => {
  it('is not a timber that is grazed by less than a millimetre', () => {
    // A piece of 1000 × 50 × 12, its back at y = 0 and its face to −y, and a batten of 20 behind its right end.
    const front = partOf(
      { shape: stickOf(rectangle(50, 12), 1000), place: placeOf([0, 0, 0], [1, 0, 0], [0, -1, 0]) },
      'F',
    );
    const behind = (over: number) => {
      const batten = block('B', [1000 - over, 0, 0], [200, 20, 50]);
      return stuffBeyond(front, 12, aroundOf([front, batten], new Map([['F', ['B']]])));
    };
    expect(behind(1.2)).toBe(20);
    expect(behind(0.8)).toBeUndefined();
  });
});

describe('beads of grab adhesive', () => {
  it('lie no further apart than 150', () => {
    // 2000 long: one bead on 150, two on 151, three on 301.
    expect([150, 151, 300, 301].map((width) => beadOn(2000, width))).toEqual([2, 4, 4, 6]);
  });
});
