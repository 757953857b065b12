import { level, onFace, placeOf, UP } from '../../base/place';
import { SQUARE_EDGE } from '../../base/profiles';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Carcass, CarcassWorktop } from '../../vocabulary/carcass';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Oversize, PartDraft } from '../../vocabulary/part';
import type { RodRun } from '../../vocabulary/rod';
import type { Bench, Book, Made, Room } from '../../vocabulary/room';
import { fields } from './fields';
import { leftOpen, tooBig } from './findings';
import { type Length, lengthsOf, worktopOutline } from './outline';

type Decisions = DecisionsOf<typeof fields>;

/** The worktop of a counter on two levels, on rails of the carcass. */
export const worktop: Room<typeof fields> = {
  kind: 'worktop',
  label: 'Worktop',
  group: 'behind',
  fields,
  demands(decisions, book) {
    const { height, depth, behind } = decisions;
    if (height === 0) return {};
    const { id, thickness } = stuffOf(decisions, book);
    return { worktop: { stock: id, high: height, thickness, depth, behind } };
  },
  backing: () => [],
  parts,
  marks: () => [],
};

/** What it is made of, and the longest and widest piece of that. */
function stuffOf(
  { of, hardwood, sheet }: Decisions,
  book: Book,
): { readonly id: string; readonly thickness: number; readonly long: number; readonly wide: number } {
  if (of === 'hardwood') {
    const { thickness, maxLength } = book.item('hardwood', hardwood);
    return { id: hardwood, thickness, long: maxLength, wide: Infinity };
  }
  const { thickness, length, width } = book.item('sheet', sheet);
  return { id: sheet, thickness, long: length, wide: width };
}

function parts(decisions: Decisions, { rod, book }: Bench): Made {
  const { carcass } = rod;
  if (!carcass?.worktop || carcass.worktop.leftOut) return { drafts: [], findings: [] };
  const laid = carcass.worktop;
  const stuff = stuffOf(decisions, book);
  const drafts: PartDraft[] = [];
  const findings: Finding[] = [];
  for (const run of rod.runs) {
    lengthsOf(rod, run).forEach((length, i, all) => {
      const where = all.length > 1 ? `length ${i + 1}` : '';
      const made = draft(run, length, carcass, laid, { where, oiled: decisions.of === 'hardwood' });
      drafts.push(made.draft);
      const long = made.long + made.leftOn;
      if (long > stuff.long + SAME_LENGTH) findings.push(tooBig(run, 'long', long, stuff.long, made.leftOn));
      if (made.deep > stuff.wide + SAME_LENGTH) findings.push(tooBig(run, 'deep', made.deep, stuff.wide));
    });
  }
  return { drafts, findings: [...findings, ...leftOpen(rod, carcass)] };
}

function draft(
  run: RodRun,
  length: Length,
  carcass: Carcass,
  { stock, high, thickness, edge }: CarcassWorktop,
  said: { readonly where: string; readonly oiled: boolean },
): { readonly draft: PartDraft; readonly long: number; readonly leftOn: number; readonly deep: number } {
  const outline = worktopOutline(length, carcass, { stock, high, thickness, edge });
  const left = Math.min(...outline.map(([x]) => x));
  const { left: from, right: to } = length;
  const meets = from.mitred && to.mitred ? 'both' : from.mitred ? 'left' : to.mitred ? 'right' : undefined;
  const oversize: readonly Oversize[] = [
    ...(from.wall && run.left.scribe > 0 ? [scribed('left end', run.left.scribe)] : []),
    ...(to.wall && run.right.scribe > 0 ? [scribed('right end', run.right.scribe)] : []),
  ];
  return {
    long: Math.max(...outline.map(([x]) => x)) - left,
    leftOn: oversize.reduce((sum, { amount }) => sum + amount, 0),
    deep: carcass.front - edge,
    draft: {
      kind: 'worktop',
      code: 'WT',
      name: 'worktop',
      run: run.id,
      material: stock,
      finish: said.oiled ? 'oil' : 'paint',
      from: 'clad',
      where: said.where,
      grooves: [],
      edges: [],
      edgeNames: ['front edge', 'rear edge'],
      ...(meets ? { meets } : {}),
      ...(oversize.length > 0 ? { oversize } : {}),
      holds: [
        {
          by: 'screw',
          through: LEFT_OF_RAIL,
          where: { at: 'all', each: 2 * length.lines.length },
          into: 'itself',
          rule: 'from below, 2 through each cross rail, bored to leave 25 mm of it; in slots where it is hardwood, so that it can move (common practice, no source)',
        },
      ],
      place: placeOf(onFace(run, left, carcass.front, high - thickness), level(run.along), UP),
      shape: {
        kind: 'board',
        thickness,
        holes: [],
        edges: outline.map(() => SQUARE_EDGE),
        outline: outline.map(([x, y]) => [x - left, y] as const),
      },
    },
  };
}

/** A rail is counterbored from below until this much of it is left under the worktop, mm (common practice, no source). */
const LEFT_OF_RAIL = 25;

const scribed = (side: string, amount: number): Oversize => ({
  side,
  amount,
  on: 'length',
  reason: 'to be scribed to the wall',
});
