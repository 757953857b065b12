import { level, onFace, placeOf } from '../../base/place';
import { bevelledEdge, SQUARE_EDGE } from '../../base/profiles';
import { tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { Hold, Oversize, PartDraft } from '../../vocabulary/part';
import type { RodRun, RunEnd } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import type { BoardEdge } from '../../vocabulary/shape';
import { poor, tooLow } from './findings';
import { holeOf, holeWork } from './holes';
import { type Decisions, type Laying, LEAST_HEIGHT, layRun } from './lay';

/** The skin of every run, mitred at the corners, ending at every join, cut for the openings. */
export function parts(decisions: Decisions, bench: Bench): Made {
  const drafts: PartDraft[] = [];
  const findings: Finding[] = [];
  for (const run of bench.rod.runs.filter((r) => r.sound)) {
    const laying = layRun(run, decisions, bench);
    if (laying.high - laying.low < LEAST_HEIGHT) {
      findings.push(tooLow(run, laying, LEAST_HEIGHT));
      continue;
    }
    drafts.push(...pieces(run, laying, decisions.sheet, bench));
    findings.push(...poor(run, laying));
  }
  return { drafts, findings };
}

function pieces(
  run: RodRun,
  { stretches, low, high }: Laying,
  material: string,
  { book, openings }: Pick<Bench, 'book' | 'openings'>,
): readonly PartDraft[] {
  const { thickness } = book.item('sheet', material);
  const inFront = openings.filter((o) => o.run === run.id && o.through === 'front');
  const lines = [...stretches.flatMap(({ from, cuts }) => [from, ...(cuts ?? []).map((c) => c.x)]), run.length];
  return lines.slice(1).map((end, i): PartDraft => {
    const start = lines[i];
    const left = i === 0 ? run.left : undefined;
    const right = i === lines.length - 2 ? run.right : undefined;
    const cut = inFront.filter((o) => o.from >= start && o.to <= end);
    const oversize = [...scribed(left, 'left end'), ...scribed(right, 'right end')];
    return {
      kind: 'cladding',
      code: 'CL',
      name: 'cladding',
      run: run.id,
      material,
      finish: 'paint',
      from: 'clad',
      grooves: [],
      where: `${tenth(start)} to ${tenth(end)}`,
      edges: [],
      holds: screwed(thickness),
      oversize: oversize.length > 0 ? oversize : undefined,
      work: cut.length > 0 ? cut.map((o) => holeWork(o, start)) : undefined,
      place: placeOf(onFace(run, start, 0, low), level(run.along), level(run.front)),
      shape: {
        kind: 'board',
        thickness,
        holes: cut.map((o) => holeOf(o, start, low)),
        outline: [
          [0, 0],
          [end - start, 0],
          [end - start, high - low],
          [0, high - low],
        ],
        edges: [SQUARE_EDGE, edge(right, thickness), SQUARE_EDGE, edge(left, thickness)],
      },
    };
  });
}

/** Screws along the edges and in the field of a sheet, mm: 150–200 and 300 are usual (trade practice; from memory). */
const CENTRES = { edges: 150, field: 300 };

const screwed = (thickness: number): readonly Hold[] => [
  {
    by: 'screw',
    through: thickness,
    where: { at: 'sheet', ...CENTRES },
    rule: 'sheet to stud, edges 150–200 and field 300 centres; 12 mm takes 30–35, 18 takes 40–45, 25 takes 50–60 (trade practice; from memory)',
  },
];

/** What is left on at a wall. */
const scribed = (end: RunEnd | undefined, side: string): readonly Oversize[] =>
  end && end.scribe > 0 ? [{ side, amount: end.scribe, on: 'length', reason: 'to scribe to the wall' }] : [];

/** At a corner the edge is mitred, half the deflection, so that the face meets the neighbour's. */
const edge = (end: RunEnd | undefined, thickness: number): BoardEdge =>
  end?.kind === 'corner' ? bevelledEdge(thickness, end.deflectionDeg / 2) : SQUARE_EDGE;
