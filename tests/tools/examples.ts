import { defaultsOf } from '../../src/base/fields.ts';
import { bayFields, openingFields } from '../../src/job/fields-making.ts';
import type { RoomWords } from '../../src/job/schema.ts';
import { newJob } from '../../src/job/start.ts';
import type { Decision } from '../../src/vocabulary/field.ts';
import type { BayWish, EndCondition, Job, Opening, Plan, Run, Unit } from '../../src/vocabulary/job.ts';

type Layer = string;
type Decisions = Readonly<Record<string, Readonly<Record<string, Decision>>>>;

const run = (length: number, over: Layer, deflectionDeg = 0, through: Run['through'] = 'this'): Run => ({
  length,
  over,
  deflectionDeg,
  through,
});
const wall = (name?: string): EndCondition => (name === undefined ? { kind: 'wall' } : { kind: 'wall', wall: name });

/** The examples, by file name. The hall, its village and its committee are invented. */
export function examples(rooms: readonly RoomWords[]): Readonly<Record<string, Job>> {
  const hall = (
    name: string,
    unit: { name: string; height: number; depth: number; plan: Plan },
    elements: Decisions,
  ): Job => {
    const start = newJob(name, rooms);
    const decided = Object.entries(start.unit.elements).map(([kind, old]) => [kind, { ...old, ...elements[kind] }]);
    return {
      ...start,
      client: { name: 'Larkmoor Hall committee', contact: 'bookings@larkmoor-hall.example' },
      site: {
        address: 'Larkmoor Hall, The Green, Larkmoor',
        notes: 'An invented hall. Deliveries by the kitchen door.',
      },
      // Three helpers carry, at 25 kg each; a medium van.
      carry: { ...start.carry, people: 3, vanLength: 3000 },
      unit: {
        ...start.unit,
        name: unit.name,
        plan: unit.plan,
        height: unit.height,
        depth: unit.depth,
        elements: Object.fromEntries(decided),
      },
    };
  };
  const bay = (run: number, bay: number, change: Partial<BayWish>): BayWish => ({
    ...defaultsOf(bayFields),
    run,
    bay,
    ...change,
  });
  const opening = (name: string, run: number, x: number, z: number, change: Partial<Opening> = {}): Opening => ({
    ...defaultsOf(openingFields),
    name,
    run,
    x,
    z,
    ...change,
  });
  const withUnit = (job: Job, part: Partial<Unit>): Job => ({ ...job, unit: { ...job.unit, ...part } });

  const straight = hall(
    'Larkmoor Hall: tea hatch',
    {
      name: 'Tea hatch counter',
      height: 950,
      depth: 550,
      plan: { runs: [run(3600, 'plinth')], leftEnd: wall('chimney breast'), rightEnd: wall('store wall') },
    },
    {
      pillar: { rhythm: 'count', bays: 5, width: 100, flutes: 3 },
      panel: { margin: 75 },
      skirting: { moulding: 'skirting-chamfer-95' },
    },
  );

  const corner = hall(
    'Larkmoor Hall: café servery',
    {
      name: 'Servery',
      height: 1100,
      depth: 650,
      plan: {
        runs: [run(4800, 'plinth', 90), run(2600, 'plinth')],
        leftEnd: wall('kitchen wall'),
        rightEnd: { kind: 'return', length: 520 },
      },
    },
    { frame: { timber: 'sawn-38x89' }, cladding: { sheet: 'mdf-12-long' }, pillar: { pitch: 750 } },
  );

  const canted = hall(
    'Larkmoor Hall: bar',
    {
      name: 'Canted bar',
      height: 1070,
      depth: 500,
      plan: {
        runs: [
          run(1500, 'top', 45),
          run(900, 'top', 45, 'next'),
          run(2100, 'top', 45),
          run(900, 'top', 45, 'next'),
          run(1500, 'top'),
        ],
        leftEnd: wall(),
        rightEnd: wall(),
      },
    },
    {
      frame: { method: 'equal', centres: 600 },
      panel: { rows: 2, rowGap: 150, rail: true },
      plinth: { cutter: 'cavetto-9' },
      undertop: { moulding: 'undertop-scotia-25' },
      footrail: { wanted: true },
    },
  );

  const flap = hall(
    'Larkmoor Hall: ticket counter',
    {
      name: 'Ticket counter',
      height: 1050,
      depth: 520,
      plan: {
        runs: [
          { ...run(1900, 'frame'), flap: { width: 720, hinge: 'left', gate: true } },
          { ...run(1300, 'frame'), rhythm: { by: 'count', count: 2 } },
        ],
        leftEnd: { kind: 'return', length: 430 },
        rightEnd: wall(),
      },
    },
    { plinth: { style: 'plain', height: 120 }, pillar: { flutes: 3, fluteEnds: 'stopped', fluteStop: 60 } },
  );

  const inside = hall(
    'Larkmoor Hall: cloakroom counter',
    {
      name: 'Cloakroom counter',
      height: 1000,
      depth: 450,
      plan: {
        runs: [
          { ...run(3150, 'frame', -91.4), rhythm: { by: 'count', count: 4 } },
          { ...run(2240, 'frame'), rhythm: { by: 'marks', marks: [480, 1080, 1690] } },
        ],
        leftEnd: { kind: 'free' },
        rightEnd: wall('porch wall'),
      },
    },
    {
      pillar: { flutes: 0 },
      plinth: { cutter: 'chamfer-6' },
      panel: { moulding: 'panel-bead-25' },
      top: { hardwood: 'oak-32' },
    },
  );

  return {
    'straight.job.json': {
      ...withUnit(straight, {
        joins: { by: 'hand', at: [{ run: 1, x: 1449 }] },
        openings: [opening('Urn socket', 1, 1090, 420)],
        bays: [bay(1, 2, { purpose: 'shelves', count: 2 }), bay(1, 4, { purpose: 'shelves', shelves: 'holes' })],
      }),
      survey: {
        walls: [
          {
            name: 'chimney breast',
            directionDeg: 89.2,
            leanDeg: 0.4,
            skirtingHeight: 150,
            skirtingThickness: 18,
          },
          { name: 'store wall', directionDeg: 90.6, leanDeg: -0.3 },
        ],
        levels: [
          { run: 1, along: 0, height: 0 },
          { run: 1, along: 1800, height: 4 },
          { run: 1, along: 3600, height: 7 },
        ],
      },
    },
    'corner-return.job.json': {
      ...withUnit(corner, {
        openings: [
          opening('Till socket', 1, 1050, 590),
          opening('Water', 1, 3050, 300, { use: 'pipe', width: 60 }),
          opening('Tap', 1, 3750, 480, { through: 'top', use: 'pipe', width: 38 }),
        ],
        bays: [
          bay(1, 2, { purpose: 'shelves', count: 2 }),
          bay(1, 3, { purpose: 'doors' }),
          bay(1, 5, { purpose: 'appliance', width: 550, height: 820, depth: 390 }),
          bay(2, 2, { purpose: 'drawers', count: 3 }),
        ],
      }),
      survey: {
        walls: [{ name: 'kitchen wall', directionDeg: 90.5, leanDeg: 0 }],
        levels: [{ run: 1, along: 0, height: 3 }],
      },
    },
    'canted.job.json': canted,
    'flap.job.json': flap,
    'inside-corner.job.json': {
      ...inside,
      survey: { walls: [{ name: 'porch wall', directionDeg: -1, leanDeg: 0.5 }], levels: [] },
    },
  };
}
