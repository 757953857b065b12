import fc from 'fast-check';
import { newJob } from '../../src/flow';
import type { EndCondition, Job, Rhythm, Run } from '../../src/vocabulary/job';

const tenth = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

const end: fc.Arbitrary<EndCondition> = fc.oneof(
  fc.constant<EndCondition>({ kind: 'wall' }),
  fc.constant<EndCondition>({ kind: 'free' }),
  tenth(250, 600).map((length): EndCondition => ({ kind: 'return', length })),
);

/** Square corners are common, canted and surveyed ones less so; any within ±150° must hold. */
const deflection: fc.Arbitrary<number> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(90, -90, 45, -45, 91.5, -91.4, 30, -30) },
  { weight: 3, arbitrary: tenth(-150, 150) },
);

const rhythm: fc.Arbitrary<Rhythm | undefined> = fc.oneof(
  { weight: 3, arbitrary: fc.constant(undefined) },
  fc.integer({ min: 1, max: 5 }).map((count): Rhythm => ({ by: 'count', count })),
  tenth(400, 1200).map((pitch): Rhythm => ({ by: 'pitch', pitch })),
);

const run: fc.Arbitrary<Run> = fc
  .record({
    length: tenth(700, 5200),
    over: fc.constantFrom('frame', 'cladding', 'pillar', 'plinth', 'skirting', 'panel', 'top'),
    deflectionDeg: deflection,
    through: fc.constantFrom('this' as const, 'next' as const),
    rhythm,
  })
  .map(({ rhythm: r, ...rest }) => (r ? { ...rest, rhythm: r } : rest));

const elements = fc.record({
  frame: fc.record({
    timber: fc.constantFrom('sawn-38x63', 'sawn-38x89'),
    lay: fc.constantFrom('edge', 'flat'),
    centres: fc.constantFrom(300, 400, 406.7, 600),
    method: fc.constantFrom('module', 'equal'),
    datum: fc.constantFrom('left', 'right'),
    nogginRows: fc.integer({ min: 0, max: 3 }),
  }),
  cladding: fc.record({ sheet: fc.constantFrom('mdf-9', 'mdf-12', 'mdf-18'), floorGap: tenth(0, 20) }),
  pillar: fc.record({
    width: tenth(80, 220),
    cornerWidth: tenth(60, 160),
    rhythm: fc.constantFrom('pitch', 'count'),
    pitch: tenth(500, 1300),
    bays: fc.integer({ min: 1, max: 4 }),
    flutes: fc.constantFrom(0, 1, 3, 5, 7),
  }),
  plinth: fc.record({
    sheet: fc.constantFrom('mdf-18', 'mdf-25', 'mdf-30'),
    height: tenth(120, 220),
    overhang: tenth(0, 12),
    cutter: fc.constantFrom('', 'ovolo-9', 'ogee-12', 'chamfer-6', 'cavetto-9', 'torus-12'),
  }),
  skirting: fc.record({ moulding: fc.constantFrom('skirting-ogee-120', 'skirting-torus-145', 'skirting-chamfer-95') }),
  panel: fc.record({
    moulding: fc.constantFrom('panel-ogee-30', 'panel-ovolo-22', 'panel-bead-25'),
    margin: tenth(30, 110),
    rows: fc.integer({ min: 0, max: 2 }),
    rowGap: tenth(30, 100),
  }),
  top: fc.record({
    hardwood: fc.constantFrom('oak-40', 'ash-32'),
    overhang: tenth(50, 160),
    endOverhang: tenth(0, 60),
    corner: fc.constantFrom('mitred', 'butted'),
  }),
});

/** Any job that the schema would take, within the sizes such units have. Some of them can't be built: they say so in findings. */
export const anyJob: fc.Arbitrary<Job> = fc
  .record({
    runs: fc.array(run, { minLength: 1, maxLength: 4 }),
    leftEnd: end,
    rightEnd: end,
    height: tenth(850, 1200),
    depth: tenth(300, 650),
    made: elements,
  })
  .map(({ runs, leftEnd, rightEnd, height, depth, made }) => {
    const start = newJob('random');
    const decided = Object.fromEntries(
      Object.entries(start.unit.elements).map(([kind, defaults]) => [
        kind,
        { ...defaults, ...made[kind as keyof typeof made] },
      ]),
    );
    return {
      ...start,
      unit: {
        ...start.unit,
        joins: { by: 'none' },
        plan: { runs, leftEnd, rightEnd },
        height,
        depth,
        elements: decided,
      },
    };
  });
