import { describe, expect, it } from 'vitest';
import { rooms } from '../../src/elements/index.ts';
import { makeReader } from '../../src/job/read.ts';
import { newJob } from '../../src/job/start.ts';
import { writeJob } from '../../src/job/write.ts';
import type { Issue } from '../../src/vocabulary/result.ts';
import { edited, type Loose, loose } from './loose.ts';

const read = makeReader(rooms);
const good = writeJob(newJob('Servery', rooms));

function issuesOf(text: string): readonly Issue[] {
  const result = read(text);
  return result.ok ? [] : result.issues;
}
const told = (change: (job: Loose) => void) => issuesOf(edited(good, change));

describe('files that are no job', () => {
  it.each([
    ['', '', 'this is not JSON: line 1, column 1: found the end of the file where a value should be'],
    ['Dear Sir or Madam', '', 'this is not JSON: line 1, column 1: found "D" where a value should be'],
    [
      '{\n  "format": "counterwright-job",\n}',
      '',
      'this is not JSON: line 3, column 1: found "}" where a name in double quotes should be',
    ],
    ['null', '', 'this is no Counterwright job: found null'],
    ['[]', '', 'this is no Counterwright job: found an empty list'],
    ['"counterwright-job"', '', 'this is no Counterwright job: found the text "counterwright-job"'],
    ['{}', '/format', 'this is JSON but not a Counterwright job: it has no "format"; allowed is "counterwright-job"'],
    [
      '{"format": "quilt"}',
      '/format',
      'this is JSON but not a Counterwright job: its "format" is the text "quilt"; allowed is "counterwright-job"',
    ],
    [
      '{"format": "counterwright-job"}',
      '/version',
      'missing: needs the version of the file, a whole number from 1 to 2',
    ],
    [
      '{"format": "counterwright-job", "version": 7}',
      '/version',
      'written by a newer version: 7, this one reads up to 2',
    ],
  ])('%j', (text, path, message) => expect(issuesOf(text)).toEqual([{ path, message }]));

  it('reads a file that begins with a byte order mark', () => {
    expect(read(`\uFEFF${good}`)).toEqual(read(good));
    expect(read(good).ok).toBe(true);
  });

  it('refuses 20 million characters unread, with the size', () => {
    const message = 'the file is too large: 20.0 million characters; at most 5.0 million are read';
    expect(issuesOf('x'.repeat(20_000_000))).toEqual([{ path: '', message }]);
    expect(issuesOf(good.replace('"Servery"', `"${'x'.repeat(19_999_991 - good.length)}"`))).toEqual([
      { path: '', message },
    ]);
  });
});

describe('too much of it', () => {
  it('refuses deep nesting, at the place', () => {
    const deep = `${'['.repeat(1_000_000)}${']'.repeat(1_000_000)}`;
    expect(issuesOf(good.replace('"Servery"', deep))).toEqual([
      { path: `/name${'/0'.repeat(15)}`, message: 'nested more than 16 deep' },
    ]);
    expect(issuesOf(deep)).toEqual([{ path: '', message: 'this is no Counterwright job: found a list of 1' }]);
  });

  it('refuses 100 000 runs, and 41', () => {
    const runs = (count: number) =>
      told((job) => {
        job.unit.plan.runs = Array.from({ length: count }, () => ({
          length: 2400,
          over: 'top',
          deflectionDeg: 0,
          through: 'this',
        }));
      });
    const many = `[${'{},'.repeat(99_999)}{}]`;
    expect(issuesOf(good.replace(/\[\{ "length": 2400, "over"[^\]]*\]/, many))).toEqual([
      { path: '/unit/plan/runs', message: 'found 100000 things in one place; at most 5000 are allowed' },
    ]);
    expect(runs(41)).toEqual([
      { path: '/unit/plan/runs', message: 'found a list of 41; allowed is a list of 1 to 40 runs' },
    ]);
    expect(runs(40)).toEqual([]);
    expect(runs(0)).toEqual([
      { path: '/unit/plan/runs', message: 'found an empty list; allowed is a list of 1 to 40 runs' },
    ]);
  });

  it('refuses a count of 1e9 runs in place of the runs, and of bays', () => {
    expect(told((job) => (job.unit.plan.runs = 1e9))).toEqual([
      { path: '/unit/plan/runs', message: 'found 1000000000; allowed is a list of 1 to 40 runs' },
    ]);
    expect(told((job) => (job.unit.plan.runs[0].rhythm = { by: 'count', count: 1e9 }))).toEqual([
      { path: '/unit/plan/runs/0/rhythm/count', message: 'found 1000000000; allowed is a whole number from 1 to 40' },
    ]);
  });

  it('refuses very many values in all', () => {
    const rows = Array.from({ length: 4000 }, () => Array.from({ length: 100 }, () => 0));
    expect(told((job) => (job.extra = rows))).toEqual([{ path: '', message: 'holds more than 200000 values' }]);
  });

  it('tells 20 issues at most, the last of them how many more there are', () => {
    const issues = told((job) => (job.survey.levels = Array.from({ length: 30 }, () => ({}))));
    expect(issues).toHaveLength(20);
    expect(issues[0]).toEqual({
      path: '/survey/levels/0/run',
      message: 'missing: needs a run’s number, 1 for the first',
    });
    expect(issues[19]).toEqual({ path: '', message: 'and 71 more' });
  });
});

describe('names of no group', () => {
  it.each(['unit', 'stock', 'tools', 'client', 'survey'])(
    'an unknown name in /%s is told with what is known',
    (place) => {
      const issues = told((job) => (job[place].colour = 'green'));
      expect(issues).toEqual([
        { path: `/${place}/colour`, message: expect.stringMatching(/^not known here; known are .+/) },
      ]);
    },
  );

  it('an unknown room, and an unknown decision of a known one', () => {
    expect(told((job) => (job.unit.elements.dragon = {}))).toMatchObject([{ path: '/unit/elements/dragon' }]);
    expect(told((job) => (job.unit.elements.pillar['a/b~c'] = 1))).toMatchObject([
      { path: '/unit/elements/pillar/a~1b~0c' },
    ]);
  });

  it('__proto__ at any depth', () => {
    const message = 'not known here: no name in a job file is "__proto__"';
    expect(issuesOf(good.replace('{', '{ "__proto__": { "units": "mm" },'))).toEqual([{ path: '/__proto__', message }]);
    expect(issuesOf(good.replace('"unit": {', '"unit": { "__proto__": null,'))).toEqual([
      { path: '/unit/__proto__', message },
    ]);
    expect(loose({}).units).toBeUndefined();
  });

  it('constructor, toString and the like', () => {
    expect(told((job) => (job.unit.elements.constructor = {}))).toMatchObject([{ path: '/unit/elements/constructor' }]);
    expect(told((job) => (job.toString = 1))).toMatchObject([{ path: '/toString' }]);
  });
});

describe('text', () => {
  it('with markup is text, kept letter by letter', () => {
    const name = '<img src=x onerror="alert(1)"> & \u202E “bar” \u0000 😀';
    const result = read(edited(good, (job) => (job.name = name)));
    expect(result.ok && result.value.name).toBe(name);
  });

  it('has a longest length', () => {
    expect(told((job) => (job.name = 'x'.repeat(201)))).toEqual([
      { path: '/name', message: 'found text of 201 characters; allowed are 0 to 200' },
    ]);
  });
});

describe('what may be left out', () => {
  it('decisions of rooms take their defaults', () => {
    const short = read(edited(good, (job) => (job.unit.elements = { pillar: { width: 90 } })));
    const whole = newJob('Servery', rooms);
    const pillar = { ...whole.unit.elements.pillar, width: 90 };
    const elements = { ...whole.unit.elements, pillar };
    expect(short).toEqual({ ok: true, value: { ...whole, unit: { ...whole.unit, elements } } });
  });

  it.each([
    '/name',
    '/client',
    '/client/name',
    '/site/notes',
    '/units',
    '/survey',
    '/survey/walls',
    '/unit',
    '/unit/height',
    '/unit/depth',
    '/unit/plan',
    '/unit/plan/runs',
    '/unit/plan/leftEnd',
    '/unit/elements',
    '/unit/plan/runs/0/length',
    '/unit/plan/runs/0/over',
    '/unit/plan/runs/0/through',
    '/stock',
    '/stock/items',
    '/stock/items/0/thickness',
    '/tools',
    '/tools/cutters',
    '/tools/roundingStep',
  ])('%s may not', (path) => {
    const steps = path.split('/').slice(1);
    const issues = told((job) => {
      const group = steps.slice(0, -1).reduce((at, step) => at[step], job);
      delete group[steps.at(-1)!];
    });
    expect(issues).toEqual([{ path, message: expect.stringMatching(/^missing: needs /) }]);
  });
});
