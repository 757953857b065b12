import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { solidOf } from '../../src/base/solid/solid';
import { design, elevation, newJob, rooms } from '../../src/flow';
import type { Field } from '../../src/vocabulary/field';
import { jobOf } from './job-of';

const root = join(import.meta.dirname, '..', '..');
/** Two corners and both kinds of end, so that a room with something only there has it. */
const made = design(
  jobOf({
    runs: [{ length: 3000, deflectionDeg: 90 }, { length: 2200, deflectionDeg: -45 }, { length: 2400 }],
    rightEnd: { kind: 'free' },
  }),
);

/** What is amiss with a field: its words, its range, its default. */
function faultsOf(field: Field): readonly string[] {
  const wrong: string[] = [];
  if (!field.label || /\.$/.test(field.label)) wrong.push(`label "${field.label}"`);
  if (!/\.$/.test(field.help)) wrong.push(`help "${field.help}"`);
  switch (field.kind) {
    case 'length':
    case 'number':
    case 'count':
      if (!(field.min < field.max)) wrong.push(`from ${field.min} to ${field.max}`);
      if (!(field.default >= field.min && field.default <= field.max)) wrong.push(`default ${field.default}`);
      if (field.kind === 'count' && field.odd && field.default % 2 === 0 && field.default !== 0)
        wrong.push(`default ${field.default} is even`);
      break;
    case 'choice':
      if (field.options.length < 2 || new Set(field.options.map((o) => o.value)).size < field.options.length)
        wrong.push('options');
      if (!field.options.some((o) => o.value === field.default)) wrong.push(`default ${field.default}`);
      break;
    case 'stock': {
      const job = newJob('register');
      const ids = [
        ...job.stock.items.filter((i) => i.kind === field.of),
        ...(field.of === 'cutter' ? job.tools.cutters : []),
      ].map((i) => i.id);
      if (!ids.includes(field.default) && !(field.optional && field.default === ''))
        wrong.push(`default ${field.default}`);
      break;
    }
    case 'switch':
    case 'lengths':
      break;
  }
  return wrong;
}

describe('the register', () => {
  it('names every room that has a folder, each kind once', () => {
    const folders = readdirSync(join(root, 'src', 'elements'), { withFileTypes: true }).flatMap((f) =>
      f.isDirectory() ? [f.name] : [],
    );
    expect(rooms.map((r) => r.kind).sort()).toEqual(folders.sort());
    expect(new Set(rooms.map((r) => r.label)).size).toBe(rooms.length);
  });

  it.each(rooms.map((room) => [room.kind, room] as const))('%s is complete', (kind, room) => {
    expect(made.rod.layers[room.layer], `its layer ${room.layer} is on the rod`).toBeDefined();

    const fields = Object.entries(room.fields);
    expect(fields.length).toBeGreaterThan(0);
    for (const [key, field] of fields) {
      expect(faultsOf(field), `${kind}.${key}`).toEqual([]);
      if (field.when) {
        expect(Object.keys(room.fields), `${kind}.${key} depends on ${field.when.field}`).toContain(field.when.field);
        expect(field.when.is.length).toBeGreaterThan(0);
      }
    }

    const parts = made.parts.filter((p) => p.kind === kind);
    expect(parts.length, 'its defaults make parts').toBeGreaterThan(0);
    for (const part of parts) expect(solidOf(part.shape).triangles.length).toBeGreaterThanOrEqual(12);

    const drawn = new Set(
      made.rod.runs.flatMap((run) =>
        (['front', 'framing'] as const).flatMap((view) =>
          elevation(made, run.id, view).strokes.flatMap((s) => ('part' in s && s.part ? [s.part] : [])),
        ),
      ),
    );
    expect(
      parts.some((p) => drawn.has(p.mark)),
      'it is drawn in an elevation',
    ).toBe(true);

    const tests = join(root, 'tests', 'elements', kind);
    expect(
      existsSync(tests) && readdirSync(tests).some((f) => f.endsWith('.test.ts')),
      `tests/elements/${kind}/ holds a test`,
    ).toBe(true);
  });

  it('gives every part a mark of its own', () => {
    expect(new Set(made.parts.map((p) => p.mark)).size).toBe(made.parts.length);
  });

  it('a new job, all defaults, has no finding at all', () => {
    expect(design(newJob('defaults')).findings).toEqual([]);
  });
});
