import type { Design } from '../../../src/vocabulary/design';
import type { Part } from '../../../src/vocabulary/part';
import type { RodRun } from '../../../src/vocabulary/rod';
import { type ExpectedRun, expectedLayers, expectedRuns } from '../expected';
import { type Extent, extentAt, producedTo, reachOf, same } from '../measure';
import type { Found } from '../sample';

/**
 * The corner rule, measured on parts: on the line at offset d a run is as long as its frame line and d·tan(φ/2) more at each corner.
 * And a length taken over a layer is found on that layer's parts.
 */
export function cornerRule(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  for (const expected of expectedRuns(made.job)) {
    const run = made.rod.runs.find((r) => r.id === expected.id);
    if (!run?.sound) continue;
    const frame = measured(made, run, expected, 'frame');
    if (!frame) {
      wrong.push(`run ${run.id} has no cladding`);
      continue;
    }
    const { faces } = expectedLayers(made.job);
    for (const [layer, d] of Object.entries(faces)) {
      const found = measured(made, run, expected, layer);
      if (!found) continue;
      looked++;
      const from = frame.from - d * expected.left.tan - beyond(made, expected, 'left', layer);
      const to = frame.to + d * expected.right.tan + beyond(made, expected, 'right', layer);
      if (!same(found.from, from) || !same(found.to, to))
        wrong.push(`${layer} of run ${run.id} reaches ${found.from} to ${found.to}, not ${from} to ${to}`);
      const asked = expected.jobIndex === null ? undefined : made.job.unit.plan.runs[expected.jobIndex];
      if (asked?.over === layer && !same(found.to - found.from, asked.length))
        wrong.push(`run ${run.id} is ${found.to - found.from} over ${layer}; ${asked.length} was asked`);
    }
  }
  return { wrong, looked };
}

/** A top runs past a free end; at a return the corner rule already says what it covers. */
function beyond({ job }: Design, expected: ExpectedRun, side: 'left' | 'right', layer: string): number {
  return layer === 'top' && expected[side].kind === 'free' ? (job.unit.elements.top.endOverhang as number) : 0;
}

/** From where to where a layer reaches along its run, on its own face line, measured on parts; undefined where that can't be done. */
function measured(made: Design, run: RodRun, expected: ExpectedRun, layer: string): Extent | undefined {
  const { faces } = expectedLayers(made.job);
  const of = (kind: string): readonly Part[] => made.parts.filter((p) => p.run === run.id && p.kind === kind);
  switch (layer) {
    case 'frame':
      return abutting(of('cladding').map((p) => extentAt(run, p, 0)));
    case 'cladding':
      return abutting(of('cladding').map((p) => extentAt(run, p, faces.cladding)));
    case 'pillar':
    case 'panel':
      return endToEnd(
        of('pillar').map((p) => producedTo(run, p, faces.cladding, faces.pillar, faces[layer])),
        run,
      );
    case 'plinth':
      return endToEnd(
        of('plinth').map((p) => producedTo(run, p, faces.cladding, faces.plinth, faces.plinth)),
        run,
      );
    case 'skirting': {
      const blocks = of('plinth').map((p) => producedTo(run, p, faces.cladding, faces.plinth, faces.skirting));
      const between = of('skirting').map((p) => reachOf(run, p));
      return between.length === run.bays.length && blocks.length === run.bays.length + 1
        ? abutting([...blocks, ...between])
        : undefined;
    }
    case 'top':
      return butted(made, expected) || expected.jobIndex === null
        ? undefined
        : abutting(of('top').map((p) => full(p) && extentAt(run, p, faces.top)));
    default:
      throw new Error(`no way to measure ${layer}`);
  }
}

/** The two end boards and all that stands between: only when neither was left out. */
function endToEnd(extents: readonly (Extent | undefined)[], run: RodRun): Extent | undefined {
  const all = extents.filter((e) => e !== undefined);
  if (run.pillars.length === 0 || all.length !== run.pillars.length) return undefined;
  return { from: Math.min(...all.map((e) => e.from)), to: Math.max(...all.map((e) => e.to)) };
}

/** Pieces that lie end to end with no gap. A gap shows as a length that is not the expected one. */
function abutting(extents: readonly (Extent | undefined)[]): Extent | undefined {
  const all = extents.filter((e) => e !== undefined).sort((a, b) => a.from - b.from);
  if (all.length === 0 || all.length !== extents.length) return undefined;
  const gap = all.slice(1).reduce((sum, e, i) => sum + Math.abs(e.from - all[i].to), 0);
  return { from: all[0].from, to: all[all.length - 1].to + (gap > 1e-6 ? gap : 0) };
}

/** A butted top ends on its neighbour's edge, not on the mitre: its corners are tested in the top's own room. */
const butted = ({ job }: Design, { left, right }: ExpectedRun): boolean =>
  job.unit.elements.top.corner === 'butted' && [left, right].some((e) => e.kind === 'corner' && !e.toReturn);

/** A top squeezed at its front has lost its front line. */
const full = (top: Part): true | undefined =>
  top.shape.kind === 'board' && top.shape.outline.length === 4 ? true : undefined;
