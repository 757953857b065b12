import { flatBoard, sideBoard } from '../../base/box';
import { SQUARE_EDGE } from '../../base/profiles';
import type { Stuff } from '../../base/stuff';
import { tenth } from '../../base/tenth';
import type { Vec2 } from '../../vocabulary/geometry';
import type { Hold, PartDraft } from '../../vocabulary/part';
import type { Board } from '../../vocabulary/shape';
import { draftOf } from './draft';
import { type Decisions, type Laid, lowestOf, topOf } from './lay';

/**
 * Shelves that can be moved: on pins in rows of holes, or on standards let in flush, in a lining at each side. The linings cover the cross
 * frames from the underside of the bottom rail to the upper side of the rail under top or worktop, and are notched round what lies along the run.
 */
export function looseShelves(
  laid: Laid,
  { sheet, lining, rows, hole }: Decisions,
  thick: number,
): readonly PartDraft[] {
  const { run, from, to, back, front, thickness } = laid;
  const side = (where: 'left' | 'right'): PartDraft =>
    draftOf(laid, 'LN', 'side lining', lining, where, liningOf(laid, where, thick), {
      holds: liningHolds(thick),
      work: workOf(laid, rows, hole),
      ...(laid.holes ? {} : { hardware: [{ what: `slotted standard, ${tenth(laid.high - laid.low)} mm`, count: 2 }] }),
    });
  return [
    side('left'),
    side('right'),
    ...laid.undersides.map((z, k) =>
      draftOf(
        laid,
        'SH',
        'shelf',
        sheet,
        `shelf ${k + 1}`,
        flatBoard(run, { from, to, back, front, low: z, high: z + thickness }),
        {
          holds: LIES_LOOSE,
          // It would fall out on the way.
          fit: 'site',
          hardware: [
            { what: laid.holes ? `shelf pin for a ${tenth(hole)} mm hole` : 'clip for a slotted standard', count: 4 },
          ],
        },
      ),
    ),
  ];
}

/** A corner cut out of a lining: so much of its length, so much of its width. */
type Notch = readonly [number, number];
const NONE: Notch = [0, 0];

/** Where a lining gives way: to the rails at the back, and to a worktop's bearer on the front frame. */
function notchesOf({ bay, carcass, low }: Laid): {
  readonly lower: Notch;
  readonly upper: Notch;
  readonly front: Notch;
} {
  const { face, depth, back, worktop } = carcass;
  const top = topOf(carcass);
  // Where the posts go through to the top, a worktop's rail lies under its own rear edge.
  const rail = worktop && top < carcass.high ? worktop.edge : back;
  return {
    lower: low > lowestOf(carcass) ? [low - lowestOf(carcass), face] : NONE,
    upper: bay.high < top ? [top - bay.high, rail - back + face] : NONE,
    front: worktop ? [depth, face] : NONE,
  };
}

function liningOf(laid: Laid, where: 'left' | 'right', thick: number): Stuff<Board> {
  const { run, bay, carcass } = laid;
  const { lower, upper, front } = notchesOf(laid);
  const isLeft = where === 'left';
  const [from, to] = isLeft ? [bay.from, bay.from + thick] : [bay.to - thick, bay.to];
  const box = { from, to, back: carcass.back, front: carcass.front, low: lowestOf(carcass), high: topOf(carcass) };
  const stuff = sideBoard(run, box, isLeft ? 1 : -1);
  const [length, width] = [box.high - box.low, box.front - box.back];
  // Round the left-hand lining, whose rear edge is at across = 0; the right-hand one is its mirror image.
  const outline = withoutRepeats([
    [0, lower[1]],
    lower,
    [lower[0], 0],
    [length - upper[0], 0],
    [length - upper[0], upper[1]],
    [length, upper[1]],
    [length, width - front[1]],
    [length - front[0], width - front[1]],
    [length - front[0], width],
    [0, width],
  ]);
  const turned = isLeft ? outline : outline.map(([a, b]): Vec2 => [a, width - b]).reverse();
  return { ...stuff, shape: { ...stuff.shape, outline: turned, edges: turned.map(() => SQUARE_EDGE) } };
}

/** A notch of nothing leaves its corner said three times. */
const withoutRepeats = (points: readonly Vec2[]): readonly Vec2[] =>
  points.filter(([x, y], i) => {
    const [a, b] = points[(i + points.length - 1) % points.length];
    return x !== a || y !== b;
  });

function workOf(laid: Laid, rows: number, hole: number): readonly string[] {
  const { lower, upper, front } = notchesOf(laid);
  const corners = [
    { notch: lower, at: 'lower rear' },
    { notch: upper, at: 'upper rear' },
    { notch: front, at: 'upper front' },
  ];
  const { holes } = laid;
  return [
    ...corners
      .filter(({ notch }) => notch[0] > 0)
      .map(({ notch: [up, deep], at }) => `notch ${tenth(up)} high and ${tenth(deep)} deep at the ${at} corner`),
    holes
      ? `2 rows of ${holes.count} holes ${tenth(hole)}, pitch ${tenth(holes.pitch)}, first ${tenth(lower[0] + holes.first)} from the lower end, rows ${tenth(rows)} from the front and rear edge`
      : `2 grooves for standards, to suit them, middles ${tenth(rows)} from the front and rear edge`,
  ];
}

const liningHolds = (through: number): readonly Hold[] => [
  {
    by: 'screw',
    through,
    where: { at: 'all', each: 10 },
    rule: 'side lining on a cross frame: 3 screws into each rail, 4 into the post (common practice, no source)',
  },
];

/** Nothing fixes a loose shelf but its own weight on four supports; the rule says so where the fixings are listed. */
const LIES_LOOSE: readonly Hold[] = [
  {
    by: 'dowel',
    through: 0,
    where: { at: 'all', each: 0 },
    rule: 'a loose shelf lies on 4 supports, which are hardware',
  },
];
