import { describe, expect, it } from 'vitest';
import { readCutProblem, readRack } from '../../../src/cutting/read';

const BARS = {
  kind: 'bars',
  kerf: 3,
  trim: 5,
  stock: [{ length: 2400, price: 5, count: 10 }],
  pieces: [{ length: 873, quantity: 26 }],
};
const SHEETS = {
  kind: 'sheets',
  kerf: 3,
  trim: 5,
  stages: 3,
  stock: [{ length: 2440, width: 1220, price: 39.1 }],
  pieces: [{ length: 782, width: 732, quantity: 2, turnable: true }],
};
const MITRED = {
  kind: 'bars',
  kerf: 2.5,
  trim: 20,
  section: { width: 40, thickness: 20, turns: ['swung'] },
  leastOffcut: 250,
  stock: [{ name: 'batten', length: 2400, price: 5, trim: 0, offcut: true, count: 1 }],
  pieces: [
    {
      name: 'rail',
      length: 400,
      quantity: 2,
      ends: [
        [1, 0],
        [-1, 0],
      ],
      together: 'frame',
    },
  ],
};
const EVERY = {
  ...SHEETS,
  trimsFree: true,
  longestCut: 2500,
  leastOffcut: { length: 300, width: 100 },
  stock: [{ name: 'board', length: 2440, width: 1220, price: 39.1, count: 4, trim: 8, offcut: true }],
  pieces: [{ name: 'side', length: 782, width: 732, quantity: 2, turnable: true, together: 'doors' }],
};

const read = (value: unknown) => readCutProblem(JSON.stringify(value));
/** What is said, a line each: path and message. */
const said = (value: unknown): readonly string[] => {
  const result = read(value);
  return (result.ok ? result.value.warnings : result.issues).map(({ path, message }) => `${path} ${message}`);
};
const usable = (value: unknown): boolean => read(value).ok;

describe('a problem in a file', () => {
  it.each([BARS, SHEETS, MITRED, EVERY])('is read as it stands: $kind', (file) => {
    const result = read(file);
    expect(result).toEqual({ ok: true, value: { problem: file, warnings: [] } });
  });

  it('needs no kerf, trim nor quantity', () => {
    const { kerf: _, trim: __, ...bare } = BARS;
    const result = read({ ...bare, pieces: [{ length: 873 }] });
    expect(result.ok && result.value.problem).toMatchObject({
      kerf: 0,
      trim: 0,
      pieces: [{ length: 873, quantity: 1 }],
    });
  });

  it('is planned by size where nothing has a price, and says so', () => {
    const bars = read({ ...BARS, stock: [{ length: 2400 }, { length: 3000 }] });
    expect(bars.ok && bars.value.problem.stock.map(({ price }) => price)).toEqual([2400, 3000]);
    const sheets = read({ ...SHEETS, stock: [{ length: 2440, width: 1220 }] });
    expect(sheets.ok && sheets.value.problem.stock.map(({ price }) => price)).toEqual([2440 * 1220]);
    expect(said({ ...SHEETS, stock: [{ length: 2440, width: 1220 }] })).toEqual([
      '/stock no stock has a price: planned by area, and the cost is in mm²',
    ]);
  });

  it('warns of a kerf wider than a piece, and plans', () => {
    const thin = { ...SHEETS, pieces: [...SHEETS.pieces, { length: 900, width: 2.5, quantity: 1 }] };
    expect(said(thin)).toEqual(['/pieces/1 the kerf, 3, is wider than the piece, 2.5']);
    expect(usable(thin)).toBe(true);
  });

  it.each([
    [
      'a price missing',
      { ...BARS, stock: [{ length: 2400, price: 5 }, { length: 3000 }] },
      /^\/stock\/1\/price missing/,
    ],
    ['no size', { ...BARS, pieces: [{ length: 0, quantity: 1 }] }, /^\/pieces\/0\/length found 0; allowed/],
    ['a size below nothing', { ...BARS, pieces: [{ length: -5, quantity: 1 }] }, /^\/pieces\/0\/length found -5/],
    [
      'a size beyond',
      { ...SHEETS, stock: [{ length: 2_000_001, width: 500, price: 1 }] },
      /^\/stock\/0\/length .*0\.1 to 2000000 mm/,
    ],
    [
      'a text for a number',
      { ...BARS, pieces: [{ length: '873', quantity: 1 }] },
      /^\/pieces\/0\/length found the text "873"/,
    ],
    ['part of a piece', { ...BARS, pieces: [{ length: 873, quantity: 1.5 }] }, /^\/pieces\/0\/quantity .*whole number/],
    ['minus one for any count', { ...BARS, stock: [{ length: 2400, price: 5, count: -1 }] }, /^\/stock\/0\/count/],
    ['a price below nothing', { ...BARS, stock: [{ length: 2400, price: -5 }] }, /^\/stock\/0\/price/],
    [
      'a width of a bar',
      { ...BARS, pieces: [{ length: 873, width: 20 }] },
      /^\/pieces\/0\/width not known here; known are name, length/,
    ],
    ['an unknown name', { ...SHEETS, 'blade/width': 3 }, /^\/blade~1width not known here/],
    ['another kind', { kind: 'panels' }, /^\/kind found the text "panels"; allowed is "bars" or "sheets"/],
    ['no kind', {}, /^\/kind missing/],
    ['a list', [1], /^ found a list of 1; allowed is a group/],
    ['no pieces', { ...BARS, pieces: [] }, /^\/pieces found an empty list; allowed is a list of 1 to 5000 pieces/],
    ['a piece that is none', { ...BARS, pieces: [null] }, /^\/pieces\/0 found null/],
    ['no stock', { ...BARS, stock: undefined }, /^\/stock missing/],
    ['half a stage', { ...SHEETS, stages: 2.5 }, /^\/stages/],
    ['a flag in words', { ...SHEETS, trimsFree: 'yes' }, /^\/trimsFree found the text "yes"; allowed is true or false/],
    [
      'an end too few',
      { ...MITRED, pieces: [{ length: 400, ends: [[1, 0]] }] },
      /^\/pieces\/0\/ends found a list of 1; allowed is two ends/,
    ],
    [
      'an end that is none',
      { ...MITRED, pieces: [{ length: 400, ends: [[1, 0], [1]] }] },
      /^\/pieces\/0\/ends\/1 .*two numbers/,
    ],
    ['slants without a section', { ...MITRED, section: undefined }, /^\/section missing.*\/pieces\/0 has slanted ends/],
    [
      'ends that cross',
      {
        ...MITRED,
        pieces: [
          {
            length: 79,
            ends: [
              [1, 0],
              [-1, 0],
            ],
          },
        ],
      },
      /^\/pieces\/0\/ends .* 1 too short along one edge/,
    ],
    [
      'a turn unknown',
      { ...MITRED, section: { ...MITRED.section, turns: ['flipped'] } },
      /^\/section\/turns\/0 .*"rolled" or "swung"/,
    ],
    ['only trim', { ...BARS, trim: 1200 }, /^\/stock\/0 the trim, 2400 in all, leaves nothing of 2400/],
    [
      'a trim of its own',
      { ...SHEETS, stock: [{ length: 900, width: 40, price: 1, trim: 20 }] },
      /^\/stock\/0 the trim, 40/,
    ],
    [
      'pieces without end',
      {
        ...BARS,
        pieces: [
          { length: 9, quantity: 4000 },
          { length: 8, quantity: 1001 },
        ],
      },
      /^\/pieces 5001 pieces in all/,
    ],
    ['stock without end', { ...BARS, stock: Array(201).fill(BARS.stock[0]) }, /^\/stock found a list of 201/],
  ])('refuses %s', (_, file, found) => {
    expect(usable(file)).toBe(false);
    expect(said(file)).toHaveLength(1);
    expect(said(file)[0]).toMatch(found);
  });

  it('counts what is different, not how often or by which name it is listed', () => {
    const listed = (different: number) => ({
      ...BARS,
      pieces: Array.from({ length: 1500 }, (_, i) => ({ name: `p${i}`, length: 100 + (i % different), quantity: 1 })),
    });
    expect(usable(listed(1000))).toBe(true);
    expect(said(listed(1001))).toEqual(['/pieces 1001 different pieces; at most 1000 are allowed']);
  });

  it('tells everything at once, up to twenty', () => {
    expect(
      said({ ...BARS, kerf: 'x', stock: [{ length: 0, price: 1 }], pieces: [{ length: 1, quantity: 0 }] }),
    ).toHaveLength(3);
    const all = said({ ...BARS, pieces: Array(50).fill({ length: 0 }) });
    expect([all.length, all.at(-1)]).toEqual([20, ' and 31 more']);
  });

  it('says what is not JSON, and never throws', () => {
    for (const text of [
      '',
      '{',
      '[',
      'null',
      '7',
      '"x"',
      '{"kind":"bars"}',
      '{"__proto__":{"kind":"bars"}}',
      '['.repeat(1e5),
    ])
      expect(readCutProblem(text).ok).toBe(false);
    expect(readCutProblem(`\uFEFF${JSON.stringify(BARS)}`).ok).toBe(true);
    expect(readCutProblem(' '.repeat(5_000_001))).toMatchObject({ ok: false, issues: [{ message: /too long/ }] });
  });
});

describe('a rack in a file', () => {
  it('is a list of offcuts, maybe none', () => {
    const rack = [
      { mark: 'O1', material: 'mdf-12', length: 800, width: 400, note: 'one corner off' },
      { mark: 'O2', material: 'batten', length: 900 },
    ];
    expect(readRack(JSON.stringify(rack))).toEqual({ ok: true, value: rack });
    expect(readRack('[]')).toEqual({ ok: true, value: [] });
    expect(readRack('[{"mark":"O1","length":0}]')).toMatchObject({
      ok: false,
      issues: [{ path: '/0/material' }, { path: '/0/length' }],
    });
    expect(readRack('{}')).toMatchObject({ ok: false });
  });
});
