import { expect, test } from 'vitest';
import { layOut } from '../../../app/rod/layout';
import type { Strip } from '../../../app/rod/strips';

const stroke = (id: string, x: number, lane: Strip['lane']) => ({ id, lane, x, reasons: ['a reason'], part: null });
const strips: readonly Strip[] = [
  {
    lane: 'front',
    blocks: [
      { mark: 'A-TP-1', name: 'top', from: -130, to: 3730, low: 1060, high: 1100 },
      { mark: 'A-BK-1', name: 'plinth block', from: -30, to: 120, low: 0, high: 150 },
      { mark: 'A-BK-2', name: 'plinth block', from: 3480, to: 3630, low: 0, high: 150 },
    ],
    widths: [],
    strokes: [stroke('f1', 1200, 'front')],
  },
  { lane: 'timber', blocks: [], widths: [], strokes: [stroke('t1', 1200, 'timber'), stroke('t2', 1203, 'timber')] },
];
const format = (mm: number): string => String(mm);
const room = { width: 1000, digit: 7, sign: 4 };
const heights = { height: 1100, frameHeight: 1060 };
const run = { length: 3600 };

test('the board takes in all that sticks out beyond the frame line', () => {
  const { at } = layOut(run, strips, room, heights, format, []);
  expect(at(-30)).toBeGreaterThan(0);
  expect(at(3630)).toBeLessThan(1000);
  expect(at(0)).toBeGreaterThan(at(-30));
});

test('what lies on top of the frame does not stretch the board: it runs off it', () => {
  const { at } = layOut(run, strips, room, heights, format, []);
  expect(at(-130)).toBeLessThan(0);
  expect(at(3730)).toBeGreaterThan(1000);
  const figures = layOut(run, strips, room, heights, format, [{ x: -130, rank: 0 }]).figures;
  expect(figures.map(({ text }) => text)).not.toContain('-130');
});

test('widths are written over their lane, clear of what is drawn in it', () => {
  const wide = strips.map((strip, i) => (i === 1 ? { ...strip, widths: [{ from: 0, to: 1200 }] } : strip));
  const [front, timber] = layOut(run, wide, room, heights, format, []).lanes;
  expect(timber!.widthsAt).toBeGreaterThan(front!.top + front!.height + 5);
  expect(timber!.widthsAt).toBeLessThan(timber!.top - 5);
});

test('figures are as wide as their digits and signs', () => {
  const { widthOf } = layOut(run, strips, room, heights, format, []);
  expect(widthOf('20 53/64"')).toBe(6 * 7 + 3 * 4 + 2);
});

test('lanes lie under one another, and heights are squeezed into them', () => {
  const { lanes, rise, ruler } = layOut(run, strips, room, heights, format, []);
  expect(lanes[1]!.top).toBeGreaterThan(lanes[0]!.top + lanes[0]!.height);
  expect(ruler).toBeGreaterThan(lanes[1]!.top + lanes[1]!.height);
  expect(rise(1100, lanes[0]!)).toBe(lanes[0]!.height);
  expect(rise(550, lanes[1]!)).toBe(lanes[1]!.height / 2);
  expect(rise(-5, lanes[0]!)).toBe(0);
});

test('the ends are always written, a place is written once, and the crowd gives way to what is in hand', () => {
  const texts = (wishes: readonly { x: number; rank: number }[]) =>
    layOut(run, strips, room, heights, format, wishes).figures.map((figure) => figure.text);
  expect(texts([]).sort()).toEqual(['0', '1200', '3600']);
  expect(texts([{ x: 1203, rank: 0 }])).toContain('1203');
});

test('wider lettering needs more room: fewer figures are written, none of the important ones is lost', () => {
  const many: Strip = {
    lane: 'timber',
    blocks: [],
    widths: [],
    strokes: Array.from({ length: 60 }, (_, i) => stroke(`t${i}`, 60 * i + 30, 'timber')),
  };
  const written = (digit: number) =>
    layOut(run, [many], { ...room, digit }, heights, format, []).figures.map((f) => f.text);
  expect(written(14).length).toBeLessThan(written(7).length);
  expect(written(14)).toEqual(expect.arrayContaining(['0', '3600']));
});

test('every mark has its tick, written out or not', () => {
  const { ticks, at } = layOut(run, strips, room, heights, format, []);
  expect(ticks).toEqual([0, 3600, 1200, 1203].map(at));
});

test('the tags of joins lie over all that is drawn and written, and room is made for them only where there are any', () => {
  const wide = strips.map((strip, i) => (i === 0 ? { ...strip, widths: [{ from: 0, to: 1200 }] } : strip));
  const bare = layOut(run, wide, room, heights, format, []);
  const tagged = layOut(run, wide, room, heights, format, [], { tags: true });
  // A tag is 15 high, a figure 11.
  expect(tagged.tagsAt - 7.5).toBeGreaterThanOrEqual(0);
  expect(tagged.lanes[0]!.widthsAt - 5.5).toBeGreaterThanOrEqual(tagged.tagsAt + 7.5);
  expect(tagged.height - bare.height).toBe(tagged.lanes[0]!.top - bare.lanes[0]!.top);
  expect(tagged.height).toBeGreaterThan(bare.height);
});

test('the top has a lane of its own over the others, its front edge at the foot, where something goes through it', () => {
  expect(layOut(run, strips, room, heights, format, []).plan).toBeNull();
  const { plan, lanes, ruler } = layOut(run, strips, room, heights, format, [], { topDepth: 500 });
  expect(plan!.top + plan!.height).toBeLessThan(lanes[0]!.top);
  expect(lanes[0]!.top).toBeLessThan(ruler);
  expect([0, 250, 500, 900, -3].map(plan!.rise)).toEqual([0, plan!.height / 2, plan!.height, plan!.height, 0]);
});

test('the board goes on over the gap of a flap', () => {
  const flap = strips.map((strip, i) =>
    i === 0 ? { ...strip, widths: [{ from: 3600, to: 4320, of: 'flap' }] } : strip,
  );
  const { at } = layOut(run, flap, room, heights, format, []);
  expect(at(4320)).toBeLessThan(1000);
  expect(at(4320)).toBeGreaterThan(980);
});
