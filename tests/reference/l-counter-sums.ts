/*
 * Sums of the L-shaped counter, by hand, from the list in `l-counter-frame.ts` and `l-counter-front.ts`.
 * Densities, kg/m³, as in the stock book: whitewood 460, MDF 12 760, MDF 18 750, MDF 25 730, mouldings 750, oak 710.
 */

/** How many of each. Noggins 15 + 18 + 17; moulding 5 frames of 4. */
export const COUNT: Readonly<Record<string, number>> = {
  ...{ PL: 6, ST: 17, NG: 50, CR: 12, RP: 6, RA: 5 },
  ...{ CL: 3, PI: 7, BK: 7, BR: 1, SK: 5, PM: 20 },
  ...{ SB: 6, SH: 2, DR: 2, TP: 2 },
};
/** 96 of frame timber, 43 on the front, 12 behind and above. */
export const PARTS = 96 + 43 + 12;

/*
 * 38 × 63: plates 2·(688 + 1272 + 1107) = 6134; studs 17·974 = 16 558;
 *   noggins S1 3·41 + 6·264 + 6·231 = 3093, S2 4·343 + 4·193 + 2·99 + 4·279.5 + 4·129.5 = 3978, S3 8·173 + 4·265 + 4·168 + 44 = 3160;
 *   cross rails 12·359 = 4308; posts 6·1050 = 6300; rear rails 2·612 + 2·711 + 609 = 3255. Together 46 786.
 * 25 × 38: 2·612 + 4·397 = 2812. Skirting 3·501 + 2·420 = 2343. Panel moulding 3·2·(371 + 790) + 2·2·(290 + 790) = 11 286.
 * MDF 12: (691 + 1284 + 1182)·1045 = 3 299 065 mm².
 * MDF 18: pillars 5·120·900 + 2·100·900 = 720 000; shelves 2·610·421 = 513 620; doors 2·371.5·1032 = 766 776. Together 2 000 396.
 * MDF 25: 150·(125 + 3·130 + 2·112 + 150 + 100) = 150·989 = 148 350. Oak: 600·(2038 + 1275) = 1 987 800.
 */
export const AMOUNTS: Readonly<Record<string, number>> = {
  'sawn-38x63': 46.786,
  'sawn-25x38': 2.812,
  'skirting-ogee-120': 2.343,
  'panel-ogee-30': 11.286,
  'mdf-12': 3.299065,
  'mdf-18': 2.000396,
  'mdf-25': 0.14835,
  'oak-40': 1.9878,
};

/*
 * SECTIONS OF WHAT IS NOT SQUARE, mm².
 * Flute 14 wide, 5 deep: r = (49 + 25)/10 = 7.4; segment r²·acos(2.4/7.4) − 2.4·7 = 54.76·1.2405 − 16.8 = 51.13.
 *   Pillar 120·18 − 5·51.13 = 1904.35; corner board (100 + 82)/2·18 − 3·51.13 = 1484.61.
 * Block: 150·25, less an ovolo of 9: 81·(1 − π/4) = 17.38: 3732.62. The middle of that area lies 12.45 in front of its back
 *   ((3750·12.5 − 17.38·22.99)/3732.62), so a mitred end adds 12.45 to the length on the back.
 * Skirting: 120·18, less 3·27 and half of 9·27: 1957.5. (A cyma takes what a chamfer takes.)
 * Panel moulding: 30·15, less 2·16, half of 8·16 and 9·(1 − π/4): 352.07; the middle of that area lies 12.55 in from the outer edge, so
 *   each mitre takes off 12.55.
 *
 * KILOGRAMS. Frame timber 38·63 mm² · 460 = 1.10124 a metre; bearers 0.437; MDF 12 9.12 a m², MDF 18 13.5.
 */
export const WEIGHTS = {
  // 0.974 m.
  stud: 0.974 * 1.10124,
  // 610 × 421.
  shelf: 0.25681 * 13.5,
  // 371.5 × 1032.
  door: 0.383388 * 13.5,
  // (2038 + 1438)/2 · 600 · 40 · 710.
  topA: 29.61552,
  // (1275 + 675)/2 · 600 · 40 · 710.
  topB: 16.614,
} as const;

/*
 *                     S1                              S2                               S3
 * 38 × 63   13.125 m       14.4538   17.324 m           19.0779   16.337 m           17.9910
 * bearers   2.812 m         1.2288
 * shelves   2 · 3.4669      6.9339
 * skin      691·1045        6.5855   1278·1045 − 145·85 12.0674   1176·1045 − π·30²  11.1820
 * pillars   one             1.2854   one                 1.2854   two                 2.5709
 * blocks    125             0.3406   130                 0.3542   130; 137.45; 87.45  0.9670
 * skirting  501             0.7355   2 · 501             1.4711   2 · 420             1.2332
 * panels    2·1161 − 8·12.55 0.5866  twice that          1.1732   2·(2·1080 − 8·12.55) 1.0877
 */
export const SECTION_KG = { S1: 32.1501, S2: 35.4292, S3: 35.0318 } as const;

/*
 * Loose: doors 2 · 5.1757 = 10.3515, pillar 1.2854, corner boards 2 · 1484.61 mm² · 0.9 m · 750 = 2.0042, block 0.3542, corner blocks 2 · 99.45 long = 0.5420,
 * tops 29.6155 + 16.6140: 60.7668.
 */
export const LOOSE_KG = 60.7668;

/** Boxes: S1 skin 0–691, posts −485 to blocks 37. S2 skin to 1963 + 12; its doors hang behind the posts when it stands. S3 from skin −12 to block 1170 + 25. */
export const BOXES = {
  // With the 15 left on at the wall.
  S1: { length: 15 + 691, depth: 485 + 37, height: 1050 },
  S2: { length: 1975 - 691, depth: 485 + 37, height: 1050 },
  S3: { length: 1195 + 12, depth: 485 + 37, height: 1050 },
} as const;
