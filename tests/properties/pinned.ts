import type { Job } from '../../src/vocabulary/job';
import { jobOf as job, type Said } from '../elements/job-of';

/** The widest way in that a job file allows, four people to carry, so that nothing is in the way of a section. */
const WIDE = { vanLength: 14_000, vanWidth: 3000, routeDoorWidth: 6000, liftKg: 50, people: 4 };
const jobOf = (said: Said): Job => job({ ...said, carry: { ...WIDE, ...said.carry } });

/** Middles of the eight pillars that divide 4616.9 between end pillars of 140 into nine bays: (4616.9 − 140) / 9 apart. */
const PILLARS = Array.from({ length: 8 }, (_, i) => 70 + ((4616.9 - 140) / 9) * (i + 1));

/** Jobs with which a property once failed, cut down to what made it fail, and what was wrong then. */
export const PINNED: Readonly<Record<string, Job>> = {
  'at a sharp corner a worktop’s rear edge reached past its own side, behind the posts': jobOf({
    runs: [{ length: 3675.4, deflectionDeg: 145.4 }, { length: 3002.3 }],
    leftEnd: { kind: 'free' },
    depth: 420,
    joins: { by: 'hand', at: [{ run: 1, x: 1033.1 }] },
    elements: { carcass: { build: true }, worktop: { height: 850, depth: 437, behind: 15 } },
  }),
  'of plinth blocks that just meet, the last digits made one and left out its image': jobOf({
    runs: [{ length: 369.2 }],
    leftEnd: { kind: 'free' },
    rightEnd: { kind: 'free' },
    // Three bays of 16 between four pillars of 80.3: twice the overhang of 8.
    elements: {
      pillar: { width: 80.3, rhythm: 'count', bays: 3, flutes: 0 },
      plinth: { overhang: 8, endReturn: false },
    },
  }),
  'between plinth blocks that just meet, the last digits made a skirting of nothing': jobOf({
    runs: [{ length: 2400 }],
    leftEnd: { kind: 'return', length: 231.3 },
    elements: {
      cladding: { sheet: 'mdf-12' },
      pillar: { sheet: 'mdf-18', width: 80.3, cornerWidth: 80.3, rhythm: 'count', bays: 2, flutes: 0 },
      plinth: { overhang: 5.1 },
    },
  }),
  'the solid kernel gave a body to what a rail and its seat in a bracket share': jobOf({
    runs: [
      { length: 1278.7, over: 'plinth', deflectionDeg: 91.5, through: 'next' },
      { length: 2169.8, over: 'pillar', deflectionDeg: -125, through: 'next' },
      { length: 1277.5, over: 'plinth', rhythm: { by: 'pitch', pitch: 584.5 } },
    ],
    leftEnd: { kind: 'return', length: 373 },
    rightEnd: { kind: 'return', length: 539.8 },
    height: 983.7,
    depth: 348.2,
    fit: { tolerance: 3.2, scribe: 15 },
    elements: {
      frame: { timber: 'sawn-38x89', lay: 'flat', centres: 400, method: 'equal', nogginRows: 0 },
      cladding: { sheet: 'mdf-9', floorGap: 5.1 },
      plinth: { sheet: 'mdf-30', height: 218.4, overhang: 0.1, endReturn: false },
      pillar: {
        ...{
          sheet: 'mdf-18',
          width: 208.1,
          cornerWidth: 69.7,
          rhythm: 'count',
          bays: 3,
          flutes: 7,
          fluteEnds: 'stopped',
        },
        ...{
          baseHeight: 90,
          baseSheet: 'mdf-25',
          baseOverhang: 10.7,
          capHeight: 80,
          capOverhang: 12.5,
          endReturn: true,
        },
      },
      panel: { rows: 0 },
      footrail: { wanted: true, moulding: 'undertop-ovolo-20', timber: 'sawn-25x38', height: 235.8, out: 99 },
      top: { overhang: 159.5, endOverhang: 57.8 },
    },
  }),
  'a sharp outside corner left the butting frame’s wedge open': jobOf({
    runs: [{ length: 2000, deflectionDeg: 120.9 }, { length: 2000 }],
    depth: 300,
  }),
  'an inside corner a little less than square left the skin bare for 11 mm': jobOf({
    runs: [{ length: 2000, deflectionDeg: -80 }, { length: 2000 }],
  }),
  'of two pillars as good for a joint, the mirrored unit took the other': jobOf({
    runs: [{ length: 3230 }],
    leftEnd: { kind: 'return', length: 463 },
    rightEnd: { kind: 'return', length: 448 },
    elements: { pillar: { rhythm: 'count', bays: 5 }, frame: { datum: 'right' } },
  }),
  'the mirrored frame crowded its studs from the wrong end': jobOf({
    runs: [{ length: 1557, rhythm: { by: 'pitch', pitch: 456.5 } }],
    leftEnd: { kind: 'return', length: 345.3 },
    rightEnd: { kind: 'return', length: 480.9 },
    elements: { frame: { timber: 'sawn-38x89', lay: 'flat', centres: 300 } },
  }),
  'two sharp turns left a frame shorter than its two end studs': jobOf({
    runs: [
      { length: 700.8, over: 'top', deflectionDeg: 149.2 },
      { length: 1500, over: 'top' },
    ],
    depth: 357.6,
    elements: { top: { overhang: 147.4 }, cladding: { sheet: 'mdf-9' } },
  }),
  'narrow boards at a sharp corner let the skirting of both runs through each other': jobOf({
    runs: [{ length: 4290, deflectionDeg: 149.5 }, { length: 3084 }],
    height: 1199,
    elements: {
      cladding: { sheet: 'mdf-18' },
      pillar: { cornerWidth: 60, width: 81 },
      skirting: { moulding: 'skirting-torus-145' },
    },
  }),
  'of two places as near the middle, a top was jointed at the other in the mirror': jobOf({
    runs: [{ length: 3600.4 }],
    joins: { by: 'hand', at: [{ run: 1, x: 1800.2 }] },
    depth: 600,
    elements: {
      frame: { datum: 'right' },
      pillar: { rhythm: 'count', bays: 2 },
      top: { longest: 3020.5, jointClear: 289.9 },
    },
  }),
  'where joints of a top could keep no more than so far clear of joins, the last digits chose among them': jobOf({
    runs: [{ length: 4616.9, rhythm: { by: 'count', count: 9 } }],
    leftEnd: { kind: 'free' },
    rightEnd: { kind: 'free' },
    depth: 600,
    // Behind the pillars, 492.7 apart, but for the third from the left.
    joins: { by: 'hand', at: PILLARS.filter((_, i) => i !== 2).map((x) => ({ run: 1, x })) },
    elements: { frame: { datum: 'right' }, top: { longest: 2101.4, jointClear: 286.3 } },
  }),
};
