import { alongFace } from '../../base/place';
import { CLEAR_OF_HOLE, SAME_LENGTH } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Obstacle } from '../../vocabulary/opening';
import type { PartDraft } from '../../vocabulary/part';
import type { Mark } from '../../vocabulary/rod';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { crowded, type Pair, pairOf, sinkBearers } from './bearers';
import { fields } from './fields';
import { airOf, holeOf, misfits, unstated } from './findings';
import { needsOf, type Space, spacesOf } from './spaces';

type Decisions = DecisionsOf<typeof fields>;
type Known = Pick<Bench, 'rod' | 'book'>;

/** What stands or hangs behind the front and is bought: it is checked against its bay, and a sink gets bearers under the top. */
export const appliance: Room<typeof fields> = {
  kind: 'appliance',
  label: 'Appliances, sinks and bins',
  group: 'behind',
  fields,
  demands: () => ({}),
  obstacles,
  backing,
  parts,
  /** The side of each sink bearer that looks towards the bowl. */
  marks: (run, made) =>
    made
      .filter((p) => p.where.endsWith('of the bowl'))
      .map((p): Mark => {
        const outer = alongFace(run, p.place.origin);
        const x = p.where.includes('left of') ? outer + p.size.thickness : outer - p.size.thickness;
        return { id: p.mark, x, lane: 'behind', reason: p.where, part: p.mark };
      }),
};

/** Bowls that fit with a bearer at each side, and where those lie. */
function withBearers(
  { bearer }: Decisions,
  { rod, book }: Known,
): readonly { readonly space: Space; readonly pair: Pair }[] {
  const { thickness } = book.item('timber', bearer);
  return spacesOf(rod, thickness).flatMap((space) => {
    const pair = space.wish.purpose === 'sink' && fits(space) ? pairOf(space) : undefined;
    return pair && !crowded(space, thickness) ? [{ space, pair }] : [];
  });
}

const fits = (space: Space): boolean => needsOf(space).every((n) => n.need <= n.have + SAME_LENGTH);

/** What comes through the top must clear the bearers. */
function obstacles(decisions: Decisions, known: Known): readonly Obstacle[] {
  const { thickness } = known.book.item('timber', decisions.bearer);
  const { rod } = known;
  if (!rod.carcass || rod.carcass.high < rod.frameHeight || rod.carcass.worktop) return [];
  const { rearRail, back } = rod.carcass;
  return withBearers(decisions, known).flatMap(({ space: { run, bay, front, rear }, pair }) => {
    const bearer = (from: number, to: number, [near, far]: readonly [number, number]): Obstacle => ({
      ...{ run: run.id, through: 'top', from, to },
      ...{ low: rod.top.overhang - near, high: rod.top.overhang - far },
      what: `sink bearer of bay ${(bay.bay ?? 0) + 1}`,
      clear: CLEAR_OF_HOLE,
    });
    return [
      ...[pair.left - thickness, pair.right].map((from) => bearer(from, from + thickness, [front, rear])),
      // Where no rail runs behind the bowl, one more does.
      ...(rearRail ? [] : [bearer(bay.from, bay.to, [rear, back])]),
    ];
  });
}

/** The bearers' front ends are screwed to a noggin, or to the top plate. */
function backing(decisions: Decisions, known: Known): readonly Backing[] {
  const { thickness, width } = known.book.item('timber', decisions.bearer);
  return withBearers(decisions, known).map(({ space: { run, top }, pair }) => ({
    kind: 'noggin',
    run: run.id,
    z: top - width / 2,
    from: pair.left - thickness,
    to: pair.right + thickness,
    reason: 'sink bearers',
  }));
}

function parts(decisions: Decisions, bench: Bench): Made {
  const { rod, book, openings } = bench;
  const { carcass } = rod;
  if (!carcass) return { drafts: [], findings: [] };
  const timber = book.item('timber', decisions.bearer);
  const drafts: PartDraft[] = withBearers(decisions, bench).flatMap(({ space, pair }) =>
    sinkBearers(space, pair, carcass, decisions.bearer, timber),
  );
  const findings = spacesOf(rod, timber.thickness).flatMap((space): readonly Finding[] => {
    const { run, bay, wish } = space;
    const wrong = [...misfits(space, rod), ...unstated(space)];
    if (!fits(space) || wish.purpose === 'bin') return wrong;
    if (wish.purpose === 'appliance') return [...wrong, airOf(space)];
    const tight = wish.width > 0 ? crowded(space, timber.thickness) : undefined;
    const middle = (bay.from + bay.to) / 2;
    const hole = openings.some((o) => o.run === run.id && o.through === 'top' && o.from < middle && o.to > middle);
    return [...wrong, ...(tight ? [tight] : []), ...holeOf(space, carcass.worktop !== undefined, hole)];
  });
  return { drafts, findings };
}
