import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { newJob, writeJob } from '../../src/flow';
import { run } from './said';

const folder = mkdtempSync(join(tmpdir(), 'counterwright-cutting-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const good = newJob('Good');
const GOOD = join(folder, 'good.json');
writeFileSync(GOOD, writeJob(good));

describe('the cutting list', () => {
  const CANTED = join(import.meta.dirname, '..', '..', 'public', 'examples', 'canted.job.json');

  it('has identical parts together in every format, and leaves none out', async () => {
    const { parts } = JSON.parse((await run('parts', CANTED, '--format', 'json')).out);
    const { alike } = JSON.parse((await run('parts', CANTED, '--alike', '--format', 'json')).out);
    expect(alike.length).toBeLessThan(parts.length / 2);
    const marks = alike.flatMap((one: { marks: string[] }) => one.marks).sort();
    expect(marks).toEqual(parts.map((one: { mark: string }) => one.mark).sort());
    const rows = (await run('parts', CANTED, '--alike', '--format', 'csv')).out.trimEnd().split('\r\n').length - 1;
    const lines = (await run('parts', CANTED, '--alike')).out.trimEnd().split('\n').slice(1);
    expect([rows, lines.length]).toEqual([alike.length, alike.length]);
    expect(lines.reduce((sum, line) => sum + Number.parseInt(line, 10), 0)).toBe(parts.length);
  });

  it('shows the sizes to saw to: what is left on at a wall is on them; the list of parts shows finished ones', async () => {
    // 2400 from a wall to a free end, 15 left on to scribe. The top stands 30 over the free end: 2430 and 15. The board at the wall is
    // 140 wide, and 15; the block under it 140 + 5, and 15.
    const sizes = async (name: string, ...more: string[]): Promise<readonly string[]> => {
      const lines = (await run('parts', GOOD, ...more)).out
        .split('\n')
        .filter((line) => line.replace(/^\S+ +/, '').startsWith(`${name} `));
      return lines.slice(0, 1).map((line) => /(\d+) +(\d+) +(\d+) +square/.exec(line)?.slice(1).join(' × ') ?? line);
    };
    expect(good.fit.scribe).toBe(15);
    const both = async (name: string) => [...(await sizes(name)), ...(await sizes(name, '--alike'))];
    expect(await both('top')).toEqual(['2430 × 400 × 40', '2445 × 400 × 40']);
    expect(await both('pillar board')).toEqual(['910 × 140 × 18', '910 × 155 × 18']);
    expect(await both('plinth block')).toEqual(['145 × 150 × 25', '160 × 150 × 25']);
  });

  it('shows edges and ends in words', async () => {
    const lines = (await run('parts', CANTED)).out.split('\n');
    expect(lines.find((line) => line.includes('corner pillar board'))).toMatch(/bevelled 22\.5°/);
    expect(lines.find((line) => line.startsWith('B-CL1 '))).toContain('bevel 22.5° both');
  });
});
