import { boundsOf } from '../../base/outline';
import { alongFace, pastCorners } from '../../base/place';
import { mitredFrame } from '../../base/stuff';
import { tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Part, PartDraft } from '../../vocabulary/part';
import type { Bay, Mark, Rod, RodRun } from '../../vocabulary/rod';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { fields } from './fields';

type Decisions = DecisionsOf<typeof fields>;
interface Opening {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

/** Inside a frame this much must be left, or it reads as a lump (common practice, no source). */
const LEAST_FIELD = 10;

/** Frames of moulding in the bays, at an equal margin, mitred and cut to the long point. */
export const panel: Room<typeof fields> = {
  kind: 'panel',
  label: 'Panel frames',
  group: 'front',
  layer: 'panel',
  fields,
  demands: ({ moulding }, book) => ({
    layer: { name: 'panel', on: 'cladding', thickness: boundsOf(book.item('moulding', moulding).section).max[1] },
  }),
  /** A noggin behind the middle of each level member. */
  backing(decisions, { rod, book }) {
    const half = boundsOf(book.item('moulding', decisions.moulding).section).max[0] / 2;
    return rod.runs.flatMap((run) =>
      run.bays.flatMap((bay) =>
        framesOf(decisions, rod, bay)
          .filter((f) => hasField(f, 2 * half))
          .flatMap(({ from, to, low, high }): Backing[] =>
            [low + half, high - half].map((z) => ({ kind: 'noggin', run: run.id, z, from, to, reason: 'panel frame' })),
          ),
      ),
    );
  },
  parts,
  marks: (run, made) => outsides(run, made),
};

/** Outside left and right of each frame, from the members that run level to the right, the lowest row speaking for all. */
function outsides(run: RodRun, made: readonly Part[]): readonly Mark[] {
  const level = made.filter((p) => p.place.along[0] * run.along[0] + p.place.along[1] * run.along[1] > 0.5);
  const lowest = new Map([...level].reverse().map((p) => [alongFace(run, p.place.origin).toFixed(3), p]));
  return [...lowest.values()].flatMap((p): Mark[] => {
    const x = alongFace(run, p.place.origin);
    const mark = { lane: 'front' as const, part: p.mark };
    return [
      { ...mark, id: `${p.mark}-left`, x, reason: 'panel frame, outside left' },
      { ...mark, id: `${p.mark}-right`, x: x + p.size.length, reason: 'panel frame, outside right' },
    ];
  });
}

/** Outside sizes of the frames of one bay, lowest row first. */
function framesOf({ margin, rows, rowGap }: Decisions, rod: Rod, bay: Bay): readonly Opening[] {
  const low = (rod.heights.skirting ?? 0) + margin;
  const high = rod.frameHeight - margin;
  const each = (high - low - (rows - 1) * rowGap) / rows;
  return Array.from({ length: rows }, (_, r) => ({
    from: bay.from + margin,
    to: bay.to - margin,
    low: low + r * (each + rowGap),
    high: low + r * (each + rowGap) + each,
  }));
}

const hasField = ({ from, to, low, high }: Opening, twoWidths: number): boolean =>
  Math.min(to - from, high - low) - twoWidths >= LEAST_FIELD;

const SIDES = ['bottom', 'right', 'top', 'left'] as const;

function parts(decisions: Decisions, { rod, book }: Bench): Made {
  const { section } = book.item('moulding', decisions.moulding);
  const width = boundsOf(section).max[0];
  const drafts: PartDraft[] = [];
  const findings: Finding[] = [];
  for (const run of rod.runs)
    for (const bay of run.bays)
      framesOf(decisions, rod, bay).forEach((frame, row) => {
        const where = `bay ${bay.index + 1}${decisions.rows > 1 ? `, row ${row + 1}` : ''}`;
        if (!hasField(frame, 2 * width)) {
          findings.push(noRoom(run.id, where, bay.to - bay.from, decisions.margin, frame, width));
          return;
        }
        const past = pastCorners(run, { ...frame, ...rod.layers.panel });
        if (past > SAME_LENGTH) {
          findings.push(pastMitre(run.id, where, past));
          return;
        }
        const pieces = mitredFrame(run, section, { ...frame, d: rod.layers.panel.inner });
        pieces.forEach((piece, i) => {
          drafts.push({
            kind: 'panel',
            code: 'PM',
            name: 'panel moulding',
            run: run.id,
            material: decisions.moulding,
            finish: 'paint',
            from: 'finished',
            edges: [],
            grooves: [],
            where: `${where}, ${SIDES[i]}`,
            edgeNames: ['outer edge', 'inner edge'],
            ...piece,
          });
        });
      });
  return { drafts, findings };
}

function noRoom(
  run: string,
  where: string,
  bay: number,
  margin: number,
  { from, to, low, high }: Opening,
  width: number,
): Finding {
  const short = Math.min(to - from, high - low);
  const need = 2 * width + LEAST_FIELD;
  const left =
    to - from < high - low
      ? `the bay is ${tenth(bay)} mm wide, and margins of ${margin} mm leave ${short > 0 ? `${tenth(short)} mm` : 'nothing'}`
      : short > 0
        ? `margins of ${margin} mm leave ${tenth(short)} mm of height`
        : `margins of ${margin} mm leave no height`;
  return {
    severity: 'stop',
    rule: 'panel-no-room',
    subject: { run, path: '/unit/elements/panel/margin' },
    value: short,
    limit: need,
    message: `No room for a panel frame in ${where} of run ${run}: ${left}; two mouldings of ${width} mm need ${need} mm.`,
    source: 'geometry of the setting-out',
    remedy: 'Less margin, a narrower moulding, fewer rows or wider bays. This frame is left out.',
  };
}

/** Where a corner is sharp and its boards narrow, a frame close to them would run into the neighbour's. */
const pastMitre = (run: string, where: string, value: number): Finding => ({
  severity: 'stop',
  rule: 'panel-past-mitre',
  subject: { run, path: '/unit/elements/panel/margin' },
  value,
  limit: 0,
  message: `The panel frame in ${where} of run ${run} would run ${tenth(value)} mm past the mitre of the corner.`,
  source: 'geometry of the corner',
  remedy: 'More margin, wider corner boards, or a corner that turns less. This frame is left out.',
});
