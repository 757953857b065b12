import { level, onFace, placeOf } from '../../base/place';
import { bevelledEdge, SQUARE_EDGE } from '../../base/profiles';
import { tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { PartDraft } from '../../vocabulary/part';
import type { RodRun, RunEnd } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import type { BoardEdge } from '../../vocabulary/shape';
import { type Decisions, type Laying, layRun } from './lay';

/** The skin of every run, mitred at the corners. */
export function parts(decisions: Decisions, bench: Bench): Made {
  const drafts: PartDraft[] = [];
  const findings: Finding[] = [];
  for (const run of bench.rod.runs.filter((r) => r.sound)) {
    const laying = layRun(run, decisions, bench);
    drafts.push(...pieces(run, laying, decisions.sheet, bench.book.item('sheet', decisions.sheet).thickness));
    findings.push(...poor(run, laying));
  }
  return { drafts, findings };
}

function pieces(
  run: RodRun,
  { from, to, low, high, cuts }: Laying,
  material: string,
  thickness: number,
): readonly PartDraft[] {
  const lines = [from, ...(cuts ?? []).map((c) => c.x), to];
  return lines.slice(1).map((end, i) => {
    const start = lines[i];
    const left = i === 0 ? edge(run.left, thickness) : SQUARE_EDGE;
    const right = i === lines.length - 2 ? edge(run.right, thickness) : SQUARE_EDGE;
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
      place: placeOf(onFace(run, start, 0, low), level(run.along), level(run.front)),
      shape: {
        kind: 'board',
        thickness,
        holes: [],
        outline: [
          [0, 0],
          [end - start, 0],
          [end - start, high - low],
          [0, high - low],
        ],
        edges: [SQUARE_EDGE, right, SQUARE_EDGE, left],
      },
    };
  });
}

/** At a corner the edge is mitred, half the deflection, so that the face meets the neighbour's. */
const edge = ({ kind, deflectionDeg }: RunEnd, thickness: number): BoardEdge =>
  kind === 'corner' ? bevelledEdge(thickness, deflectionDeg / 2) : SQUARE_EDGE;

function poor(run: RodRun, { longest, low, high, tallest, cuts }: Laying): readonly Finding[] {
  const findings: Finding[] = [];
  const subject = { run: run.id, path: '/unit/elements/cladding/sheet' };
  const source = 'sheet size from the stock book';
  if (!cuts)
    findings.push({
      severity: 'stop',
      rule: 'cladding-not-divisible',
      subject,
      value: run.length,
      limit: longest,
      source,
      message: `The cladding of run ${run.id} is ${Math.round(run.length)} mm long and can't be divided on studs into pieces of ${longest} mm or less.`,
      remedy: 'Choose a longer sheet, or closer studs. It is drawn in one piece.',
    });
  if (high - low > tallest)
    findings.push({
      severity: 'stop',
      rule: 'cladding-too-high',
      subject,
      value: high - low,
      limit: tallest,
      source,
      message: `The cladding of run ${run.id} is ${Math.round(high - low)} mm high; the trimmed sheet gives ${tallest} mm.`,
      remedy: 'Choose a longer sheet.',
    });
  for (const cut of (cuts ?? []).filter((c) => !c.behindPillar))
    findings.push({
      severity: 'warn',
      rule: 'joint-in-field',
      subject,
      value: cut.x,
      source: 'common practice, no source',
      message: `A cladding joint falls in a painted field of run ${run.id}, at ${tenth(cut.x)} mm: no pillar is in reach of the sheet.`,
      remedy: 'Choose a longer sheet, or a closer pitch of pillars; else fill, tape and sand the joint.',
    });
  return findings;
}
