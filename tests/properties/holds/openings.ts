import { hull, polygonArea, shared } from '../../../src/base/polygon';
import type { Design } from '../../../src/vocabulary/design';
import type { Vec2 } from '../../../src/vocabulary/geometry';
import { expectedLayers } from '../expected';
import { cornersIn } from '../measure';
import type { Found } from '../sample';

/** Less than this is touching, mm. */
const TOUCH = 1e-6;

/**
 * Every opening that has its place is where and as big as the job says, is cut through one sheet of the skin, and no timber of the frames stands
 * behind it, but a stud that something else needs there, which is said.
 */
export function openings(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  const { frameDepth } = expectedLayers(made.job);
  for (const placed of made.openings) {
    const { x, z, width, height, through, use } = made.job.unit.openings[placed.index];
    const high = use === 'pipe' ? width : height;
    const from = x - width / 2;
    const low = z - high / 2;
    const sizes = [placed.from - from, placed.to - from - width, placed.low - low, placed.high - low - high];
    if (sizes.some((off) => Math.abs(off) > TOUCH))
      wrong.push(`opening ${placed.index} is ${placed.from} to ${placed.to}, ${placed.low} to ${placed.high}`);
    if (through !== 'front') continue;
    looked++;
    const run = made.rod.runs.find((r) => r.id === placed.run);
    if (!run || run.jobIndex !== made.job.unit.openings[placed.index].run - 1) {
      wrong.push(`opening ${placed.index} is in run ${placed.run}`);
      continue;
    }
    const cut = made.parts.filter(
      ({ kind, run: of, shape, place }) =>
        kind === 'cladding' &&
        of === run.id &&
        shape.kind === 'board' &&
        shape.holes.some((hole) => {
          const left =
            (place.origin[0] - run.origin[0]) * run.along[0] + (place.origin[1] - run.origin[1]) * run.along[1];
          const us = [hole.start, ...hole.segments.map((s) => s.to)].map(([u]) => u + left);
          return Math.abs(Math.min(...us) - from) < 1e-3 && Math.abs(Math.max(...us) - from - width) < 1e-3;
        }),
    );
    if (cut.length !== 1) wrong.push(`opening ${placed.index} is cut through ${cut.length} sheets`);
    const near = new Set([run.id, run.left.neighbour, run.right.neighbour]);
    const said = made.findings.some(
      (f) => f.rule === 'stud-in-opening' && f.subject.path === `/unit/openings/${placed.index}`,
    );
    const behind: readonly Vec2[] = [
      [from, -frameDepth],
      [from + width, -frameDepth],
      [from + width, 0],
      [from, 0],
    ];
    for (const part of made.parts) {
      if (part.kind !== 'frame' || !near.has(part.run)) continue;
      const corners = cornersIn(run, part);
      const upright = corners.map((c) => c.z);
      const level = Math.min(...upright) < low + high - TOUCH && Math.max(...upright) > low + TOUCH;
      // By its outline in plan, not by a box round it: a neighbour's timber lies askew.
      const outline = hull(corners.map((c): Vec2 => [c.x, c.d]));
      const meets = level && polygonArea(shared(outline, behind)) > TOUCH * (width + frameDepth);
      if (meets && !(said && part.code === 'ST'))
        wrong.push(`${part.mark} (${part.name}, ${part.where}) stands in opening ${placed.index}`);
    }
  }
  return { wrong, looked };
}
