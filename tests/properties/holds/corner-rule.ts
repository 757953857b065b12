import type { Design } from '../../../src/vocabulary/design';
import type { Part } from '../../../src/vocabulary/part';
import type { RodRun } from '../../../src/vocabulary/rod';
import { type ExpectedRun, expectedLayers, expectedRuns, kicked } from '../expected';
import { expectedReach } from '../expected-reach';
import { type Extent, extentAt, producedTo, reachOf, same } from '../measure';
import type { Found } from '../sample';

/** From where to where a layer reaches; a side on which nothing stands that says so is left out. */
type Measured = Partial<Extent>;

/**
 * The corner rule, measured on parts: on the line at offset d a run is as long as its frame line and d·tan(φ/2) more at each corner; at a free
 * end more only by what turns it, or what the top overhangs. And a length taken over a layer is found on that layer's parts.
 */
export function cornerRule(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  for (const expected of expectedRuns(made.job)) {
    const run = made.rod.runs.find((r) => r.id === expected.id);
    if (!run?.sound) continue;
    const frame = measured(made, run, expected, 'frame');
    if (frame?.from === undefined || frame.to === undefined) {
      wrong.push(`run ${run.id} has no cladding`);
      continue;
    }
    const { faces } = expectedLayers(made.job);
    for (const [layer, d] of Object.entries(faces)) {
      const found = measured(made, run, expected, layer);
      if (!found) continue;
      looked++;
      const turns = { left: beyond(made, expected, 'left', layer), right: beyond(made, expected, 'right', layer) };
      const from = frame.from - d * expected.left.tan - turns.left;
      const to = frame.to + d * expected.right.tan + turns.right;
      const off = (at: number | undefined, wanted: number): boolean => at !== undefined && !same(at, wanted);
      if (off(found.from, from) || off(found.to, to))
        wrong.push(`${layer} of run ${run.id} reaches ${found.from} to ${found.to}, not ${from} to ${to}`);
      const asked = expected.jobIndex === null ? undefined : made.job.unit.plan.runs[expected.jobIndex];
      if (asked?.over !== layer || found.from === undefined || found.to === undefined) continue;
      // Only the top's overhang is part of a length taken over it; what turns an end is put on later.
      const over = found.to - found.from - (layer === 'top' ? 0 : turns.left + turns.right);
      if (!same(over, asked.length)) wrong.push(`run ${run.id} is ${over} over ${layer}; ${asked.length} was asked`);
    }
  }
  return { wrong, looked };
}

/** How much a layer stands beyond a free end: a top overhangs it; a plinth turns it with a mitre of 45°, measured here on the layer's line. */
function beyond({ job }: Design, expected: ExpectedRun, side: 'left' | 'right', layer: string): number {
  const end = expected[side];
  if (end.kind !== 'free') return 0;
  const reach = expectedReach(job);
  const past = (code: string): number =>
    reach({ kind: '', code, name: '' })?.past[end.flap === undefined ? 'free' : 'flap'] ?? 0;
  const { faces } = expectedLayers(job);
  if (layer === 'top') return past('TP');
  if (layer === 'plinth' && !kicked(job)) return past('BK');
  return layer === 'skirting' && past('BK') > 0 ? faces.skirting - faces.cladding : 0;
}

/** From where to where a layer reaches along its run, on its own face line, measured on parts; undefined where that can't be done. */
function measured(made: Design, run: RodRun, expected: ExpectedRun, layer: string): Measured | undefined {
  const { faces } = expectedLayers(made.job);
  const { elements } = made.job.unit;
  const of = (...codes: string[]): readonly Part[] =>
    made.parts.filter((p) => p.run === run.id && codes.includes(p.code));
  // A corner without a pillar has no block either: there only what runs into it says how far the layer goes.
  const bare = (side: 'left' | 'right'): boolean =>
    elements.pillar.atCorners === false && expected[side].kind === 'corner';
  const ends = (of: Extent | undefined): Measured | undefined =>
    of && { ...(bare('left') ? {} : { from: of.from }), ...(bare('right') ? {} : { to: of.to }) };
  const produced = (p: Part, d: number, back: number, face: number): Extent | undefined =>
    producedTo(run, p, back, face, d);
  switch (layer) {
    case 'frame':
      return abutting(of('CL').map((p) => extentAt(run, p, 0)));
    case 'cladding':
      return abutting(of('CL').map((p) => extentAt(run, p, faces.cladding)));
    case 'pillar':
    case 'panel':
      return ends(
        endToEnd(
          of('PI').map((p) => produced(p, faces[layer], faces.cladding, faces.pillar)),
          run,
        ),
      );
    case 'plinth': {
      if (made.findings.some((f) => f.rule === 'plinth-board-too-short' && f.subject.run === run.id)) return undefined;
      const behind = faces.plinth - (kicked(made.job) ? of('KB')[0]?.size.thickness : faces.plinth - faces.cladding);
      if (elements.plinth.style !== 'blocks')
        return abutting(of('PB', 'KB').map((p) => produced(p, faces.plinth, behind, faces.plinth)));
      return ends(
        endToEnd(
          of('BK').map((p) => produced(p, faces.plinth, faces.cladding, faces.plinth)),
          run,
        ),
      );
    }
    case 'skirting': {
      // Cut off at an opening that goes to the floor, it leaves a gap, and says so.
      if (made.findings.some((f) => f.rule === 'skirting-cut-at-opening' && f.subject.run === run.id)) return undefined;
      const blocks = of('BK').map((p) => produced(p, faces.skirting, faces.cladding, faces.plinth));
      const between = of('SK').map((p) => acrossFaces(run, p, faces.cladding, faces.skirting));
      return between.length === run.bays.length && blocks.length === run.pillars.length
        ? abutting([...blocks, ...between])
        : undefined;
    }
    case 'top':
      return butted(made, expected) || expected.jobIndex === null
        ? undefined
        : abutting(of('TP').map((p) => full(p) && extentAt(run, p, faces.top)));
    default:
      throw new Error(`no way to measure ${layer}`);
  }
}

/** A skirting's extent on its own face; a moulding's notched for an opening may have no corner at both ends there. */
const acrossFaces = (run: RodRun, p: Part, back: number, face: number): Extent | undefined =>
  p.ends.every((e) => e.kind === 'square') ? reachOf(run, p) : producedTo(run, p, back, face, face);

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
