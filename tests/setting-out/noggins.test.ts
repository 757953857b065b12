import { describe, expect, test } from 'vitest';
import { layNoggins } from '../../src/setting-out/noggins';
import type { Backing, Stud } from '../../src/vocabulary/backing';
import type { FrameTimber } from '../../src/vocabulary/rod';

type Wish = Extract<Backing, { kind: 'noggin' }>;
const timber = (nogginRows = 0): FrameTimber => ({
  stock: 'sawn-38x63',
  face: 38,
  depth: 63,
  centres: 400,
  method: 'module',
  datum: 'left',
  nogginRows,
});
const stud = (from: number): Stud => ({ from, to: from + 38, reasons: [] });
const studs = [stud(0), stud(400), stud(800)];
const at = (z: number, from = 0, to = 838, reason = 'skirting'): Wish => ({
  kind: 'noggin',
  run: 'A',
  z,
  from,
  to,
  reason,
});
const high = (height = 1000) => ({ low: 0, high: height });
const lay = (wishes: readonly Wish[], rows = 0, height = 1000) =>
  layNoggins(studs, timber(rows), high(height), wishes).noggins;

describe('noggins', () => {
  test('lie between neighbouring studs, centred on the height asked for', () => {
    expect(lay([at(300)])).toMatchObject([
      { from: 38, to: 400, low: 281, high: 319, reasons: ['skirting'] },
      { from: 438, to: 800, low: 281, high: 319 },
    ]);
  });
  test('only in the gaps that are asked for', () => expect(lay([at(300, 500, 700)]).map((n) => n.from)).toEqual([438]));
  test('serve two heights that one timber covers, 6 mm in from its edges', () => {
    expect(lay([at(300), at(326)])).toHaveLength(2);
    expect(lay([at(300), at(326)])[0]).toMatchObject({ low: 294, high: 332 });
    expect(lay([at(300), at(327)])).toHaveLength(4);
  });
  test('stand on each other when two heights are near', () => {
    const [lower, upper] = lay([at(300), at(330)]);
    expect(upper.low).toBeGreaterThanOrEqual(lower.high);
  });
  test('none where a plate carries the height', () => {
    expect(lay([at(30)])).toEqual([]);
    expect(lay([at(975)])).toEqual([]);
  });
  test('none in a gap narrower than 30', () => {
    expect(layNoggins([stud(0), stud(67)], timber(1), high(), [at(300)]).noggins).toEqual([]);
    expect(layNoggins([stud(0), stud(68)], timber(0), high(), [at(300)]).noggins).toHaveLength(1);
  });
  test('none where the plates leave no room', () => expect(lay([at(55)], 1, 113)).toEqual([]));
});

describe('rows', () => {
  test('are equally spaced between the plates', () => {
    expect(lay([], 1).map((n) => n.low)).toEqual([481, 481]);
    const two = layNoggins([stud(0), stud(400)], timber(2), high(), []).noggins;
    expect(two.map((n) => (n.low + n.high) / 2)).toEqual([38 + 924 / 3, 38 + (924 * 2) / 3]);
  });
  test('give way to a noggin within three faces of them', () => {
    expect(layNoggins([stud(0), stud(400)], timber(1), high(), [at(400)]).noggins).toHaveLength(1);
    expect(layNoggins([stud(0), stud(400)], timber(1), high(), [at(380)]).noggins).toHaveLength(2);
  });

  test('a wish that ends where a stud begins asks for nothing beyond it, whatever the last digits', () => {
    expect(lay([at(300, 38, 400 + 1e-9)]).map((n) => n.from)).toEqual([38]);
    expect(lay([at(300, 438 - 1e-9, 800)]).map((n) => n.from)).toEqual([438]);
  });
  test('timber no thicker than the edges ask for is laid all the same', () => {
    const thin = { ...timber(), face: 8 };
    expect(layNoggins(studs, thin, high(), [at(300)]).noggins.length).toBeGreaterThan(0);
  });
});
