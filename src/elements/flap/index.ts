import { alongFace } from '../../base/place';
import type { Finding } from '../../vocabulary/finding';
import type { Obstacle } from '../../vocabulary/opening';
import type { PartDraft } from '../../vocabulary/part';
import type { Mark } from '../../vocabulary/rod';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { faultOf } from './fault';
import { fields } from './fields';
import { flapFindings, passage } from './findings';
import { standIn } from './floor';
import { type Decisions, type Gap, gapsOf } from './gap';
import { gateOf } from './gate';
import { gateFindings, LEAST_GATE, noGate } from './gate-findings';
import { bearerOf, flapOf, jambOf } from './parts';

/** A part of the top that lifts, on bearers between two runs, and a gate below it. Fitted on site. */
export const flap: Room<typeof fields> = {
  kind: 'flap',
  label: 'Flap and gate',
  group: 'top',
  fields,
  demands: () => ({}),
  obstacles: (_, { rod }) =>
    rod.flaps.flatMap(({ left, right, width }): Obstacle[] => {
      const long = rod.runs.find((r) => r.id === left)?.length ?? 0;
      const lies = { through: 'top', low: 0, high: rod.depth, what: 'the flap' } as const;
      return [
        { ...lies, run: left, from: long, to: long + width },
        { ...lies, run: right, from: -width, to: 0 },
      ];
    }),
  backing: () => [],
  parts,
  /** Where the flap begins, on the rod of the run that it is hinged to. */
  marks: (run, made) =>
    made
      .filter((part) => part.code === 'LF')
      .map((part): Mark => {
        const x = alongFace(run, part.place.origin);
        // Its near end: to the right of the run it begins at its left end, to the left of it at its right end.
        const near = x > 0 ? x : x + part.size.length;
        return { id: `${part.mark}-hinges`, x: near, lane: 'behind', reason: 'flap, hinge side', part: part.mark };
      }),
};

function parts(decisions: Decisions, bench: Bench): Made {
  const drafts: PartDraft[] = [];
  const findings: Finding[] = [];
  for (const gap of gapsOf(decisions, bench)) {
    const made = ofGap(decisions, bench, gap);
    drafts.push(...made.drafts);
    findings.push(...made.findings);
  }
  return { drafts, findings };
}

function ofGap(decisions: Decisions, { rod, book }: Bench, gap: Gap): Made {
  const { overhang, thickness, stock } = rod.top;
  if (stock === undefined) return { drafts: [], findings: [] };
  const except = [gap.left.id, gap.right.id];
  const { from, to, gate } = gap;
  const under = { from, to, back: overhang - rod.depth, face: overhang };
  const fault = faultOf(gap, rod, standIn(rod, gap.left, under, { except, back: under.back, tops: true }));
  if (fault) return { drafts: [], findings: [fault] };
  const hardwood = book.item('hardwood', stock);
  const kg = (to - from - 2 * gap.clear) * rod.depth * thickness * 1e-9 * hardwood.densityKgM3;
  const drafts = [
    jambOf(gap, decisions, 'left'),
    jambOf(gap, decisions, 'right'),
    bearerOf(gap, stock, 'left'),
    bearerOf(gap, stock, 'right'),
    flapOf(gap, rod, book, stock),
  ];
  const findings = [...flapFindings(gap, rod, kg, hardwood.maxLength), ...passage(gap, decisions)];
  if (!gap.flap.gate) return { drafts, findings };
  const least = Math.min(gate.high - gate.low, gate.high - Math.max(gap.low, gate.notchHigh));
  if (least < LEAST_GATE) return { drafts, findings: [...findings, noGate(gap, least)] };
  const sheet = book.item('sheet', decisions.gateSheet);
  const swept = { from: gate.from, to: gate.to, back: gate.face - (gate.to - gate.from), face: gate.face };
  return {
    drafts: [...drafts, ...gateOf(gap, decisions, sheet.densityKgM3)],
    findings: [
      ...findings,
      ...gateFindings(gap, standIn(rod, gap.left, swept, { except, back: gap.back, tops: false }), sheet),
    ],
  };
}
