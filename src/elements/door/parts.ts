import { rearBoard } from '../../base/box';
import { rectangle } from '../../base/outline';
import { type Stuff, standing } from '../../base/stuff';
import { tenth } from '../../base/tenth';
import type { Outline } from '../../vocabulary/geometry';
import type { Hold, PartDraft } from '../../vocabulary/part';
import type { Bench, Made } from '../../vocabulary/room';
import { hingesFor } from './divide';
import type { Decisions } from './field';
import { type Laid, layFronts } from './lay';

/** A drawer's front is fixed from inside its box, through this (common practice, no source). */
const BOX_FRONT = 15;

export function parts(decisions: Decisions, bench: Bench): Made {
  const { laid, findings } = layFronts(decisions, bench);
  const stop = bench.book.item('timber', decisions.stop);
  const section = rectangle(stop.thickness, stop.width);
  const drafts = laid.flatMap((one) => [
    ...(decisions.lie === 'inset' ? stopsOf(one, decisions, section, stop) : []),
    ...one.fronts.map((_, k) => frontOf(one, decisions, k)),
  ]);
  return { drafts, findings };
}

function frontOf({ run, bay, carcass, purpose, fronts }: Laid, { sheet, lie }: Decisions, k: number): PartDraft {
  const box = fronts[k];
  const height = box.high - box.low;
  const where = `bay ${(bay.bay ?? 0) + 1}`;
  const door = purpose === 'doors';
  const { shape, place } = rearBoard(run, box, door ? 'up' : 'along');
  const depth = carcass.front - Math.max(carcass.back, box.front);
  return {
    kind: 'door',
    code: door ? 'DR' : 'DF',
    name: door ? 'door' : 'drawer front',
    run: run.id,
    where: door ? `${where}, door ${k + 1}` : `${where}, drawer ${k + 1} from below`,
    material: sheet,
    finish: 'paint',
    from: 'finished',
    edges: [],
    grooves: [],
    // Fronts are taken off to be carried: they swing open and rub, and a section is lighter without them.
    fit: 'site',
    // Seen from behind, what is at the run's left is at the right.
    edgeNames: door ? ['right-hand edge', 'left-hand edge'] : undefined,
    shape,
    place,
    holds: door ? HUNG : ON_BOX,
    hardware: [
      door
        ? { what: lie === 'inset' ? 'butt hinge' : 'overlay hinge', count: hingesFor(height) }
        : { what: `pair of drawer runners, at most ${tenth(depth)} mm`, count: 1 },
      { what: 'handle', count: 1 },
    ],
  };
}

/** What fronts between the posts shut against: a stop on the side of each post, from rail to rail. */
function stopsOf(
  { run, bay, low, high, fronts }: Laid,
  { stop }: Decisions,
  section: Outline,
  { thickness }: { readonly thickness: number },
): readonly PartDraft[] {
  const piece = (where: 'left' | 'right', { shape, place }: Stuff): PartDraft => ({
    kind: 'door',
    code: 'DS',
    name: 'stop',
    run: run.id,
    material: stop,
    finish: 'paint',
    from: 'finished',
    edges: [],
    grooves: [],
    where: `bay ${(bay.bay ?? 0) + 1}, ${where}`,
    holds: stopHolds(thickness),
    shape,
    place,
  });
  const at = { d: fronts[0].front, low, high };
  return [
    piece('left', standing(run, section, { ...at, x: bay.from + thickness })),
    piece('right', standing(run, section, { ...at, x: bay.to })),
  ];
}

const stopHolds = (through: number): readonly Hold[] => [
  {
    by: 'screw',
    through,
    where: { at: 'length', centres: 300 },
    rule: 'stop on a post: a screw every 300 mm (common practice, no source)',
  },
];

const HUNG: readonly Hold[] = [
  {
    by: 'screw',
    through: 0,
    where: { at: 'all', each: 0 },
    rule: 'a door hangs on its hinges, whose screws come with them',
  },
];

const ON_BOX: readonly Hold[] = [
  {
    by: 'screw',
    through: BOX_FRONT,
    where: { at: 'all', each: 4 },
    into: 'itself',
    rule: 'drawer front on its box: 4 screws from inside (common practice, no source)',
  },
];
