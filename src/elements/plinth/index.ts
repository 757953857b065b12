import { reachOf } from '../../base/edge-path';
import { boundsOf } from '../../base/outline';
import { alongFace } from '../../base/place';
import { mouldedStrip } from '../../base/profiles';
import { lying } from '../../base/stuff';
import { tenth } from '../../base/tenth';
import type { Cutter } from '../../vocabulary/book';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Outline } from '../../vocabulary/geometry';
import type { EdgeWork, Part, PartDraft } from '../../vocabulary/part';
import type { Layer, Mark, PillarMark, RodRun } from '../../vocabulary/rod';
import type { Bench, Made, Room } from '../../vocabulary/room';
import type { EndPlane } from '../../vocabulary/shape';
import { fields } from './fields';

type Decisions = DecisionsOf<typeof fields>;

/** Plinth blocks: moulded as a strip, then cut to length, mitred at corners. */
export const plinth: Room<typeof fields> = {
  kind: 'plinth',
  label: 'Plinth blocks',
  group: 'front',
  layer: 'plinth',
  fields,
  demands: ({ sheet, height, overhang }, book) => ({
    layer: { name: 'plinth', on: 'cladding', thickness: book.item('sheet', sheet).thickness },
    heights: { plinth: height },
    footOverhang: overhang,
  }),
  backing: () => [],
  parts,
  marks: (run, made) => made.flatMap((p) => edgesOf(run, p)),
};

function parts({ sheet, height, cutter }: Decisions, { rod, book }: Bench): Made {
  const layer = rod.layers.plinth;
  const thickness = layer.outer - layer.inner;
  const mould = cutter ? book.cutter(cutter) : undefined;
  const fault = mould ? tooBig(mould, height, thickness) : undefined;
  const run = fault ? undefined : mould;
  const section = mouldedStrip(height, thickness, run);
  const edges: readonly EdgeWork[] = run ? [{ edge: 'front upper arris', work: 'moulded', cutter: run.name }] : [];
  const drafts: PartDraft[] = [];
  const findings: Finding[] = fault ? [fault] : [];
  for (const r of rod.runs)
    for (const p of r.pillars) {
      const made = block(r, p, layer, section, sheet, edges);
      const least = shortest(made, thickness);
      if (least >= LEAST_BLOCK) drafts.push(made);
      else findings.push(tooShort(r.id, p.where, least));
    }
  return { drafts, findings };
}

/** Less than this can't be held at the saw, mm (common practice, no source). */
const LEAST_BLOCK = 10;

/** The shorter of a block's back and face. */
function shortest({ shape }: PartDraft, thickness: number): number {
  if (shape.kind !== 'stick') return 0;
  const back = shape.end.at - shape.start.at;
  return Math.min(back, back + thickness * (shape.end.perOut - shape.start.perOut));
}

const tooShort = (run: string, where: string, value: number): Finding => ({
  severity: 'stop',
  rule: 'block-too-short',
  subject: { run, path: '/unit/elements/pillar/cornerWidth' },
  value,
  limit: LEAST_BLOCK,
  message: `The corner leaves the plinth block at the ${where} end of run ${run} ${tenth(value)} mm at its shorter side; ${LEAST_BLOCK} mm is the least.`,
  source: 'geometry of the corner',
  remedy: 'Widen the corner boards, use thinner blocks, or turn the corner less. The block is left out.',
});

function tooBig(cutter: Cutter, height: number, thickness: number): Finding | undefined {
  const reach = reachOf(cutter);
  if (reach.height <= height && reach.depth <= thickness) return undefined;
  return {
    severity: 'stop',
    rule: 'cutter-does-not-fit',
    subject: { path: '/unit/elements/plinth/cutter' },
    value: Math.max(reach.height, reach.depth),
    limit: Math.min(height, thickness),
    message: `The moulded edge takes ${reach.height} mm of the face and ${reach.depth} mm of the edge; the plinth blocks are ${height} × ${thickness} mm.`,
    source: 'geometry of the cutter',
    remedy: 'Choose a smaller cutter or a bigger block. The blocks are drawn square.',
  };
}

function block(
  run: RodRun,
  pillar: PillarMark,
  layer: Layer,
  section: Outline,
  material: string,
  edges: readonly EdgeWork[],
): PartDraft {
  // At a corner the block runs to the mitre of its own layer, not of the pillar's.
  const left = pillar.where === 'left' && pillar.mitred;
  const right = pillar.where === 'right' && pillar.mitred;
  const from = left ? -layer.inner * run.left.grows : pillar.footFrom;
  const to = right ? run.length + layer.inner * run.right.grows : pillar.footTo;
  return {
    kind: 'plinth',
    code: 'BK',
    name: left || right ? 'corner plinth block' : 'plinth block',
    run: run.id,
    material,
    finish: 'paint',
    from: 'finished',
    edges,
    grooves: [],
    where: pillar.where === 'between' ? `pillar ${pillar.index + 1}` : `${pillar.where} end`,
    ...lying(run, section, {
      from,
      to,
      d: layer.inner,
      z: 0,
      fromPerOut: left ? -run.left.grows : 0,
      toPerOut: right ? run.right.grows : 0,
    }),
  };
}

/** The arrises of a block's face: at a corner its back begins or ends elsewhere. The skirting fits between them. */
function edgesOf(run: RodRun, { mark, place, shape }: Part): readonly Mark[] {
  if (shape.kind !== 'stick') return [];
  const out = boundsOf(shape.section).max[1];
  const start = alongFace(run, place.origin);
  const at = ({ at: along, perOut }: EndPlane): number => start + along + perOut * out;
  const edge = (side: string, plane: EndPlane): Mark => ({
    id: `${mark}-${side}`,
    x: at(plane),
    lane: 'front',
    reason: `plinth block, ${side} edge`,
    part: mark,
  });
  return [edge('left', shape.start), edge('right', shape.end)];
}
