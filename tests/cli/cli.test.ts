import { spawnSync } from 'node:child_process';
import { linkSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { newJob, writeJob } from '../../src/flow';
import type { Job } from '../../src/vocabulary/job';
import { type Done, run } from './said';

const root = join(import.meta.dirname, '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'counterwright-cli-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the program itself, in the test's folder. */
function spawn(...typed: string[]): Done {
  const tsx = pathToFileURL(join(root, 'node_modules', 'tsx', 'dist', 'esm', 'index.mjs')).href;
  const main = join(root, 'src', 'cli', 'main.ts');
  const done = spawnSync(process.execPath, ['--import', tsx, main, ...typed], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  return { code: done.status, out: done.stdout, said: done.stderr };
}
/** A file of the test's folder. */
const at = (file: string): string => join(folder, file);

function save(file: string, content: string): string {
  writeFileSync(join(folder, file), content);
  return at(file);
}
const text = (file: string): string => readFileSync(join(folder, file), 'utf8');

const good: Job = newJob('Good');
const change = (edit: (job: { unit: { plan: { runs: { length: number }[] } } }) => void): string => {
  const job = JSON.parse(writeJob(good));
  edit(job);
  return JSON.stringify(job);
};
const GOOD = save('good.json', writeJob(good));
/** Pillars wider than the run: can be drawn, can't be built. */
const STOPPED = save(
  'stopped.json',
  change((job) => {
    job.unit.plan.runs[0].length = 150;
  }),
);

/** What every refusal looks like: nothing delivered, one line, no stack. Gives the line, without the test's folder. */
function refused(done: Done): string {
  expect(done).toMatchObject({ code: 2, out: '' });
  expect(done.said.trimEnd().split('\n')).toHaveLength(1);
  expect(done.said).not.toMatch(/\bat .*:\d+:\d+|Error:/);
  return done.said.trimEnd().replaceAll(`${folder}/`, '');
}

describe('the program itself', () => {
  it('exits 0 when done, with the output alone on standard output', () => {
    const { code, out, said } = spawn('parts', 'good.json', '--format', 'csv');
    expect({ code, said }).toEqual({ code: 0, said: '' });
    expect(out).toMatch(/^\ufeffmark,run,part/);
  });

  it('exits 1 when the unit can not be built so, and still makes the parts', () => {
    const { code, out, said } = spawn('parts', 'stopped.json', '--format', 'csv');
    expect(code).toBe(1);
    expect(out).toMatch(/^\ufeffmark,run,part/);
    expect(said).toMatch(/^stop: /m);
  });

  it('exits 2 when the input can not be used, with one line and no stack', () => {
    expect(refused(spawn('parts', 'nowhere.json'))).toBe('nowhere.json: there is no such file or folder');
  });

  it('starts a job in the folder it is called from', () => {
    expect(spawn('new', 'Larch & <Son>')).toEqual({ code: 0, out: '', said: 'Larch-Son.job.json\n' });
    expect(JSON.parse(text('Larch-Son.job.json')).name).toBe('Larch & <Son>');
  });
});

describe('a command', () => {
  it('shows help', async () => {
    const { code, out } = await run('help');
    expect(code).toBe(0);
    for (const command of ['new', 'check', 'rod', 'parts', 'elevation', 'model'])
      expect(out).toContain(`  ${command} `);
  });

  it('starts a job that can be read back', async () => {
    expect((await run('new', 'Larch', '--out', at('larch.json'))).code).toBe(0);
    expect(await run('check', at('larch.json'))).toMatchObject({ code: 0, said: '' });
  });

  it('lists parts as text, CSV and JSON, the same parts', async () => {
    const lines = (await run('parts', GOOD)).out.trimEnd().split('\n').length - 1;
    const rows = (await run('parts', GOOD, '--format', 'csv')).out.trimEnd().split('\r\n').length - 1;
    const { parts } = JSON.parse((await run('parts', GOOD, '--format=json')).out);
    expect([lines, rows]).toEqual([parts.length, parts.length]);
    expect(parts.length).toBeGreaterThan(10);
  });

  it.each([
    ['elevation', [], 'front elevation'],
    ['elevation', ['--kind', 'framing', '--run', 'A'], 'Run A: framing'],
    ['elevation', ['--format', 'json'], '"id": "A-front"'],
    ['rod', [], 'stud'],
    ['rod', ['--format', 'csv'], 'run,name,lane,x mm from the left end of the frame line,'],
    ['rod', ['--format', 'svg'], '<?xml'],
    ['rod', ['--format', 'json'], '"frameHeight"'],
    ['check', [], 'parts, '],
    ['check', ['--format', 'json'], '"findings": ['],
  ])('answers %s %j', async (command, options, answer) => {
    const { code, out } = await run(command, GOOD, ...options);
    expect(code).toBe(0);
    expect(out).toContain(answer);
  });

  it('writes a model and tables to files', async () => {
    expect(await run('model', GOOD, '--out', at('good.glb'))).toMatchObject({ code: 0, out: '' });
    expect(text('good.glb').slice(0, 4)).toBe('glTF');
    expect(await run('parts', GOOD, '--format', 'csv', '--out', at('parts.csv'))).toMatchObject({ code: 0, out: '' });
    expect(text('parts.csv')).toMatch(/^\ufeffmark,run,part/);
  });

  it('checks a unit that can not be built so, and says why once', async () => {
    const { code, out, said } = await run('check', STOPPED);
    expect(code).toBe(1);
    expect(out).toMatch(/^stop: /m);
    expect(said).toBe('');
  });
});

describe('the runs of a job', () => {
  const CORNER = join(root, 'public', 'examples', 'corner-return.job.json');

  it('may be asked for one at a time, in capitals or not, in every format of the rod', async () => {
    for (const letter of ['B', 'b']) {
      const lines = (await run('rod', CORNER, '--run', letter)).out.trimEnd().split('\n').slice(1);
      expect(new Set(lines.map((line) => line.split(' ')[0]))).toEqual(new Set(['B']));
      const rows = (await run('rod', CORNER, '--run', letter, '--format', 'csv')).out.trimEnd().split('\r\n').slice(1);
      expect(rows).toHaveLength(lines.length);
      expect(rows.every((row) => row.startsWith('B,'))).toBe(true);
      const json = JSON.parse((await run('rod', CORNER, '--run', letter, '--format', 'json')).out);
      expect(json.rod.runs.map((one: { id: string }) => one.id)).toEqual(['B']);
      expect(Object.keys(json.marks)).toEqual(['B']);
      expect(json.framing.map((one: { run: string }) => one.run)).toEqual(['B']);
      expect((await run('elevation', CORNER, '--run', letter)).out).toContain('B-front');
    }
  });

  it('are all there when none is asked for', async () => {
    const json = JSON.parse((await run('rod', CORNER, '--format', 'json')).out);
    expect(json.rod.runs.length).toBe(3);
  });

  it('are counted as one speaks', async () => {
    expect((await run('check', GOOD)).out).toContain('\n1 run, ');
    expect((await run('check', CORNER)).out).toContain('\n3 runs, ');
  });
});

describe('a refusal', () => {
  it.each([
    ['a missing file', ['parts', 'nowhere.json'], 'nowhere.json: there is no such file'],
    ['a folder', ['parts', '.'], '.: is a folder'],
    ['no command', [], 'say what to do'],
    ['an unknown command', ['saw', GOOD], "'saw' is no command"],
    ['a command named as an object has it', ['constructor'], "'constructor' is no command"],
    ['no job', ['parts'], 'parts needs JOB'],
    ['two jobs', ['parts', GOOD, GOOD], 'takes one JOB'],
    ['an unknown option', ['parts', GOOD, '--colour', 'red'], 'unknown option --colour'],
    ['an option of another command', ['parts', GOOD, '--run', 'A'], 'parts takes no --run'],
    ['an option without its value', ['parts', GOOD, '--format'], '--format needs a value'],
    ['an option given twice', ['parts', GOOD, '--format', 'csv', '--format', 'csv'], 'given twice'],
    ['a format it has not', ['elevation', GOOD, '--format', 'csv'], "--format is 'csv'; here it may be svg, json"],
    ['a run that is not there', ['elevation', GOOD, '--run', 'Z'], "--run is 'Z'; the job has A"],
    ['a kind it has not', ['elevation', GOOD, '--kind', 'back'], 'here it may be front, framing'],
    ['a value for a switch', ['parts', GOOD, '--alike=yes'], '--alike takes no value'],
    ['a switch of another command', ['rod', GOOD, '--alike'], 'rod takes no --alike'],
    ['a model without a file', ['model', GOOD], '--out'],
    ['a file in no folder', ['parts', GOOD, '--out', at('no/where.csv')], 'no/where.csv: there is no such'],
  ])('says of %s what is wrong', async (_, typed, reason) => {
    expect(refused(await run(...typed))).toContain(reason);
  });

  it('names the file, the place in it, what was found and what is allowed', async () => {
    const file = save(
      'short.json',
      change((job) => {
        job.unit.plan.runs[0].length = -3;
      }),
    );
    expect(refused(await run('check', file))).toMatch(
      /^short\.json: \/unit\/plan\/runs\/0\/length: .*-3.*\d+ to 30000/,
    );
    expect(refused(await run('check', save('broken.json', '{"format": ')))).toMatch(/^broken\.json: /);
    expect(refused(await run('check', save('empty.json', '')))).toMatch(/^empty\.json: /);
  });

  it('keeps the job from being overwritten, whatever it is called', async () => {
    const before = text('good.json');
    symlinkSync('good.json', at('link.json'));
    linkSync(at('good.json'), at('twin.json'));
    for (const out of [GOOD, at('./good.json'), at('link.json'), at('twin.json')]) {
      expect(refused(await run('parts', GOOD, '--out', out)), out).toContain('not overwritten');
    }
    expect(text('good.json')).toBe(before);
  });

  it('keeps a new job from overwriting anything', async () => {
    const file = save('old.json', 'kept');
    expect(refused(await run('new', 'Old', '--out', file))).toContain('exists already');
    expect(text('old.json')).toBe('kept');
  });
});

describe('names that mean something to another program', () => {
  const named = (name: string): string => {
    const job = JSON.parse(writeJob(good));
    job.name = name;
    job.unit.name = name;
    job.stock.items = job.stock.items.map((item: { name: string }) => ({ ...item, name }));
    return save('named.json', JSON.stringify(job));
  };

  it('are no formula in a table', async () => {
    const { out } = await run('parts', named('=HYPERLINK("http://example.org","x")'), '--format', 'csv');
    expect(out).toContain(`"'=HYPERLINK(""http://example.org"",""x"")"`);
    expect(out).not.toMatch(/(^|,|")=/m);
  });

  it('are no markup in a drawing', async () => {
    const { out } = await run('elevation', named('</text><script>alert(1)</script>'));
    expect(out).not.toContain('<script');
    expect(out).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
  });
});
