import { describe, expect, it } from 'vitest';
import { rooms } from '../../src/elements/index.ts';
import { makeReader } from '../../src/job/read.ts';
import { newJob } from '../../src/job/start.ts';
import { writeJob } from '../../src/job/write.ts';
import type { Field } from '../../src/vocabulary/field.ts';
import { edited, type Loose } from './loose.ts';

const read = makeReader(rooms);
const good = writeJob(newJob('Servery', rooms));

/** What is said of a value put at a place, which must be about that place alone; null when it is taken. */
function saidOf(path: string, value: unknown): string | null {
  const steps = path.split('/').slice(1);
  const text = edited(good, (job) => {
    const group = steps.slice(0, -1).reduce((at: Loose, step) => at[step], job);
    group[steps.at(-1)!] = value;
  });
  const result = read(text);
  if (result.ok) return null;
  for (const issue of result.issues) expect(issue.path === path || issue.path.startsWith(`${path}/`)).toBe(true);
  return result.issues.map((issue) => issue.message).join('; ');
}

describe('sizes', () => {
  const sizes = [
    ['/unit/height', 300, 3000],
    ['/unit/depth', 100, 2000],
    ['/unit/plan/runs/0/length', 100, 30000],
    ['/unit/plan/runs/0/deflectionDeg', -150, 150],
    ['/tools/sawKerf', 0, 10],
    ['/tools/roundingStep', 0.01, 10],
    ['/stock/items/0/pricePence', 0, 10000000],
  ] as const;
  const foreign = [-1e9, -0.001, 1e9, 1e300, '1100', 'NaN', 'Infinity', null, true, [], {}, [1100]];

  it.each(sizes)('%s: from %d to %d, and nothing else', (path, min, max) => {
    expect(saidOf(path, min)).toBeNull();
    expect(saidOf(path, max)).toBeNull();
    for (const value of [...foreign, min - 1e-9 * Math.max(1, Math.abs(min)), max * (1 + 1e-12)]) {
      if (typeof value === 'number' && value >= min && value <= max) continue;
      expect(saidOf(path, value), JSON.stringify(value)).toMatch(
        new RegExp(`^found .+; allowed is .+ from ${min} to ${max} `),
      );
    }
  });

  it('a number beyond what can be held', () => {
    const result = read(good.replace('"height": 1100', '"height": 1e999'));
    expect(result).toEqual({
      ok: false,
      issues: [
        { path: '/unit/height', message: 'found a number too large to hold; allowed is a length from 300 to 3000 mm' },
      ],
    });
  });

  it('zero and negative lengths are told as found', () => {
    expect(saidOf('/unit/plan/runs/0/length', 0)).toBe('found 0; allowed is a length from 100 to 30000 mm');
    expect(saidOf('/unit/plan/runs/0/length', -2400)).toBe('found -2400; allowed is a length from 100 to 30000 mm');
    expect(saidOf('/unit/plan/runs/0/length', 'NaN')).toBe(
      'found the text "NaN"; allowed is a length from 100 to 30000 mm',
    );
  });
});

describe('decisions of rooms', () => {
  const decisions = rooms.flatMap(({ kind, fields }) =>
    Object.entries(fields).map(([key, field]) => [`/unit/elements/${kind}/${key}`, field] as const),
  );

  it.each(decisions)('%s keeps to its field', (path, field) => {
    expect(saidOf(path, field.default)).toBeNull();
    for (const wrong of wrongFor(field))
      expect(saidOf(path, wrong), JSON.stringify(wrong)).toMatch(/^found .+(allowed is|which is no)/);
  });

  function wrongFor(field: Field): unknown[] {
    const always = [null, {}, [{}], 1e9, -1e9, 'no such thing', '__proto__'];
    if (field.kind === 'count')
      return [...always, field.min + 0.5, field.max + 1, field.min - 1, ...(field.odd ? [2, 4] : [])];
    if (field.kind === 'length' || field.kind === 'number') return [...always, field.min - 0.01, field.max + 0.01];
    if (field.kind === 'stock' && !field.optional) return [...always, ''];
    if (field.kind === 'lengths') return [...always, [field.min - 1], [field.max + 1], [field.max, field.min]];
    return always;
  }

  it('an odd count may be 0 or odd', () => {
    for (const flutes of [0, 1, 3, 5, 7, 9]) expect(saidOf('/unit/elements/pillar/flutes', flutes)).toBeNull();
    for (const flutes of [2, 4, 8, 11, -1]) {
      expect(saidOf('/unit/elements/pillar/flutes', flutes)).toBe(
        `found ${flutes}; allowed is one of 0, 1, 3, 5, 7 or 9`,
      );
    }
  });
});

describe('choices', () => {
  it.each([
    ['/units', 'feet', 'found the text "feet"; allowed is "mm" or "inch"'],
    ['/unit/plan/runs/0/through', 'both', 'found the text "both"; allowed is "this" or "next"'],
    ['/unit/plan/runs/0/over', 'moon', /^found the text "moon"; allowed is a layer: "frame", "cladding".* or "top"$/],
    ['/unit/plan/leftEnd', {}, 'missing: needs "wall", "free" or "return"'],
    ['/unit/plan/leftEnd', { kind: 'return' }, 'missing: needs a length from 50 to 5000 mm'],
    ['/unit/plan/leftEnd', { kind: 'return', length: 40 }, 'found 40; allowed is a length from 50 to 5000 mm'],
    ['/unit/plan/leftEnd', { kind: 'free', length: 400 }, 'not known here; known are kind'],
    ['/unit/plan/runs/0/rhythm', { by: 'eye' }, 'found the text "eye"; allowed is "count", "pitch" or "marks"'],
    [
      '/unit/plan/runs/0/rhythm',
      { by: 'marks', marks: Array.from({ length: 81 }, (_, i) => i) },
      'found a list of 81; allowed is a list of 0 to 80 pillar centres',
    ],
    [
      '/unit/plan/runs/0/rhythm',
      { by: 'marks', marks: [100, 900, 900] },
      'found 900 after 900; allowed are rising lengths',
    ],
    ['/stock/items/0/kind', 'jelly', 'found the text "jelly"; allowed is "sheet", "timber", "moulding" or "hardwood"'],
    [
      '/stock/fixings/0/kind',
      'nail',
      'found the text "nail"; allowed is "screw", "brad", "bolt", "dowel" or "adhesive"',
    ],
    ['/stock/fixings/0/pack', 1e9, 'found 1000000000; allowed is a whole number from 1 to 100000'],
  ])('%s: %j', (path, value, said) => {
    const message = saidOf(path, value);
    if (typeof said === 'string') expect(message).toBe(said);
    else expect(message).toMatch(said);
  });
});
