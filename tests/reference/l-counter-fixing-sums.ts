/* Screws, pins, spacers and packers of the L-shaped counter, by hand. */

/*
 * SCREWS. Studs 2 through each plate: 17·4. Noggins 2 askew at each end: 50·4. Bottom plates at 600, 25 from their ends:
 * 638/600, 1222/600, 1057/600, so 3 + 4 + 3. Skin, by 2 to 2½ times its 12, 30 long at most: at 150 along its edges, 300 on what lies more than 50 within them, a stud of 974
 * taking 3 between its ends and a noggin 1:
 *   S1 2·5 + 2·7 + 2 studs·3 + 15 = 45; S2 2·9 + 2·7 + 4·3 + 18 = 62; S3 2·8 + 2·7 + 6·3 + 17 = 65.
 * Cross rails 2 in each end: 12·4. Rear rails through the posts, 2 in each end: 5·4.
 * PINS. Panel moulding at 250: 371 takes 3, 790 takes 4, 290 takes 2: 3·(2·3 + 2·4) + 2·(2·2 + 2·4). Skirting at 400: 3·3 + 2·2.
 * Pillar boards at 250: 900 takes 5; blocks and the return 4 each, of 2½ times 25 at least: 62.5, brads of 64.
 * Doors over 900 high hang on 3 hinges each.
 * Top from below at 300, through the plate and through the rails behind: 2038 takes 8, 1275 takes 6, each twice. Its mitre is
 * 600·√2 = 848.5 long: tenons from 50 in, (848.5 − 100)/150 = 4.99: 5 spaces, 6 tenons; a draw bolt in each space, for every other
 * space would be 2·149.7 = 299 apart, over 250: 5.
 */
export const FIXINGS: readonly (readonly [string, string, number])[] = [
  ['ST', 'Wood screw 5 × 100', 68],
  ['NG', 'Wood screw 5 × 65', 200],
  ['PL', 'Wood screw 5 × 100', 10],
  ['CL', 'Wood screw 4 × 30', 172],
  ['CR', 'Wood screw 5 × 65', 48],
  ['RA', 'Wood screw 5 × 100', 20],
  ['PM', 'Brad 1.2 × 50', 66],
  ['SK', 'Brad 1.2 × 50', 13],
  ['PI', 'Brad 1.2 × 50', 35],
  ['BK', 'Brad 1.6 × 64', 28],
  ['BR', 'Brad 1.6 × 64', 4],
  ['DR', 'overlay hinge', 6],
  ['TP', 'Wood screw 5 × 65', 28],
  ['TP', 'loose tenon', 6],
  ['TP', 'draw bolt', 5],
];

/*
 * SPACERS: clear gap, how many times. Between studs each gap once (173 twice). Up and down, from 38 to 1012:
 *   noggins at 90, 205, 525, 965 (eight gaps): 71 − 38 = 33, 186 − 109 = 77, 506 − 224 = 282, 946 − 544 = 402, 1012 − 984 = 28;
 *   with shelves (two): 33, 77, 321 − 224 = 97, 506 − 359 = 147, 635 − 544 = 91, 946 − 673 = 273, 28;
 *   340, 525, 654 (one): 321 − 38 = 283, 147, 91, 1012 − 673 = 339;
 *   90, 525 (one): 33, 506 − 109 = 397, 1012 − 544 = 468;   525 alone (one): 506 − 38 = 468, 468.
 */
export const SPACERS: readonly (readonly [number, number])[] = [
  ...([
    [18, 1],
    [28, 10],
    [33, 11],
    [41, 1],
    [44, 1],
    [77, 10],
    [91, 3],
    [97, 2],
    [99, 1],
    [129.5, 1],
    [147, 3],
    [168, 1],
    [173, 2],
  ] as const),
  ...([
    [193, 1],
    [231, 1],
    [264, 1],
    [265, 1],
    [273, 2],
    [279.5, 1],
    [282, 8],
    [283, 1],
    [339, 1],
    [343, 1],
    [397, 1],
    [402, 8],
    [468, 3],
  ] as const),
];

/** Packers under studs and posts: the floor falls 8 in 2000 = 0.004 along A, and lies 8 low along B; under half a millimetre there is none. */
export const PACKERS: readonly (readonly [string, number, number])[] = [
  // At 22 and 101 it would be 0.088 and 0.404.
  ...([403, 672, 710, 1091, 1322, 1459, 1776.5, 1944] as const).map((x) => ['A-ST', x, 0.004 * x] as const),
  ...([672, 710, 1459] as const).map((x) => ['A-RP', x, 0.004 * x] as const),
  ...([82, 293, 504, 560, 863, 1069, 1151] as const).map((x) => ['B-ST', x, 8] as const),
  ...([504, 1151] as const).map((x) => ['B-RP', x, 8] as const),
];
