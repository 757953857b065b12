import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { newJob, writeJob } from '../../src/flow';
import { run } from './said';

const folder = mkdtempSync(join(tmpdir(), 'counterwright-making-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const start = newJob('Making');
const JOB = join(folder, 'making.json');
const corner = { length: 2400, over: 'frame', deflectionDeg: 90, through: 'this' } as const;
writeFileSync(
  JOB,
  writeJob({
    ...start,
    survey: {
      walls: [],
      levels: [
        { run: 1, along: 0, height: 0 },
        { run: 1, along: 2400, height: -6 },
      ],
    },
    unit: {
      ...start.unit,
      plan: { ...start.unit.plan, runs: [corner, { ...corner, length: 1800, deflectionDeg: 0 }] },
      joins: { by: 'least' },
    },
  }),
);

describe('commands about the making', () => {
  it.each([
    ['sections', 'length × depth × height', 'section,pieces', '"sections": ['],
    ['fixings', 'counted', 'fixing,unit,counted', '"fixings": ['],
    ['spacers', 'spacer', 'length mm,exact length mm', '"layouts": ['],
    ['assembly', 'what', 'step,place,section', '"steps": ['],
    ['map', 'timber', 'run,measured from the', '"maps": ['],
    ['site', 'left on', 'what,run,where', '"site": {'],
  ])('%s speaks as text, CSV and JSON', async (command, text, csv, json) => {
    expect((await run(command, JOB)).out).toContain(text);
    const table = await run(command, JOB, '--format', 'csv');
    expect(table.out.startsWith(`\ufeff${csv}`)).toBe(true);
    const plain = await run(command, JOB, '--format', 'json');
    expect(plain.out).toContain(json);
    expect(JSON.parse(plain.out).job).toBe('Making');
    expect([table.code, plain.code]).toEqual([0, 0]);
  });

  it('fixings are those of every part with --each', async () => {
    const { out } = await run('fixings', JOB, '--each');
    expect(out).toMatch(/^part +fixing +amount/);
    expect(out).toMatch(/^A-ST1 +Wood screw 5 × 100 +4 /m);
    expect((await run('fixings', JOB, '--each', '--format', 'csv')).out).toContain('part,fixing,amount');
    expect((await run('map', JOB, '--each')).code).toBe(2);
  });

  it('map may be asked for one run', async () => {
    const lines = (await run('map', JOB, '--run', 'b')).out.trimEnd().split('\n').slice(1);
    expect(lines.length).toBeGreaterThan(5);
    expect(lines.every((line) => line.startsWith('B '))).toBe(true);
  });

  it('spacers say how few there could be, or that there could not be fewer', async () => {
    const { out } = await run('spacers', JOB);
    expect(out).toMatch(
      /\d+ different spacers; (\d+ with: (Studs set out|Stud centres|Module from|Noggin rows)|no layout within the decisions needs fewer)/,
    );
  });

  it('site says what had to be assumed', async () => {
    const { out } = await run('site', JOB);
    expect(out).toMatch(/^packer +A /m);
    expect(out).toContain('No level was taken along run B');
  });

  it('are shown on the help page', async () => {
    const { out } = await run('help');
    for (const command of ['sections', 'fixings', 'spacers', 'assembly', 'map', 'site'])
      expect(out).toContain(`  ${command} JOB`);
  });
});
