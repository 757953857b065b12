import type { Job } from '../../src/vocabulary/job';
import { jobOf } from '../elements/job-of';

/*
 * An L-shaped counter, worked by hand. What the joiner decided:
 *
 * Run A, 2000 over the plinth, from a wall at its left to an outside corner of 90°; run B, 1200 over the pillars, from there to a free
 * end. A's frame goes through. 1090 high under an oak top of 40, 600 deep, 75 over the frame, 30 over the free end. Frame and carcass
 * 38 × 63 on edge. Skin 12, pillars 18, blocks 25 × 150, skirting 120 × 18, panel moulding 30 × 15. Three bays in A, two in B.
 * Joins behind the second pillar of A and at the corner. A: two fixed shelves, then a pair of doors; B, second bay: open.
 * A socket in the third bay of A, a pipe in the first of B. The frame stands 3 clear of the wall; 15 is left on to scribe.
 */

/** Worked out below, in `l-counter-frame.ts`: the middle of the second pillar of A. */
export const JOIN_AT = 691;

const WISH = {
  panels: true,
  shelves: 'fixed',
  width: 0,
  height: 0,
  depth: 0,
  besides: 5,
  above: 10,
  behind: 50,
} as const;

export const job: Job = jobOf({
  runs: [
    { length: 2000, over: 'plinth', deflectionDeg: 90, through: 'this', rhythm: { by: 'count', count: 3 } },
    { length: 1200, over: 'pillar', rhythm: { by: 'count', count: 2 } },
  ],
  leftEnd: { kind: 'wall', wall: 'party wall' },
  rightEnd: { kind: 'free' },
  height: 1090,
  depth: 600,
  elements: {
    frame: { timber: 'sawn-38x63', lay: 'edge', centres: 400, method: 'module', datum: 'left', nogginRows: 1 },
    carcass: {
      build: true,
      timber: 'sawn-38x63',
      lines: 'bays',
      setBack: 40,
      rearRail: true,
      midRail: false,
      toeHeight: 0,
    },
    cladding: { sheet: 'mdf-12', floorGap: 5, trim: 10 },
    pillar: {
      ...{ sheet: 'mdf-18', width: 120, cornerWidth: 100, atCorners: true, baseHeight: 0, capHeight: 0 },
      ...{ flutes: 5, fluteMargin: 15, fluteSpacing: 5, fluteDepth: 5, fluteEnds: 'through' },
    },
    plinth: { style: 'blocks', sheet: 'mdf-25', height: 150, overhang: 5, cutter: 'ovolo-9', endReturn: true },
    skirting: { moulding: 'skirting-ogee-120' },
    panel: { moulding: 'panel-ogee-30', margin: 70, rows: 1 },
    top: {
      hardwood: 'oak-40',
      overhang: 75,
      endOverhang: 30,
      corner: 'mitred',
      edge: '',
      longest: 3000,
      fitted: 'site',
    },
    undertop: { moulding: '' },
    worktop: { height: 0 },
    shelf: { sheet: 'mdf-18', bearer: 'sawn-25x38', least: 120, clearance: 2 },
    door: { sheet: 'mdf-18', lie: 'overlay', gap: 3, floor: 15 },
  },
  fit: { tolerance: 3, scribe: 15, bolts: [160, 430, 850] },
  joins: { by: 'hand', at: [{ run: 1, x: JOIN_AT }, { run: 1 }] },
  openings: [
    { name: 'socket', run: 1, through: 'front', use: 'socket', x: 1680, z: 400, width: 145, height: 85 },
    { name: 'waste', run: 2, through: 'front', use: 'pipe', x: 355, z: 300, width: 60, height: 60 },
  ],
  bays: [
    { run: 1, bay: 1, purpose: 'shelves', count: 2, ...WISH },
    { run: 1, bay: 2, purpose: 'doors', count: 2, ...WISH },
    { run: 2, bay: 2, purpose: 'open', count: 1, ...WISH },
  ],
  survey: {
    walls: [{ name: 'party wall', directionDeg: 90, leanDeg: 0.6 }],
    // The floor falls 8 in 2000 along A.
    levels: [
      { run: 1, along: 0, height: 0 },
      { run: 1, along: 2000, height: -8 },
    ],
  },
});
