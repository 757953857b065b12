import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';
import type { CutProblem } from '../../src/vocabulary/cut-problem';
import { verify } from '../cutting/verifier';
import { run } from './said';

const folder = mkdtempSync(join(tmpdir(), 'counterwright-cut-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function written(name: string, content: unknown): string {
  const file = join(folder, name);
  writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content));
  return file;
}

const BARS: CutProblem = {
  kind: 'bars',
  kerf: 3,
  trim: 5,
  stock: [{ name: 'batten', length: 2400, price: 5, count: 10 }],
  pieces: [
    { name: 'rail', length: 873, quantity: 6 },
    { length: 300, quantity: 3 },
  ],
};
const SHEETS: CutProblem = {
  kind: 'sheets',
  kerf: 3,
  trim: 5,
  stages: 3,
  stock: [{ length: 2440, width: 1220, price: 39.1 }],
  pieces: [
    { name: 'side', length: 782, width: 732, quantity: 2, turnable: true },
    { name: 'shelf', length: 730, width: 462, quantity: 6 },
  ],
};
const BAR_FILE = written('bars.json', BARS);
const SHEET_FILE = written('sheets.json', SHEETS);
const EXAMPLE = join(import.meta.dirname, '..', '..', 'public', 'examples', 'straight.job.json');

describe('cut --problem', () => {
  it.each([
    [BAR_FILE, BARS],
    [SHEET_FILE, SHEETS],
  ])('answers with a plan that anybody can check: %s', async (file, problem) => {
    const { code, out, said } = await run('cut', '--problem', file, '--steps', '3', '--seed', '7', '--format', 'json');
    expect([code, said]).toEqual([0, '']);
    const data = JSON.parse(out);
    expect(verify(problem, data as AnyCutPlan)).toEqual([]);
    expect(data).toMatchObject({ kind: problem.kind, kerf: 3, trim: 5, seed: 7, unplaced: [], warnings: [] });
    expect(data.steps).toBeLessThanOrEqual(3);
    for (const one of data.bars ?? data.sheets)
      expect(one).toMatchObject({ stock: 0, length: problem.stock[0].length, price: problem.stock[0].price });
  });

  it('says where the saw cuts a bar', async () => {
    // 5 trimmed, 873, a kerf, 873, a kerf, 5 × … : every piece begins where the saw has been, and ends where it goes next.
    const { bars } = JSON.parse((await run('cut', '--problem', BAR_FILE, '--steps', '0', '--format', 'json')).out);
    for (const { cuts, pieces } of bars) {
      expect(cuts[0]).toBe(5);
      expect(cuts.slice(1)).toEqual(pieces.map(({ at, length }: { at: number; length: number }) => at + length));
    }
  });

  it('reads well at the saw', async () => {
    const bars = (await run('cut', '--problem', BAR_FILE)).out;
    expect(bars).toMatch(/^cost 15\.00, proven best \(seed 1, \d+ steps?\)\nfetch 3 × batten 2400 at 5\.00\n/);
    expect(bars).toMatch(/\nbar 1(, \d)*: .*2400\n {2}at 5 {2}873 {2}rail\n {2}at 881 {2}/);
    const sheets = (await run('cut', '--problem', SHEET_FILE, '--steps', '3')).out;
    expect(sheets).toMatch(/\nsheet 1(, \d)*: .*2440 × 1220, \d stages?\n {2}(rip|cross-cut) \d+/);
    expect(sheets.match(/: side 7[38]2 × 7[38]2/g)).toHaveLength(2);
  });

  it('says the same again for the same steps and seed', async () => {
    const ask = () => run('cut', '--problem', SHEET_FILE, '--steps', '4', '--seed', '3', '--format', 'json');
    expect(await ask()).toEqual(await ask());
  });

  it('ends with 1 when something is not placed, and says why', async () => {
    const file = written('long.json', {
      ...BARS,
      pieces: [...BARS.pieces, { name: 'post', length: 3000, quantity: 2 }],
    });
    const { code, out } = await run('cut', '--problem', file, '--steps', '1');
    expect(code).toBe(1);
    expect(out).toContain('not placed: 2 × post, 3000: larger than any stock\n');
  });

  it('warns, and plans', async () => {
    const file = written('unpriced.json', { ...BARS, stock: [{ length: 2400 }] });
    expect((await run('cut', '--problem', file, '--steps', '1')).out).toContain(
      'note: /stock: no stock has a price: planned by length',
    );
  });

  it('writes to a file, but never over the problem', async () => {
    const out = join(folder, 'plan.json');
    expect(await run('cut', '--problem', BAR_FILE, '--steps', '0', '--format', 'json', '--out', out)).toMatchObject({
      code: 0,
      out: '',
    });
    expect(JSON.parse(readFileSync(out, 'utf8')).kind).toBe('bars');
    expect(await run('cut', '--problem', BAR_FILE, '--steps', '0', '--out', BAR_FILE)).toMatchObject({
      code: 2,
      said: /not overwritten/,
    });
  });

  it.each([
    [[], /cut needs JOB or --problem FILE/],
    [['--problem', join(folder, 'none.json')], /none\.json: there is no such file/],
    [['--problem', written('text.json', '{"kind":')], /text\.json: this is not JSON/],
    [
      ['--problem', written('zero.json', { ...BARS, pieces: [{ length: 0, quantity: 1 }] })],
      /zero\.json: \/pieces\/0\/length: found 0/,
    ],
    [['--problem', BAR_FILE, 'job.json'], /there is also 'job\.json'/],
    [['--problem', BAR_FILE, '--rack', 'rack.json'], /--rack goes with JOB/],
    [['--problem', BAR_FILE, '--seconds', 'soon'], /--seconds is 'soon'; it may be a number from 0 to 3600/],
    [['--problem', BAR_FILE, '--seed', '1.5'], /--seed is '1\.5'; it may be a whole number/],
    [['--problem', BAR_FILE, '--steps', '3', '--seconds', '1'], /not both/],
    [['--problem', BAR_FILE, '--format', 'csv'], /--format is 'csv'; here it may be text, json/],
    [[EXAMPLE, '--rack', written('rack.json', [{ mark: 'O1' }])], /rack\.json: \/0\/material: missing/],
  ])('refuses what it can not use, in one line: %j', async (typed, why) => {
    const { code, out, said } = await run('cut', ...typed);
    expect([code, out]).toEqual([2, '']);
    expect(said).toMatch(why);
    expect(said.trimEnd()).not.toContain('\n');
  });
});

describe('cut JOB', () => {
  it('cuts every stuff of a job, each part once, offcuts first', async () => {
    const rack = written('offcuts.json', [{ mark: 'O1', material: 'mdf-12', length: 900, width: 500 }]);
    const { out } = await run('cut', EXAMPLE, '--steps', '1', '--format', 'json', '--rack', rack);
    const { job, batches } = JSON.parse(out);
    expect(job).not.toBe('');
    const { parts } = JSON.parse((await run('parts', EXAMPLE, '--format', 'json')).out);
    const marks = new Set(batches.flatMap((batch: { marks: string[][][] }) => batch.marks.flat(2)));
    expect(parts.map(({ mark }: { mark: string }) => mark).filter((mark: string) => !marks.has(mark))).toEqual([]);
    const from = batches.flatMap((batch: { from: { offcut?: string }[] }) => batch.from);
    expect(from).toContainEqual({ offcut: 'O1' });
    expect(batches.flatMap(({ unplaced }: { unplaced: unknown[] }) => unplaced)).toEqual([]);
    // And each place where something lies is marked.
    type Placed = { marks: string[] };
    type Sawn = { bars?: { pieces: Placed[] }[]; sheets?: { pieces: Placed[] }[] };
    const placed = (batches as Sawn[]).flatMap(({ bars = [], sheets = [] }) => [...bars, ...sheets]);
    const found = placed.flatMap(({ pieces }) => pieces.flatMap((piece) => piece.marks));
    expect(found.toSorted()).toEqual(
      batches.flatMap((batch: { marks: string[][][] }) => batch.marks.flat(2)).toSorted(),
    );
  });

  it('names the parts in words', async () => {
    const { code, out } = await run('cut', EXAMPLE, '--steps', '0');
    expect(code).toBe(0);
    expect(out).toMatch(/\n {2}at \d+ {2}[\d.]+ {2}A-/);
    expect(out).toMatch(/A-PM\d+, left end turned 45°, right end turned 45°\n/);
    // A caution stands once under its list.
    const short = out.split('\n').filter((line) => line.includes('Narrow or short'));
    expect(short).toHaveLength(1);
    expect(short[0]).toMatch(/^ {2}at \d+(, \d+)*: Narrow or short/);
  });
});
