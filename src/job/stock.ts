import { bead, cavetto, chamfer, cutterOf, ogee, ovolo, torus } from '../base/mouldings';
import { mouldedStrip, panelMoulding } from '../base/profiles';
import type { Cutter, Hardwood, Moulding, Sheet, StockItem, StockLength, Timber } from '../vocabulary/book';
import type { Outline } from '../vocabulary/geometry';

/*
 * The stock book that a new job starts from. PRICES ARE SAMPLES OF OUR OWN INVENTION, in pence, so that a new job adds up to
 * something: no merchant quoted them, and each joiner replaces them. Sheet sizes 2440 × 1220 and 3050 × 1220: usual in the UK,
 * from memory. Densities: from memory, typical, kg/m³ (MDF by thickness 720–800; hardwoods at about 12 % moisture content,
 * the middle of: oak 700–720, ash 690–710, walnut 610–640, sapele 640; whitewood 450–470).
 */

const MDF: readonly {
  readonly thickness: number;
  readonly densityKgM3: number;
  readonly pricePence: number;
  readonly long: boolean;
}[] = [
  { thickness: 6, densityKgM3: 800, pricePence: 1500, long: false },
  { thickness: 9, densityKgM3: 780, pricePence: 1900, long: true },
  { thickness: 12, densityKgM3: 760, pricePence: 2400, long: true },
  { thickness: 15, densityKgM3: 750, pricePence: 2900, long: false },
  { thickness: 18, densityKgM3: 750, pricePence: 3300, long: true },
  { thickness: 25, densityKgM3: 730, pricePence: 4700, long: true },
  { thickness: 30, densityKgM3: 720, pricePence: 5900, long: false },
];

const WIDTH = 1220;
const SHORT = 2440;
const LONG = 3050;

const sheets: readonly Sheet[] = MDF.flatMap(({ thickness, densityKgM3, pricePence, long }): Sheet[] => {
  const stuff = `mdf-${thickness}`;
  const sheet = (id: string, length: number, price: number): Sheet => ({
    kind: 'sheet',
    id,
    name: `MDF ${thickness}, ${length} × ${WIDTH}`,
    densityKgM3,
    // The usual size is what the stuff is called by.
    ...(id === stuff ? {} : { stuff }),
    length,
    width: WIDTH,
    thickness,
    pricePence: price,
  });
  const usual = sheet(stuff, SHORT, pricePence);
  // Dearer by area, to the nearest 10 pence.
  return long ? [usual, sheet(`${stuff}-long`, LONG, Math.round((pricePence * LONG) / SHORT / 10) * 10)] : [usual];
});

/** Lengths at so much a metre. */
const byTheMetre = (pencePerM: number, lengths: readonly number[]): StockLength[] =>
  lengths.map((length) => ({ length, pricePence: Math.round((pencePerM * length) / 1000) }));

const timber = (thickness: number, width: number, pencePerM: number): Timber => ({
  kind: 'timber',
  id: `sawn-${thickness}x${width}`,
  name: `Sawn whitewood ${thickness} × ${width}`,
  densityKgM3: 460,
  width,
  thickness,
  lengths: byTheMetre(pencePerM, [2400, 3000, 3600, 4200, 4800]),
});

/** Sections are our own drawing, from the classical mouldings. Density: of MDF for painted work. */
const moulding = (id: string, name: string, section: Outline, pencePerM: number): Moulding => ({
  kind: 'moulding',
  id,
  name,
  densityKgM3: 750,
  section,
  lengths: byTheMetre(pencePerM, id.startsWith('skirting') ? [2400, 3000, 4200, 5400] : [2400, 3000]),
});

/**
 * Mouldings that lie under a top: back on the front, upper edge against the top, where they stand out furthest. Their hollows and rounds
 * are quadrants with a flat (3 to 8 mm) above and below.
 */
function underTop(): readonly Moulding[] {
  const section = (...segments: Outline['segments']): Outline => ({ start: [0, 0], segments });
  return [
    moulding(
      'undertop-scotia-25',
      'Moulding under a top, scotia, 25 × 18',
      section(
        { to: [25, 0] },
        { to: [25, 18] },
        { to: [22, 18] },
        { to: [8, 4], radius: -14 },
        { to: [0, 4] },
        { to: [0, 0] },
      ),
      160,
    ),
    moulding(
      'undertop-ovolo-20',
      'Moulding under a top, ovolo, 20 × 18',
      section(
        { to: [20, 0] },
        { to: [20, 18] },
        { to: [17, 18] },
        { to: [17, 16] },
        { to: [4, 3], radius: 13 },
        { to: [0, 3] },
        { to: [0, 0] },
      ),
      150,
    ),
    moulding(
      'undertop-cavetto-32',
      'Moulding under a top, cavetto and bead, 32 × 16',
      section(
        { to: [32, 0] },
        { to: [32, 16] },
        { to: [29, 16] },
        { to: [19, 6], radius: -10 },
        { to: [14, 6] },
        { to: [6, 6], radius: 4 },
        { to: [0, 6] },
        { to: [0, 0] },
      ),
      190,
    ),
  ];
}

/** A round rail: two half rounds, its axis in the middle. Density of beech: from memory, typical, 720 kg/m³. */
function footRail(): Moulding {
  const section: Outline = {
    start: [0, 22.5],
    segments: [
      { to: [45, 22.5], radius: 22.5 },
      { to: [0, 22.5], radius: 22.5 },
    ],
  };
  return { ...moulding('rail-round-45', 'Foot rail, beech, 45 round', section, 1150), densityKgM3: 720 };
}

const mouldings: readonly Moulding[] = [
  moulding('skirting-ogee-120', 'Skirting, ogee, 120 × 18', mouldedStrip(120, 18, ogee(9, 27, 3)), 340),
  moulding('skirting-torus-145', 'Skirting, torus, 145 × 18', mouldedStrip(145, 18, torus(14, 5)), 390),
  moulding('skirting-chamfer-95', 'Skirting, chamfered, 95 × 15', mouldedStrip(95, 15, chamfer(6, 12)), 260),
  moulding('panel-ogee-30', 'Panel moulding, ogee, 30 × 15', panelMoulding(30, 15, ogee(8, 16, 2), ovolo(3, 3)), 210),
  moulding(
    'panel-ovolo-22',
    'Panel moulding, ovolo, 22 × 12',
    panelMoulding(22, 12, ovolo(8, 12, 1), chamfer(2, 2)),
    170,
  ),
  moulding('panel-bead-25', 'Panel moulding, bead, 25 × 12', panelMoulding(25, 12, bead(8, 2), chamfer(2, 2)), 180),
  ...underTop(),
  footRail(),
];

const hardwood = (
  id: string,
  name: string,
  thickness: number,
  densityKgM3: number,
  maxLength: number,
  poundsPerM2: number,
): Hardwood => ({
  kind: 'hardwood',
  id,
  name: `${name}, planed ${thickness}`,
  densityKgM3,
  thickness,
  maxLength,
  pricePencePerM2: poundsPerM2 * 100,
});

const hardwoods: readonly Hardwood[] = [
  hardwood('oak-32', 'European oak', 32, 710, 3600, 165),
  hardwood('oak-40', 'European oak', 40, 710, 3600, 205),
  hardwood('ash-32', 'Ash', 32, 700, 3000, 150),
  hardwood('ash-40', 'Ash', 40, 700, 3000, 185),
  hardwood('walnut-40', 'Black walnut', 40, 625, 2700, 330),
  hardwood('sapele-40', 'Sapele', 40, 640, 3900, 160),
];

export const STOCK_ITEMS: readonly StockItem[] = [
  ...sheets,
  timber(38, 63, 145),
  timber(38, 89, 190),
  timber(47, 75, 215),
  timber(25, 38, 70),
  ...mouldings,
  ...hardwoods,
];

export const CUTTERS: readonly Cutter[] = [
  cutterOf('ovolo-9', 'Ovolo 9', ovolo(9, 9)),
  cutterOf('ogee-12', 'Ogee 12', ogee(12, 12)),
  cutterOf('chamfer-6', 'Chamfer 6', chamfer(6, 6)),
  cutterOf('cavetto-9', 'Cavetto 9', cavetto(9, 9)),
  cutterOf('torus-12', 'Torus 12', torus(12, 4)),
];
