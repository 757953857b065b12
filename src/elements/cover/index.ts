import { alongFace, level, onFace, placeOf, UP } from '../../base/place';
import { SQUARE_EDGE } from '../../base/profiles';
import { SAME_LENGTH } from '../../base/tolerance';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Obstacle } from '../../vocabulary/opening';
import type { PartDraft } from '../../vocabulary/part';
import type { Rod, RodRun, RunJoin } from '../../vocabulary/rod';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { fields } from './fields';
import { noHeight, tooLong, underStrip } from './findings';
import { outlineOf, type Strip, stepsInWords, stripOf } from './strip';

/** Strips over the joins that no pillar covers, fitted on site when the sections stand together. */
export const cover: Room<typeof fields> = {
  kind: 'cover',
  label: 'Cover strips',
  group: 'front',
  fields,
  demands: () => ({}),
  obstacles: (_, { rod }) =>
    covers(rod)
      .filter(({ strip }) => isMade(strip))
      .map(
        ({ run, join, strip: { from, to, low, high } }): Obstacle => ({
          run: run.id,
          through: 'front',
          from,
          to,
          low,
          high,
          what: `strip over join ${join.id}`,
        }),
      ),
  /** It lies on the end studs of both sections. */
  backing: () => [],
  parts,
  marks: (run, made) =>
    made.map((part) => ({
      id: `${part.mark}-middle`,
      x: alongFace(run, part.place.origin) - part.size.width / 2,
      lane: 'front' as const,
      reason: 'cover strip, middle',
      part: part.mark,
    })),
};

/** Shorter than this it covers nothing, mm (common practice, no source). */
const LEAST_STRIP = 20;

interface Covered {
  readonly run: RodRun;
  readonly join: RunJoin;
  readonly strip: Strip;
}

/** The joins that no pillar covers, each with its strip. */
const covers = (rod: Rod): readonly Covered[] =>
  rod.runs.flatMap((run) =>
    run.joins.filter((j) => j.behind === 'cover').map((join) => ({ run, join, strip: stripOf(rod, run, join) })),
  );

const isMade = ({ low, high }: Strip): boolean => high - low >= LEAST_STRIP;

function parts({ sheet }: DecisionsOf<typeof fields>, { rod, book }: Bench): Made {
  const { thickness, length } = book.item('sheet', sheet);
  const findings: Finding[] = [];
  const drafts: PartDraft[] = [];
  for (const covered of covers(rod)) {
    const { run, join, strip } = covered;
    findings.push(underStrip(run, join, thickness));
    const long = strip.high - strip.low;
    if (!isMade(strip)) {
      findings.push(noHeight(run.id, join, strip.low, strip.high));
      continue;
    }
    if (long > length + SAME_LENGTH) findings.push(tooLong(run.id, join, long, length));
    drafts.push(draft(rod, covered, sheet, thickness));
  }
  return { drafts, findings };
}

/** It stands: length up, width to the left as seen from the front. */
function draft(rod: Rod, { run, join, strip }: Covered, material: string, thickness: number): PartDraft {
  const outline = outlineOf(strip).map(([x, z]) => [z, strip.to - strip.from - x] as const);
  const work = stepsInWords(strip);
  return {
    kind: 'cover',
    code: 'CV',
    name: 'cover strip',
    run: run.id,
    material,
    finish: 'paint',
    from: 'finished',
    edges: [],
    edgeNames: ['right edge', 'left edge'],
    grooves: [],
    where: `over join ${join.id}`,
    fit: 'site',
    holds: [
      {
        by: 'brad',
        through: thickness,
        where: { at: 'length', centres: 250 },
        rule: 'small mouldings at 200–300 (trade, from memory); into one section only, and no glue, so that it comes off again',
      },
    ],
    ...(work.length > 0 ? { work } : {}),
    place: placeOf(onFace(run, strip.to, rod.layers.cladding.outer, strip.low), UP, level(run.front)),
    shape: { kind: 'board', outline, holes: [], thickness, edges: outline.map(() => SQUARE_EDGE) },
  };
}
