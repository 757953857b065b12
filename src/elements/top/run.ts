import { clip } from '../../base/polygon';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { Vec2 } from '../../vocabulary/geometry';
import type { PartDraft } from '../../vocabulary/part';
import type { Rod, RodRun, RunEnd } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import { crowdedJoints, squeezed } from './findings';
import { type Fittings, fittingsOf, hardwareOf, workOf } from './fittings';
import { holesIn } from './holes';
import { type Block, type Jointed, jointed, type Reach, reachOf } from './joints';
import { type Decisions, lengthOf, type Moulded, oversizeOf, sideOf } from './length';
import { isButted, meetsAt, topOutline } from './outline';

/** The top over one run, in its lengths. */
export function topOfRun(decisions: Decisions, bench: Bench, run: RodRun, moulded: Moulded): Made {
  const { rod, book } = bench;
  const joint = { corner: decisions.corner, mitredInside: moulded !== undefined };
  const outline = tidy(topOutline(rod, run, joint));
  const front = outline.filter((p) => Math.abs(p[1]) < SAME_LENGTH);
  const findings: Finding[] = outline.length !== 4 || front.length !== 2 ? [squeezed(run, rod)] : [];
  if (outline.length < 3) return { drafts: [], findings };

  const openings = bench.openings.filter((o) => o.through === 'top' && o.run === run.id);
  const reach = reachOf(outline);
  const blocks: readonly Block[] = [
    ...run.joins.map((j) => ({ from: j.x, to: j.x, what: `join ${j.id}` })),
    ...openings.map((o) => ({ from: o.from, to: o.to, what: `the opening “${o.name || o.use}”` })),
  ];
  const longest = Math.min(decisions.longest, book.item('hardwood', decisions.hardwood).maxLength);
  const joints = fromDatum(rod, run, reach, blocks, decisions.jointClear, longest);
  findings.push(...crowdedJoints(run, joints, { reach, blocks, asked: decisions.jointClear, longest }));

  const lines = [-Infinity, ...joints.at, Infinity];
  const lengths = lines
    .slice(1)
    .map((to, i) => tidy(cutAt(cutAt(outline, lines[i], -1), to, 1)))
    .filter((piece) => piece.length > 2);
  const { holes, findings: refused } = holesIn(openings, lengths);
  findings.push(...refused);

  const neighbour = (id: string | undefined): RodRun | undefined => rod.runs.find((r) => r.id === id);
  const meets = {
    left: meetsAt(run.left, neighbour(run.left.neighbour)),
    right: meetsAt(run.right, neighbour(run.right.neighbour)),
  };
  const fittings = (width: number): Fittings => fittingsOf(width, decisions.jointSpacing, decisions.boltSpacing);
  const drafts = lengths.map((piece, i): PartDraft => {
    const ends = { left: i === 0, right: i === lengths.length - 1 };
    const atLeft = !ends.left || meets.left ? fittings(sideOf(piece, 'left')) : undefined;
    const atRight = !ends.right || meets.right ? fittings(sideOf(piece, 'right')) : undefined;
    const made = lengthOf(rod, run, piece, decisions, holes[i], moulded, ends);
    if (made.fault) findings.push(made.fault);
    const atCorner = { left: ends.left && meets.left, right: ends.right && meets.right };
    const jointWork = (end: RunEnd, side: 'left' | 'right', fitted: Fittings | undefined): readonly string[] =>
      fitted ? [workOf(placeOfJoint(end, side, ends[side] && isButted(end, joint)), fitted, decisions.joint)] : [];
    const { draft } = made;
    return {
      ...draft,
      where: lengths.length > 1 ? `length ${i + 1} of ${lengths.length}` : '',
      fit: decisions.fitted === 'site' ? 'site' : undefined,
      dividesAtJoins: false,
      meets: atCorner.left ? (atCorner.right ? 'both' : 'left') : atCorner.right ? 'right' : undefined,
      oversize: oversizeOf(run, ends),
      // A joint's fittings are counted once, with the length to the left of it.
      hardware: atRight ? hardwareOf(atRight, decisions.joint) : [],
      work: [...jointWork(run.left, 'left', atLeft), ...jointWork(run.right, 'right', atRight), ...(draft.work ?? [])],
    };
  });
  return { drafts, findings };
}

/** Where on a length a joint is: at its end, or, where it goes through at a butted corner, in the edge that the other stops against. */
const placeOfJoint = (end: RunEnd, side: 'left' | 'right', butted: boolean): string =>
  butted && end.through ? `${end.deflectionDeg > 0 ? 'back' : 'front'} edge by the ${side} end` : `${side} end`;

/** Of two ways that are as good, the same is chosen as seen from the datum end: so a unit and its mirror image are jointed alike. */
function fromDatum(
  rod: Rod,
  run: RodRun,
  reach: Reach,
  blocks: readonly Block[],
  clear: number,
  longest: number,
): Jointed {
  if (rod.timber.datum === 'left')
    return jointed(reach, blocks, clear, { longest, leftOn: run.left.scribe, rightOn: run.right.scribe });
  const turned = jointed(
    { from: -reach.to, to: -reach.from, innerFrom: -reach.innerTo, innerTo: -reach.innerFrom },
    blocks.map((b) => ({ ...b, from: -b.to, to: -b.from })),
    clear,
    { longest, leftOn: run.right.scribe, rightOn: run.left.scribe },
  );
  return { ...turned, at: turned.at.map((x) => -x).reverse() };
}

/** What of an outline lies before (side 1) or after (side −1) a square cut at x. */
const cutAt = (outline: readonly Vec2[], x: number, side: 1 | -1): readonly Vec2[] =>
  Number.isFinite(x) ? clip(outline, [x, 0], [side, 0]) : outline;

/** Without corners that fall on one another. */
const tidy = (outline: readonly Vec2[]): readonly Vec2[] =>
  outline.filter((p, i) => {
    const q = outline[(i + 1) % outline.length];
    return Math.hypot(p[0] - q[0], p[1] - q[1]) > SAME_LENGTH / 10;
  });
