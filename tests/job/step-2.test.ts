import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { design, readJob } from '../../src/flow';

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

  it('one that is no job of version 1 either is refused at its path, not thrown at', () => {
    const broken = { ...JSON.parse(file), stock: 7, unit: 'counter' };
    const result = readJob(JSON.stringify(broken));
    expect(result).toMatchObject({ ok: false });
    expect(result.ok ? [] : result.issues.map((i) => i.path)).toEqual(expect.arrayContaining(['/unit', '/stock']));
  });
});
