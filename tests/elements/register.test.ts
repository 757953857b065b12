import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { defaultsOf } from '../../src/base/fields';
import { solidOf } from '../../src/base/solid/solid';
import { elevationOf } from '../../src/drawings/elevation';
import { design, newJob, rooms } from '../../src/flow';
import { bayFields } from '../../src/job/fields-making';
import type { Field } from '../../src/vocabulary/field';
import type { BayWish, Opening } from '../../src/vocabulary/job';
import { openingOf } from './behind-job';
import { jobOf } from './job-of';

const root = join(import.meta.dirname, '..', '..');
/** What is off unless a job asks for it, on. */
const EVERYTHING = {
  carcass: { build: true, rearRail: false, toeHeight: 100 },
  undertop: { moulding: 'undertop-scotia-25' },
  footrail: { wanted: true },
  worktop: { height: 860 },
  panel: { rail: true },
};
/** A bay of the first run and what stands behind it. */
const bay = (number: number, change: Partial<BayWish>): BayWish => ({
  ...(defaultsOf(bayFields) as Omit<BayWish, 'run' | 'bay'>),
  run: 1,
  bay: number,
  ...change,
});
const opening = (through: Opening['through'], x: number, z: number) =>
  openingOf({ name: `${through} at ${x}`, through, x, z });

/**
 * Everything on, so that every room has something to make: both kinds of corner and of end, a flap with its gate, joins behind a pillar
 * and under a cover, openings through front and top, a bay for each purpose.
 */
const made = design(
  jobOf({
    runs: [
      { length: 5500, deflectionDeg: 90, rhythm: { by: 'count', count: 7 } },
      { length: 2200, deflectionDeg: -45 },
      { length: 2400, flap: { width: 700, hinge: 'left', gate: true } },
      { length: 1500 },
    ],
    rightEnd: { kind: 'free' },
    height: 1100,
    depth: 700,
    fit: { tolerance: 3, scribe: 15 },
    elements: EVERYTHING,
    joins: {
      by: 'hand',
      at: [{ run: 1, x: 1709 }, { run: 1 }, { run: 2, x: 723 }],
    },
    openings: [opening('front', 1210, 500), opening('top', 2600, 400)],
    bays: [
      bay(1, { purpose: 'shelves', count: 2, panels: false }),
      bay(2, { purpose: 'doors', count: 2 }),
      bay(3, { purpose: 'drawers', count: 3 }),
      bay(4, { purpose: 'appliance', width: 500, height: 600, depth: 400 }),
      bay(5, { purpose: 'sink', width: 450, height: 200, depth: 350 }),
      bay(6, { purpose: 'bin', width: 300, height: 500, depth: 300 }),
      bay(7, { purpose: 'shelves', shelves: 'holes' }),
    ],
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
    if (room.layer !== undefined)
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
    expect(parts.length, 'it makes parts').toBeGreaterThan(0);
    for (const part of parts) expect(part.holds?.length, `what holds ${part.mark}`).toBeGreaterThan(0);
    for (const part of parts) expect(solidOf(part.shape).triangles.length).toBeGreaterThanOrEqual(12);

    const drawn = new Set(
      made.rod.runs.flatMap((run) =>
        (['front', 'framing', 'behind'] as const).flatMap((view) =>
          elevationOf(made, run.id, view).strokes.flatMap((s) => ('part' in s && s.part ? [s.part] : [])),
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

  it('makes the job with everything on whole: it is drawn from every side, parted, and its openings have their places', () => {
    expect(made.joins.map((join) => [join.run, join.at])).toEqual([
      ['A', 'run'],
      ['A', 'corner'],
      ['B', 'run'],
      ['C', 'flap'],
    ]);
    expect(made.joins.map((join) => join.behind)).toEqual(['cover', 'corner', 'pillar', 'gap']);
    expect(made.openings).toHaveLength(2);
    expect(made.findings.filter((finding) => finding.severity === 'stop')).toEqual([]);
  });

  it('a new job, all defaults, is only told that an end stands free', () => {
    expect(design(newJob('defaults')).findings.map(({ rule, severity }) => [rule, severity])).toEqual([
      ['free-end-open', 'note'],
    ]);
  });
});
