import { describe, expect, test } from 'vitest';
import { drawnApart, FURTHEST } from '../../../app/scene/apart';
import { boxOf } from '../../../app/scene/assembly';
import { sectionLabels } from '../../../app/scene/section-labels';
import { stepShown, unitShown } from '../../../app/scene/shown';
import { add, dot, sub } from '../../../src/base/vec';
import { design, making } from '../../../src/flow';
import type { Vec3 } from '../../../src/vocabulary/geometry';
import { jobOf } from '../../elements/job-of';

const NO_SIZE = { width: 0, height: 0, depth: 0, besides: 0, above: 0, behind: 0 };

/** A straight run, 2400 long, joined behind its two pillars between. */
const straight = design(
  jobOf({
    joins: {
      by: 'hand',
      at: [
        { run: 1, x: 2470 / 3 },
        { run: 1, x: 4730 / 3 },
      ],
    },
  }),
);
const cornered = design(
  jobOf({
    runs: [{ deflectionDeg: 90 }, {}],
    joins: { by: 'hand', at: [{ run: 1 }] },
  }),
);

const shifts = (made: typeof straight, apart: number): readonly Vec3[] => {
  const shift = drawnApart(made, apart);
  return made.sections.map(({ id }) => shift!(made.parts.find((part) => part.inSection === id)!));
};

describe('drawn apart', () => {
  test('a unit drawn together stands where it stands', () => {
    expect(drawnApart(straight, 0)).toBeNull();
  });

  test('sections part by the same along the run, about the middle one', () => {
    expect(straight.sections).toHaveLength(3);
    const [a, b, c] = shifts(straight, 1);
    expect(a![0]).toBeCloseTo(-FURTHEST, 9);
    expect(b).toEqual([0, 0, 0]);
    expect(c![0]).toBeCloseTo(FURTHEST, 9);
    expect(shifts(straight, 0.5)[2]![0]).toBeCloseTo(FURTHEST / 2, 9);
  });

  test('at a corner they part half-way between the two runs', () => {
    expect(cornered.sections).toHaveLength(2);
    const [a, b] = shifts(cornered, 1);
    const way = sub(b!, a!);
    expect(Math.hypot(...way)).toBeCloseTo(FURTHEST, 9);
    const [first, second] = cornered.rod.runs;
    expect(dot(way, [...first!.along, 0])).toBeCloseTo(dot(way, [...second!.along, 0]), 9);
  });

  test('what is fitted on site comes off the front, or up when it lies on the frame', () => {
    const shift = drawnApart(straight, 1)!;
    const loose = straight.parts.filter(({ fitted }) => fitted === 'site');
    expect(loose.length).toBeGreaterThan(1);
    const top = loose.find(({ kind }) => kind === 'top')!;
    expect(shift(top)[2]).toBeGreaterThan(0);
    const board = loose.find(({ kind }) => kind === 'pillar')!;
    const { front } = straight.rod.runs[0]!;
    expect(dot(shift(board), [...front, 0])).toBeGreaterThan(0);
    expect(shift(board)[2]).toBe(0);
    // Half-way between the two sections that it goes over.
    expect(shift(board)[0]).toBeCloseTo(-FURTHEST / 2, 9);
  });

  test('what is fitted on site behind the frame comes off the back', () => {
    const made = design(
      jobOf({
        depth: 600,
        elements: { carcass: { build: true } },
        bays: [{ run: 1, bay: 1, panels: true, purpose: 'doors', count: 2, shelves: 'fixed', ...NO_SIZE }],
      }),
    );
    const door = made.parts.find(({ code }) => code === 'DR')!;
    expect(door.fitted).toBe('site');
    const { front } = made.rod.runs[0]!;
    expect(dot(drawnApart(made, 1)!(door), [...front, 0])).toBeLessThan(0);
  });

  test('every section has a label over it, with its crosses where it balances', () => {
    const shift = drawnApart(straight, 1)!;
    const labels = sectionLabels(straight, shift, ({ id }) => `${id} !`);
    expect(labels.map(({ text }) => text)).toEqual(['S1 !', 'S2 !', 'S3 !']);
    const own = straight.parts.filter(({ inSection }) => inSection === 'S3');
    const box = boxOf(own, shift)!;
    expect(labels[2]!.label[2]).toBeGreaterThan(box.max[2]);
    // The leader, three strokes at the centre of gravity, three at each of the two holds.
    expect(labels[2]!.lines).toHaveLength(1 + 3 * 3);
    const [from, to] = labels[2]!.lines[1]!;
    const middle = add(from, to).map((value) => value / 2);
    const centre = add(straight.sections[2]!.centreOfGravity, shift(own[0]!));
    expect(middle).toEqual(centre.map((value) => expect.closeTo(value, 6)));
  });
});

describe('what is shown', () => {
  test('no part is lost when it is drawn apart, and few heaps are made of it', () => {
    const together = unitShown(straight, 'finished', 0, false).assembly;
    const apart = unitShown(straight, 'finished', 1, true).assembly;
    const corners = (assembly: typeof apart) =>
      assembly.heaps.reduce((sum, { positions }) => sum + positions.length, 0);
    expect(corners(apart)).toBe(corners(together));
    expect(apart.heaps.length).toBeLessThanOrEqual(together.heaps.length + 1);
    expect(apart.edges).toHaveLength(together.edges.length);
  });

  test('what is fitted on site is of one colour, when it is asked for', () => {
    const site = straight.parts.filter(({ fitted }) => fitted === 'site').map(({ mark }) => mark);
    const { heaps } = unitShown(straight, 'finished', 0, true).assembly;
    expect([...(heaps.find(({ surface }) => surface === 'site')?.marks ?? [])].sort()).toEqual([...site].sort());
    expect(unitShown(straight, 'finished', 0, false).assembly.heaps.some(({ surface }) => surface === 'site')).toBe(
      false,
    );
  });

  test('a step shows all that earlier steps put on, and its own parts told apart', () => {
    const { steps } = making(straight);
    expect(steps.length).toBeGreaterThan(3);
    const shown = stepShown(straight, steps, 2);
    const marks = shown.assembly.heaps.flatMap((heap) => heap.marks);
    expect([...marks].sort()).toEqual([...new Set(steps.slice(0, 3).flatMap(({ parts }) => parts))].sort());
    expect(shown.outlined.map(({ mark }) => mark).sort()).toEqual([...steps[2]!.parts].sort());
    const now = shown.assembly.heaps.find(({ surface }) => surface === 'now');
    expect([...now!.marks].sort()).toEqual([...steps[2]!.parts].sort());
    expect(shown.words).toMatch(new RegExp(`^step 3 of ${steps.length} of the assembly`));
  });

  test('the last step has put every part on that any step names', () => {
    const { steps } = making(straight);
    const shown = stepShown(straight, steps, 10_000);
    const marks = shown.assembly.heaps.flatMap((heap) => heap.marks);
    expect(marks).toHaveLength(new Set(steps.flatMap(({ parts }) => parts)).size);
  });
});
