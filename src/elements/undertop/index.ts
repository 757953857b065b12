import { alongBay } from '../../base/along-bay';
import { footOf, intoBays, reachBetween } from '../../base/foot';
import { boundsOf } from '../../base/outline';
import { lying } from '../../base/stuff';
import { CLEAR_OF_HOLE, SAME_LENGTH } from '../../base/tolerance';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Obstacle } from '../../vocabulary/opening';
import type { PartDraft } from '../../vocabulary/part';
import type { Bay, Rod, RodRun } from '../../vocabulary/rod';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { fields } from './fields';
import { beyondTop, noHeight, noLength, pastMitre, proud } from './findings';

type Decisions = DecisionsOf<typeof fields>;

/** Less than this can't be held at the saw, mm (common practice, no source). */
const LEAST_PIECE = 10;

/** A stock moulding tight under the top, on the cladding between the pillars. */
export const undertop: Room<typeof fields> = {
  kind: 'undertop',
  label: 'Moulding under the top',
  group: 'front',
  fields,
  demands: ({ moulding }, book) =>
    moulding ? { heights: { underTop: boundsOf(book.item('moulding', moulding).section).max[0] } } : {},
  obstacles,
  /** It is fixed to the top plate. */
  backing: () => [],
  parts,
  /** Its ends are the pillars' edges, marked already. */
  marks: () => [],
};

/** It is in the way of an opening through the front, and, where the top overhangs the frame, of one through the top. */
function obstacles({ moulding }: Decisions, { rod, book }: Pick<Bench, 'rod' | 'book'>): readonly Obstacle[] {
  if (!moulding || !fits(rod)) return [];
  const inner = rod.layers.cladding.outer;
  const outer = inner + boundsOf(book.item('moulding', moulding).section).max[1];
  const { overhang } = rod.top;
  return rod.runs.flatMap((run) =>
    run.bays.flatMap(({ index, from, to }): readonly Obstacle[] => {
      const at = { run: run.id, from, to, what: `moulding under the top in bay ${index + 1}` };
      return [
        { ...at, through: 'front', low: rod.frameHeight - rod.heights.underTop, high: rod.frameHeight },
        { ...at, through: 'top', low: overhang - outer, high: overhang - inner, clear: CLEAR_OF_HOLE },
      ];
    }),
  );
}

const fits = (rod: Rod): boolean => rod.frameHeight - rod.heights.underTop >= footOf(rod) - SAME_LENGTH;

function parts({ moulding }: Decisions, { rod, book }: Bench): Made {
  if (!moulding) return { drafts: [], findings: [] };
  const { section } = book.item('moulding', moulding);
  const height = rod.heights.underTop;
  if (!fits(rod)) return { drafts: [], findings: [noHeight(footOf(rod), height, rod.frameHeight)] };
  const inner = rod.layers.cladding.outer;
  const thickness = boundsOf(section).max[1];
  const layer = { inner, outer: inner + thickness };
  const reach = reachBetween(intoBays(rod), rod.frameHeight - height, rod.frameHeight);
  const findings: Finding[] = [];
  const drafts = rod.runs.flatMap((run) =>
    run.bays.flatMap((bay) =>
      lengthsOf(run, bay, reach).flatMap((ends): PartDraft[] => {
        const piece = alongBay(run, ends, layer);
        if (piece.past > SAME_LENGTH) findings.push(pastMitre(run.id, bay.index + 1, piece.past));
        else if (piece.shortest < LEAST_PIECE)
          findings.push(noLength(run.id, bay.index + 1, piece.shortest, LEAST_PIECE));
        else
          return [
            {
              kind: 'undertop',
              code: 'UM',
              name: 'moulding under the top',
              run: run.id,
              material: moulding,
              finish: 'paint',
              from: 'finished',
              edges: [],
              grooves: [],
              where: `bay ${bay.index + 1}`,
              holds: [
                {
                  by: 'brad',
                  through: thickness,
                  where: { at: 'length', centres: 250 },
                  glue: 'grab',
                  rule: 'small mouldings at 200–300, pins and adhesive (trade, from memory)',
                },
              ],
              ...(piece.meets ? { meets: piece.meets } : {}),
              ...lying(run, section, { ...piece, d: inner, z: rod.frameHeight - height }),
            },
          ];
        return [];
      }),
    ),
  );
  if (drafts.length > 0) findings.push(...standingOut(rod, thickness));
  return { drafts, findings };
}

/** It must hide under the top, and end on the pillars' edges. */
function standingOut({ layers, top }: Rod, thickness: number): readonly Finding[] {
  const { outer } = layers.cladding;
  const pillars = layers.pillar ? layers.pillar.outer - layers.pillar.inner : thickness;
  return [
    ...(outer + thickness > top.overhang + SAME_LENGTH ? [beyondTop(outer + thickness, top.overhang)] : []),
    ...(thickness > pillars + SAME_LENGTH ? [proud(thickness, pillars)] : []),
  ];
}

/** The lengths of one bay, `reach` clear of its pillars' caps: cut on a join under a strip, unless that would leave a scrap; then it crosses it and is fitted on site. */
function lengthsOf(run: RodRun, bay: Bay, reach: number) {
  const { mitredLeft, mitredRight } = bay;
  const [from, to] = [bay.from + reach, bay.to - reach];
  const cuts = run.joins.map((j) => j.x).filter((x) => Math.min(x - from, to - x) >= 2 * LEAST_PIECE - SAME_LENGTH);
  const lines = [from, ...cuts, to];
  return lines.slice(1).map((end, i) => ({
    from: lines[i],
    to: end,
    mitredLeft: i === 0 && mitredLeft,
    mitredRight: i === cuts.length && mitredRight,
  }));
}
