import { level, onFace, placeOf, UP } from '../../base/place';
import { tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Vec2 } from '../../vocabulary/geometry';
import type { PartDraft } from '../../vocabulary/part';
import type { Rod, RodRun } from '../../vocabulary/rod';
import type { Bench, Made, Room } from '../../vocabulary/room';
import type { BoardEdge } from '../../vocabulary/shape';
import { fields } from './fields';
import { topOutline } from './outline';

type Decisions = DecisionsOf<typeof fields>;

/** A top that reaches further than this behind its frame wants support there (200–300 mm is usual for a free overhang; common practice, no source). */
const MOST_UNSUPPORTED = 300;

/** The hardwood top, overhanging the front; one length over each run, covering the returns. */
export const top: Room<typeof fields> = {
  kind: 'top',
  label: 'Top',
  group: 'top',
  layer: 'top',
  fields,
  demands: ({ hardwood, overhang, endOverhang }, book) => ({
    layer: { name: 'top', outer: overhang },
    top: { layer: 'top', thickness: book.item('hardwood', hardwood).thickness, overhang, endOverhang },
  }),
  backing: () => [],
  parts,
  marks: () => [],
};

function parts({ hardwood, corner }: Decisions, { rod, book }: Bench): Made {
  const stock = book.item('hardwood', hardwood);
  const drafts: PartDraft[] = [];
  const findings: Finding[] = [...cover(rod)];
  for (const run of rod.runs.filter((r) => r.jobIndex !== null && r.sound)) {
    const outline = topOutline(rod, run, corner);
    const front = outline.filter((p) => Math.abs(p[1]) < SAME_LENGTH);
    const long = extent(outline);
    if (outline.length !== 4 || front.length !== 2) findings.push(squeezed(run, rod));
    if (outline.length < 3) continue;
    if (long > stock.maxLength) findings.push(tooLong(run, long, stock.maxLength));
    drafts.push(draft(rod, run, outline, hardwood, stock.thickness));
  }
  return { drafts, findings };
}

function draft(rod: Rod, run: RodRun, outline: readonly Vec2[], material: string, thickness: number): PartDraft {
  const left = Math.min(...outline.map((p) => p[0]));
  const edges: readonly BoardEdge[] = outline.map(() => ({ kind: 'square', steps: [] }));
  return {
    kind: 'top',
    code: 'TP',
    name: 'top',
    run: run.id,
    material,
    finish: 'oil',
    from: 'clad',
    where: '',
    grooves: [],
    edges: [],
    edgeNames: ['front edge', 'back edge'],
    place: placeOf(onFace(run, left, rod.top.overhang, rod.frameHeight), level(run.along), UP),
    shape: { kind: 'board', thickness, holes: [], edges, outline: outline.map(([x, y]) => [x - left, y] as const) },
  };
}

const extent = (outline: readonly Vec2[]): number =>
  Math.max(...outline.map((p) => p[0])) - Math.min(...outline.map((p) => p[0]));

/** The top must reach beyond everything in front of the frame, and over the returns. */
function cover(rod: Rod): readonly Finding[] {
  const proud = Object.values(rod.layers).filter((l) => l.name !== 'top' && l.outer > rod.top.overhang);
  const path = '/unit/elements/top/overhang';
  const worst = proud.sort((a, b) => b.outer - a.outer)[0];
  const short: Finding[] = worst
    ? [
        {
          severity: 'warn',
          rule: 'top-does-not-cover',
          subject: { path },
          value: rod.top.overhang,
          limit: worst.outer,
          message: `The top overhangs the frame by ${rod.top.overhang} mm; the ${worst.name} stands out ${worst.outer} mm.`,
          source: 'geometry of the layers',
          remedy: 'Increase the overhang.',
        },
      ]
    : [];
  const reach = rod.depth - rod.top.overhang;
  const free = reach - rod.timber.depth;
  const loose: Finding[] = free > MOST_UNSUPPORTED ? [unsupported(free)] : [];
  const bare = rod.runs.filter((r) => r.jobIndex === null && r.length > reach + SAME_LENGTH);
  return [
    ...short,
    ...loose,
    ...bare.map(
      (r): Finding => ({
        severity: 'warn',
        rule: 'return-beyond-top',
        subject: { run: r.id, path: '/unit/depth' },
        value: r.length,
        limit: reach,
        message: `The return is ${r.length} mm long; behind the frame's face the top covers ${tenth(reach)} mm.`,
        source: 'geometry of the layers',
        remedy: 'Shorten the return or deepen the unit.',
      }),
    ),
  ];
}

const squeezed = (run: RodRun, rod: Rod): Finding => ({
  severity: 'stop',
  rule: 'top-squeezed',
  subject: { run: run.id, path: '/unit/depth' },
  value: rod.depth,
  message: `The corners of run ${run.id} leave the top no full length at a depth of ${rod.depth} mm: its ends meet before its edge.`,
  source: 'geometry of the corners',
  remedy: 'Lengthen the run, or make the top less deep. It is drawn as far as it goes.',
});

const tooLong = (run: RodRun, value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: 'top-longer-than-stock',
  subject: { run: run.id, path: '/unit/elements/top/hardwood' },
  value,
  limit,
  message: `The top of run ${run.id} is ${Math.round(value)} mm long; the longest stock is ${limit} mm.`,
  source: 'stock length from the stock book',
  remedy: 'It needs a joint, or longer stock.',
});

const unsupported = (value: number): Finding => ({
  severity: 'note',
  rule: 'top-unsupported',
  subject: { path: '/unit/depth' },
  value,
  limit: MOST_UNSUPPORTED,
  message: `The top reaches ${tenth(value)} mm behind the frame, and nothing that carries it there is worked out.`,
  source: 'common practice, no source',
  remedy: 'Carry its back edge on cross frames, posts or a wall bearer.',
});
