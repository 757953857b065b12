import { alongFace } from '../../base/place';
import type { Finding } from '../../vocabulary/finding';
import type { PartDraft } from '../../vocabulary/part';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { edgeBy, mitredInside, unfit } from './edges';
import { fields } from './fields';
import { cover } from './findings';
import type { Decisions } from './length';
import { LEAST_BUTTED_DEG } from './outline';
import { topOfRun } from './run';

/** The hardwood top, overhanging the front, in lengths over each run, covering the returns. */
export const top: Room<typeof fields> = {
  kind: 'top',
  label: 'Top',
  group: 'top',
  layer: 'top',
  fields,
  demands({ hardwood, overhang, endOverhang, edge, corner }, book) {
    const { thickness } = book.item('hardwood', hardwood);
    const cutter = edge ? book.cutter(edge) : undefined;
    const moulded = cutter && edgeBy(cutter, thickness).edge ? { edge } : {};
    return {
      layer: { name: 'top', outer: overhang },
      top: {
        ...{ layer: 'top', thickness, overhang, endOverhang, stock: hardwood },
        butted: corner === 'butted',
        ...(corner === 'butted' ? { leastButtedDeg: LEAST_BUTTED_DEG } : {}),
        ...moulded,
      },
    };
  },
  backing: () => [],
  parts,
  /** Its joints: the lengths of a run are made from left to right. */
  marks: (run, made) =>
    made.slice(1).map((part) => ({
      id: `${part.mark}-joint`,
      x: alongFace(run, part.place.origin),
      lane: 'behind',
      reason: 'top joint',
      part: part.mark,
    })),
};

function parts(decisions: Decisions, bench: Bench): Made {
  const { rod, book } = bench;
  const drafts: PartDraft[] = [];
  const findings: Finding[] = [...cover(rod)];
  const cutter = decisions.edge ? book.cutter(decisions.edge) : undefined;
  const made = cutter && edgeBy(cutter, rod.top.thickness);
  if (cutter && made?.fault !== undefined) findings.push(unfit(cutter, made.fault, rod.top.thickness));
  const moulded = cutter && made?.edge ? { cutter, edge: made.edge } : undefined;
  for (const run of rod.runs.filter((r) => r.jobIndex !== null && r.sound)) {
    const { right } = run;
    if (moulded && decisions.corner === 'butted' && right.kind === 'corner' && right.deflectionDeg < 0)
      findings.push(mitredInside(run.id));
    const one = topOfRun(decisions, bench, run, moulded);
    drafts.push(...one.drafts);
    findings.push(...one.findings);
  }
  return { drafts, findings };
}
