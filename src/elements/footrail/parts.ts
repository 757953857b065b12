import { alongBay } from '../../base/along-bay';
import { lying } from '../../base/stuff';
import { tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { Oversize, PartDraft } from '../../vocabulary/part';
import type { Bench, Made } from '../../vocabulary/room';
import { bracket, bracketShape } from './bracket-part';
import { spansOf } from './brackets';
import { farApart, strength, tooFar, unusual } from './findings';
import { type Decisions, layOut, type Profile, type RunRail } from './layout';
import { joinsOver } from './rails';

/** Usual heights, and distances in front of the face (trade, from memory). */
const USUAL = { height: [150, 230], out: [100, 150] } as const;

/** Brackets further apart than this are unusual, mm (common practice, no source). */
const FAR_APART = 1000;

/** A screw from below goes through so much of a bracket, its head let in, mm (common practice, no source). */
const LET_IN = 25;

/** Brackets, then the rails on them, run by run. */
export function parts(decisions: Decisions, bench: Bench): Made {
  if (!decisions.wanted) return { drafts: [], findings: [] };
  const { rod, book } = bench;
  const { profile, rails, findings } = layOut(decisions, bench);
  const { section, lengths } = book.item('moulding', decisions.moulding);
  const longest = Math.max(...lengths.map((l) => l.length));
  const shape = bracketShape(profile);
  const drafts = rails.flatMap((one) => [
    ...one.brackets.map(
      (x): PartDraft => bracket(rod, one.run, x, profile, shape, book.item('timber', decisions.timber)),
    ),
    ...lengthsOf(one, profile, longest, rod.timber.datum).map((length) => ({
      kind: 'footrail',
      code: 'FR',
      name: 'foot rail',
      run: one.run.id,
      material: decisions.moulding,
      finish: 'oil' as const,
      from: 'finished' as const,
      edges: [],
      grooves: [],
      fit: 'site' as const,
      ...length.said,
      ...lying(one.run, section, { ...length.piece, d: profile.back, z: profile.seat }),
    })),
  ]);
  return { drafts, findings: [...findings, ...saidOf(decisions, profile, rails)] };
}

function saidOf({ spacing, height, out }: Decisions, profile: Profile, rails: readonly RunRail[]): readonly Finding[] {
  if (rails.length === 0) return [];
  const spans = rails.map(({ run, rail, brackets }) => ({
    run: run.id,
    widest: Math.max(...spansOf(rail, profile, brackets)),
  }));
  const widest = Math.max(...spans.map((s) => s.widest));
  const off = (value: number, [least, most]: readonly [number, number]): boolean => value < least || value > most;
  return [
    ...spans.flatMap((s) => (s.widest > spacing + SAME_LENGTH ? [tooFar(s.run, s.widest, spacing)] : [])),
    ...(widest > FAR_APART + SAME_LENGTH ? [farApart(widest)] : []),
    ...(off(height, USUAL.height) ? [unusual('height', 'above the floor', height, USUAL.height)] : []),
    ...(off(out, USUAL.out) ? [unusual('out', 'in front of the front', out, USUAL.out)] : []),
    strength(rails.reduce((sum, r) => sum + r.brackets.length, 0)),
  ];
}

/** The lengths of one run's rail: one, or several that meet over brackets. */
function lengthsOf(
  { run, rail, brackets }: RunRail,
  { back, front, seat, low }: Profile,
  longest: number,
  datum: 'left' | 'right',
) {
  const thickness = front - back;
  // What is left on for a wall must come out of the same stock.
  const first = rail.from + Math.min(0, rail.fromPerOut * thickness) - run.left.scribe;
  const last = rail.to + Math.max(0, rail.toPerOut * thickness) + run.right.scribe;
  const joins = joinsOver({ from: first, to: last }, brackets, longest, datum);
  const lines = [rail.from, ...joins, rail.to];
  return lines.slice(1).map((to, i) => {
    const from = lines[i];
    const [isFirst, isLast] = [i === 0, i === joins.length];
    const ends = {
      from,
      to,
      mitredLeft: isFirst && run.left.kind === 'corner',
      mitredRight: isLast && run.right.kind === 'corner',
    };
    const oversize = [
      ...(isFirst && run.left.scribe > 0 ? [scribed('left', run.left.scribe)] : []),
      ...(isLast && run.right.scribe > 0 ? [scribed('right', run.right.scribe)] : []),
    ];
    const under = brackets.filter((x) => x >= from - SAME_LENGTH && x <= to + SAME_LENGTH).length;
    return {
      piece: alongBay(run, ends, { inner: back, outer: front }),
      said: {
        where: `${tenth(from)} to ${tenth(to)}`,
        holds: [
          {
            by: 'screw' as const,
            through: Math.min(LET_IN, seat - low),
            where: { at: 'all' as const, each: Math.max(1, under) },
            into: 'itself' as const,
            rule: `one screw up through each bracket, let in until ${LET_IN} mm are left to go through (common practice, no source)`,
          },
        ],
        ...(oversize.length > 0 ? { oversize } : {}),
      },
    };
  });
}

const scribed = (side: 'left' | 'right', amount: number): Oversize => ({
  side: `${side} end`,
  amount,
  on: 'length',
  reason: 'scribed to the wall',
});
