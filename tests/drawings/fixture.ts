import type { Drawable } from '../../src/drawings/drawable';
import { newJob } from '../../src/flow';
import type { Stud } from '../../src/vocabulary/backing';
import type { Job } from '../../src/vocabulary/job';
import type { Part } from '../../src/vocabulary/part';
import type { Mark, RodRun, RunEnd } from '../../src/vocabulary/rod';
import { box } from './box';

export { box } from './box';

/**
 * One run of 1800 between free ends, set out by hand: a frame of 38 × 63 with studs at 19, 400, 800, 1200, 1600 and 1781, a skin of
 * 12, pillars of 140, blocks of 150 × 150, skirting of 120, one panel frame a bay, a top of 40. Small enough to check by eye.
 */
const END: RunEnd = {
  kind: 'free',
  deflectionDeg: 0,
  grows: 0,
  through: true,
  frameAt: 0,
  toReturn: false,
  topBeyond: 30,
  scribe: 0,
  flap: false,
};

const STUDS: readonly Stud[] = [19, 400, 800, 1200, 1600, 1781].map((c) => ({ from: c - 19, to: c + 19, reasons: [] }));
const PILLARS = [0, 830, 1660].map((from, index) => ({
  index,
  from,
  to: from + 140,
  centre: from + 70,
  footFrom: from - 5,
  footTo: from + 145,
  where: (['left', 'between', 'right'] as const)[index]!,
  mitred: false,
}));
const BAYS = [
  { index: 0, from: 140, to: 830, footFrom: 145, footTo: 825 },
  { index: 1, from: 970, to: 1660, footFrom: 975, footTo: 1655 },
].map((bay) => ({ ...bay, mitredLeft: false, mitredRight: false, panels: true }));

function parts(): readonly Part[] {
  const frame = [
    box({ kind: 'frame', mark: 'A-PL1', name: 'plate', from: 'framed', x: [0, 1800], z: [0, 38], d: [-63, 0] }),
    box({ kind: 'frame', mark: 'A-PL2', name: 'plate', from: 'framed', x: [0, 1800], z: [972, 1010], d: [-63, 0] }),
    ...STUDS.map((stud, i) =>
      box({
        kind: 'frame',
        mark: `A-ST${i + 1}`,
        name: 'stud',
        from: 'framed',
        x: [stud.from, stud.to],
        z: [38, 972],
        d: [-63, 0],
      }),
    ),
    ...STUDS.slice(1).map((stud, i) =>
      box({
        kind: 'frame',
        mark: `A-NG${i + 1}`,
        name: 'noggin',
        from: 'framed',
        x: [STUDS[i]!.to, stud.from],
        z: [486, 524],
        d: [-63, 0],
      }),
    ),
  ];
  const skin = box({
    kind: 'cladding',
    mark: 'A-CL1',
    name: 'skin',
    from: 'clad',
    x: [0, 1800],
    z: [0, 1010],
    d: [0, 12],
  });
  const pillars = PILLARS.flatMap((p, i) => [
    box({
      kind: 'pillar',
      mark: `A-PB${i + 1}`,
      name: 'pillar',
      from: 'finished',
      x: [p.from, p.to],
      z: [150, 1010],
      d: [12, 30],
    }),
    box({
      kind: 'plinth',
      mark: `A-BL${i + 1}`,
      name: 'block',
      from: 'finished',
      x: [p.footFrom, p.footTo],
      z: [0, 150],
      d: [12, 36],
    }),
  ]);
  const bays = BAYS.flatMap((bay, i) => [
    box({
      kind: 'skirting',
      mark: `A-SK${i + 1}`,
      name: 'skirting',
      from: 'finished',
      x: [bay.footFrom, bay.footTo],
      z: [0, 120],
      d: [12, 30],
    }),
    ...[
      [190, 220],
      [910, 940],
    ].map((z, k) =>
      box({
        kind: 'panel',
        mark: `A-PM${4 * i + k + 1}`,
        name: 'panel moulding',
        from: 'finished',
        x: [bay.from + 70, bay.to - 70],
        z: z as [number, number],
        d: [12, 30],
      }),
    ),
    ...[
      [bay.from + 70, bay.from + 100],
      [bay.to - 100, bay.to - 70],
    ].map((x, k) =>
      box({
        kind: 'panel',
        mark: `A-PM${4 * i + k + 3}`,
        name: 'panel moulding',
        from: 'finished',
        x: x as [number, number],
        z: [190, 940],
        d: [12, 30],
      }),
    ),
  ]);
  const top = box({
    kind: 'top',
    mark: 'A-TP1',
    name: 'top',
    from: 'finished',
    x: [-30, 1830],
    z: [1010, 1050],
    d: [-500, 75],
  });
  return [...frame, skin, ...pillars, ...bays, top];
}

const run: RodRun = {
  id: 'A',
  name: 'Run A',
  jobIndex: 0,
  origin: [0, 0],
  along: [1, 0],
  front: [0, -1],
  length: 1800,
  left: END,
  right: END,
  pillars: PILLARS,
  bays: BAYS,
  crossLines: [],
  backBays: [],
  joins: [],
  sections: ['S1'],
  sound: true,
};

const job: Job = {
  ...newJob('by hand'),
  format: 'counterwright-job',
  version: 2,
  name: 'Hand-made <counter> & "bar"',
  maker: { name: '' },
  client: { name: 'A. Client', contact: '' },
  site: { address: '', notes: '' },
  units: 'mm',
  survey: { walls: [], levels: [] },
  unit: {
    name: 'Counter',
    plan: {
      runs: [{ length: 1800, over: 'plinth', deflectionDeg: 0, through: 'this' }],
      leftEnd: { kind: 'free' },
      rightEnd: { kind: 'free' },
    },
    height: 1050,
    depth: 575,
    elements: {},
    joins: { by: 'none' },
    openings: [],
    bays: [],
  },
  stock: {
    items: [
      {
        kind: 'timber',
        id: 'sawn-38x63',
        name: 'Sawn 38 × 63',
        densityKgM3: 450,
        width: 63,
        thickness: 38,
        lengths: [],
      },
      {
        kind: 'sheet',
        id: 'mdf-18',
        name: 'MDF 18',
        densityKgM3: 750,
        length: 2440,
        width: 1220,
        thickness: 18,
        pricePence: 0,
      },
    ],
    fixings: [],
  },
  tools: { sawKerf: 3, mitreSawKerf: 3, mostTiltDeg: 47, roundingStep: 0.5, cutters: [] },
};

const marks: readonly Mark[] = [
  ...PILLARS.map((p): Mark => ({ id: `pillar-${p.index}`, x: p.centre, lane: 'front', reason: 'pillar centre' })),
  ...STUDS.map((s, i): Mark => ({ id: `stud-${i}`, x: (s.from + s.to) / 2, lane: 'timber', reason: 'stud' })),
  { id: 'joint', x: 800, lane: 'skin', reason: 'sheet joint' },
];

export const byHand: Drawable & { readonly marks: Readonly<Record<string, readonly Mark[]>> } = {
  job,
  rod: {
    runs: [run],
    layers: { frame: { name: 'frame', inner: -63, outer: 0 }, plinth: { name: 'plinth', inner: 12, outer: 36 } },
    heights: {},
    timber: { stock: 'sawn-38x63', face: 38, depth: 63, centres: 400, method: 'module', datum: 'left', nogginRows: 1 },
    frameHeight: 1010,
    frameLow: 0,
    flaps: [],
    height: 1050,
    depth: 575,
    top: { layer: 'top', thickness: 40, overhang: 75, endOverhang: 30 },
    findings: [],
  },
  framing: [
    {
      run: 'A',
      from: 0,
      to: 1800,
      plates: [{ from: 0, to: 1800 }],
      studs: STUDS,
      noggins: STUDS.slice(1).map((stud, i) => ({
        from: STUDS[i]!.to,
        to: stud.from,
        low: 486,
        high: 524,
        reasons: [],
      })),
      fillets: [],
    },
  ],
  openings: [],
  parts: parts(),
  marks: { A: marks },
};
