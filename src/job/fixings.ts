import type { Fixing } from '../vocabulary/book';

const screw = (diameter: number, length: number, pack: number, pricePence: number): Fixing => ({
  id: `screw-${diameter}x${length}`,
  name: `Wood screw ${diameter} × ${length}`,
  kind: 'screw',
  diameter,
  length,
  pack,
  pricePence,
});

const brad = (length: number, pack: number, pricePence: number): Fixing => ({
  id: `brad-${length}`,
  name: `Brad 1.2 × ${length}`,
  kind: 'brad',
  diameter: 1.2,
  length,
  pack,
  pricePence,
});

/**
 * Fixings and adhesives of a new job. Screw lengths for frames (100) and noggins (65), brads of 32, 50 and 64 for mouldings and blocks: common
 * practice, no source. Prices are samples of our own invention, in pence.
 */
export const FIXINGS: readonly Fixing[] = [
  screw(4, 30, 200, 460),
  screw(4, 40, 200, 520),
  screw(5, 65, 200, 980),
  screw(5, 100, 100, 890),
  brad(32, 5000, 1250),
  brad(50, 5000, 1690),
  {
    id: 'brad-64',
    name: 'Brad 1.6 × 64',
    kind: 'brad',
    diameter: 1.6,
    length: 64,
    pack: 2500,
    pricePence: 1980,
  },
  {
    id: 'bolt-m8x90',
    name: 'Bolt M8 × 90 with nut and washers',
    kind: 'bolt',
    diameter: 8,
    length: 90,
    pack: 10,
    pricePence: 640,
  },
  {
    id: 'dowel-10x50',
    name: 'Beech dowel 10 × 50',
    kind: 'dowel',
    diameter: 10,
    length: 50,
    pack: 100,
    pricePence: 560,
  },
  { id: 'pva-1kg', name: 'PVA wood glue, 1 kg', kind: 'adhesive', diameter: 0, length: 0, pack: 1, pricePence: 980 },
  {
    id: 'grab-310ml',
    name: 'Grab adhesive, 310 ml',
    kind: 'adhesive',
    diameter: 0,
    length: 0,
    pack: 1,
    pricePence: 420,
  },
];
