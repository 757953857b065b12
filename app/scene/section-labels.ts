import { add } from '../../src/base/vec';
import type { Design } from '../../src/vocabulary/design';
import type { Vec3 } from '../../src/vocabulary/geometry';
import type { Shift } from './apart';
import { boxOf } from './assembly';
import type { Measure } from './measures';

/** How far a section's label stands above it, and half the size of the crosses that mark its centre of gravity and holds, mm (by eye). */
const ABOVE = 160;
const HALF = 35;

const AXES: readonly Vec3[] = [
  [HALF, 0, 0],
  [0, HALF, 0],
  [0, 0, HALF],
];

/** A cross in three directions round a point. */
const crossAt = (at: Vec3): Measure['lines'] =>
  AXES.map(([x, y, z]) => [add(at, [-x, -y, -z]), add(at, [x, y, z])] as const);

/**
 * A label over each section of a unit drawn apart: its name and weight, with crosses at its centre of gravity and where it is
 * taken hold of.
 */
export function sectionLabels(
  { parts, sections }: Pick<Design, 'parts' | 'sections'>,
  shift: Shift,
  words: (section: Design['sections'][number]) => string,
): readonly Measure[] {
  return sections.flatMap((section): Measure[] => {
    const own = parts.filter(({ inSection }) => inSection === section.id);
    const box = boxOf(own, shift);
    const first = own[0];
    if (!box || !first) return [];
    const by = shift(first);
    const foot: Vec3 = [(box.min[0] + box.max[0]) / 2, (box.min[1] + box.max[1]) / 2, box.max[2]];
    const head = add(foot, [0, 0, ABOVE]);
    const marked = [section.centreOfGravity, ...section.liftingPoints].map((at) => add(at, by));
    return [
      {
        name: section.id,
        mm: section.size.length,
        text: words(section),
        lines: [[foot, head], ...marked.flatMap(crossAt)],
        label: head,
      },
    ];
  });
}

/** Measures moved with the part that they are of. */
export const shifted = (measures: readonly Measure[], by: Vec3): readonly Measure[] =>
  measures.map((measure) => ({
    ...measure,
    label: add(measure.label, by),
    lines: measure.lines.map(([from, to]) => [add(from, by), add(to, by)] as const),
  }));
