import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { design, newJob, readJob } from '../../src/flow';

const file = readFileSync(join(import.meta.dirname, 'version-1.job.json'), 'utf8');

describe('a file of version 1', () => {
  const read = readJob(file);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const made = design(read.value);

  it('is read, and stays the unit that it was', () => {
    expect(read.value.version).toBe(2);
    expect(read.value.unit.joins).toEqual({ by: 'none' });
    expect(read.value.fit).toMatchObject({ tolerance: 0, scribe: 0 });
    // As the program of version 1 counted and weighed it.
    // 224 parts, of which one top over each run; tops longer than their stock are divided now.
    const runs = read.value.unit.plan.runs.length;
    expect(made.parts.filter((p) => p.kind !== 'top')).toHaveLength(224 - runs);
    expect(made.rod.carcass).toBeUndefined();
    expect(made.parts.filter((p) => p.name === 'plinth return')).toEqual([]);
  });

  it('its book gets what the new decisions start from, and keeps what it had', () => {
    const before = JSON.parse(file).stock.items as readonly { readonly id: string }[];
    const ids = read.value.stock.items.map((item) => item.id);
    expect(ids.slice(0, before.length)).toEqual(before.map((item) => item.id));
    expect(ids).toContain('rail-round-45');
  });

  it('its frame runs up to its walls, whatever a new job leaves there', () => {
    // A new job keeps clear of walls; a file of version 1 has no such thing.
    expect(newJob('x').fit.tolerance).toBeGreaterThan(0);
    const [first] = made.rod.runs;
    expect(first.left.kind).toBe('wall');
    expect(first.left.frameAt).toBe(0);
    expect(made.parts.flatMap((p) => p.oversize ?? [])).toEqual([]);
  });

  it('its blocks stay square at a free end, where a new job returns them', () => {
    const older = JSON.parse(file);
    older.unit.plan.leftEnd = { kind: 'free' };
    older.unit.elements.plinth.endReturn = true;
    const free = readJob(JSON.stringify(older));
    if (!free.ok) throw new Error(JSON.stringify(free.issues));
    expect(newJob('x').unit.elements.plinth.endReturn).toBe(true);
    expect(free.value.unit.elements.plinth).toMatchObject({ ...older.unit.elements.plinth, endReturn: false });
    const names = design(free.value).parts.map((p) => p.name);
    expect(names.filter((name) => /plinth/.test(name)).length).toBeGreaterThan(0);
    expect(names.filter((name) => /plinth return/.test(name))).toEqual([]);
    // With the return that a new job has there is one.
    const returned = { ...free.value.unit.elements, plinth: { ...free.value.unit.elements.plinth, endReturn: true } };
    const other = design({ ...free.value, unit: { ...free.value.unit, elements: returned } });
    expect(other.parts.map((p) => p.name).filter((name) => /plinth return/.test(name)).length).toBeGreaterThan(0);
  });

  it('one that is no job of version 1 either is refused at its path, not thrown at', () => {
    const broken = { ...JSON.parse(file), stock: 7, unit: 'counter' };
    const result = readJob(JSON.stringify(broken));
    expect(result).toMatchObject({ ok: false });
    expect(result.ok ? [] : result.issues.map((i) => i.path)).toEqual(expect.arrayContaining(['/unit', '/stock']));
  });
});
