import type { ByHand } from './l-counter-words';

/*
 * THE ROD, by hand. x along each run from the left end of its frame line, d out from the frame's face.
 *
 * Layers: skin 0–12; pillars 12–30; blocks 12–37; skirting 12–30; panel moulding 12–27; top's front edge 75.
 * Corner rule at 90°: tan(90/2) = 1, so a layer at d is longer by d.
 * A is 2000 over the plinth (d 37): frame line 2000 − 37 = 1963. B is 1200 over the pillars (d 30): 1200 − 30 = 1170.
 * Frame of A: from 3 (clear of the wall) through to 1963. Frame of B: against A's back, from 63 to 1170.
 *
 * Pillars, set out on their faces (d 30). A: from 0 to 1963 + 30 = 1993. At the wall 120, at the corner 100: between them
 * 1993 − 120 − 100 = 1773; three bays p = (1773 − 2·120)/3 = 511.
 *   0–120 | 631–751, middle 691 | 1262–1382, middle 1322 | corner 1893–1993.   Bays 120–631, 751–1262, 1382–1893.
 * B: from −30 to 1170. Corner 100, free end 120: between 1200 − 220 = 980; two bays p = (980 − 120)/2 = 430.
 *   corner −30–70 | 500–620, middle 560 | 1050–1170.   Bays 70–500, 620–1050.
 *
 * Joins: behind the pillar at 691, and at the corner. S1: A 3–691 (688 long). S2: A 691–1963 (1272). S3: B 63–1170 (1107).
 *
 * Heights: top 40, so the frame is 1090 − 40 = 1050 high, studs 1050 − 2·38 = 974, from 38 to 1012.
 *
 * CARCASS. Front plane d −63; rear face of the posts 75 − 600 + 40 = −485. Behind an outside corner each carcass stops at the
 * other's rear plane: A's at 1963 − 485 = 1478, B's begins at 485. Cross frames, 38 wide, at ends and joins, and behind pillars
 * that leave 150 clear:
 *   S1: 3–41, 653–691.   S2: 691–729, 1440–1478; behind 1322 it would be 1303–1341, 1440 − 1341 = 99 clear: none.
 *   S3: 485–523, 1132–1170; behind 560 it would be 541–579, 18 clear: none.
 * Spaces: A 41–653 (612) behind bay 1, A 729–1440 (711) behind bay 2, B 523–1132 (609) behind bay 2.
 *
 * STUDS, middles. S1: ends 3 + 19 = 22 and 691 − 19 = 672 (cross frames at both). The wall pillar's board ends 120 − 41 = 79 past
 *   the end stud, more than two faces (76): one near its inner edge, 120 − 19 = 101. From 101 to 672 is 571: module line 3 + 400 = 403.
 * S2: ends 691 + 19 = 710 and 1944; pillar 1322; cross frame 1459. 710–1322 is 612: module 691 + 400 = 1091 (381, 231). 1459–1944
 *   is 485; the module lines 1491 and 1891 stand hard by others, so it is halved: 1701.5. That is 1682.5–1720.5, and the socket is
 *   1680 ± 72.5 = 1607.5–1752.5: the stud goes to the nearer side, 5 clear of the hole: 1757.5–1795.5, middle 1776.5.
 *   Neighbours then 317.5 and 167.5 away.
 * S3: ends 82 and 1151; cross frame 504; pillar 560; the pillar at the free end goes 1132 − 1050 = 82 past the end stud, over 76: one
 *   at 1050 + 19 = 1069. 82–504 is 422; module line 63 + 400 = 463 is hard by 504: halved, 293. 560–1069 is 509: module 63 + 800 = 863
 *   (303, 206). The pipe's hole is 355 ± 30 = 325–385, between 293 (to 312) and 504 (from 485): no stud moves.
 */
export const STUDS = {
  S1: [22, 101, 403, 672],
  S2: [710, 1091, 1322, 1459, 1776.5, 1944],
  S3: [82, 293, 504, 560, 863, 1069, 1151],
} as const;

/*
 * NOGGINS, middles. Skirting 120 − 30 = 90. Panel frames from 120 + 70 = 190 to 1050 − 70 = 980, moulding 30 wide: 205 and 965.
 * Shelves: clear from the bottom rail, 63, to the top rail, 1050 − 63 = 987: 924; two of 18: gaps (924 − 36)/3 = 296; undersides
 * 63 + 296 = 359 and 359 + 18 + 296 = 673; bearers 38 high under them: 340 and 654. Row: half of 38–1012: 525; the nearest others are
 * 654 − 525 = 129 away, more than three faces (114), so it is laid everywhere.
 * Along the run: skirting from block to block, 125–626, 756–1257, 1387–1888; B 75–495, 625–1045. Panel frames 70 in from the pillars:
 * 190–561, 821–1192, 1452–1823; B 140–430, 690–980. Shelves 41–653.
 * The socket, 400 ± 42.5, and the pipe, 300 ± 30, lie between the noggins at 205 (to 224) and 525 (from 506).
 */
const FULL = [90, 205, 525, 965];
const SHELVED = [90, 205, 340, 525, 654, 965];

/** Clear gaps between the studs of each section, from left to right, and the middles of the noggins in each. */
export const GAPS: readonly {
  readonly in: 'S1' | 'S2' | 'S3';
  readonly clear: number;
  readonly noggins: readonly number[];
}[] = [
  // 82 − 41; the panel begins at 190, the skirting at 125.
  { in: 'S1', clear: 41, noggins: [340, 525, 654] },
  { in: 'S1', clear: 384 - 120, noggins: SHELVED },
  { in: 'S1', clear: 653 - 422, noggins: SHELVED },
  { in: 'S2', clear: 1072 - 729, noggins: FULL },
  { in: 'S2', clear: 1303 - 1110, noggins: FULL },
  // 1341–1440: the panel of bay 3 begins at 1452, its skirting at 1387.
  { in: 'S2', clear: 1440 - 1341, noggins: [90, 525] },
  { in: 'S2', clear: 1757.5 - 1478, noggins: FULL },
  { in: 'S2', clear: 1925 - 1795.5, noggins: FULL },
  { in: 'S3', clear: 274 - 101, noggins: FULL },
  { in: 'S3', clear: 485 - 312, noggins: FULL },
  // 523–541: under 30, no noggin.
  { in: 'S3', clear: 541 - 523, noggins: [] },
  { in: 'S3', clear: 844 - 579, noggins: FULL },
  { in: 'S3', clear: 1050 - 882, noggins: FULL },
  // 1088–1132: behind the pillar at the free end; block and panel end before it.
  { in: 'S3', clear: 1132 - 1088, noggins: [525] },
];

const timber = (run: 'A' | 'B', leaves: ByHand['leaves']) =>
  ({ run, leaves, stock: 'sawn-38x63', width: 63, thickness: 38 }) as const;
const [s1, s2, s3] = [timber('A', 'S1'), timber('A', 'S2'), timber('B', 'S3')];
const plate = { code: 'PL', name: 'plate' };
const stud = { code: 'ST', name: 'stud', length: 974 };
const noggin = { code: 'NG', name: 'noggin' };
// From the post's front face, −485 + 63 = −422, to −63: 359. Two in each cross frame: on the floor and under the top.
const crossRail = { code: 'CR', name: 'cross rail', length: 359 };
const post = { code: 'RP', name: 'rear post', length: 1050 };
const rail = { code: 'RA', name: 'rear rail' };

export const FRAME: readonly ByHand[] = [
  { ...s1, ...plate, off: 2, length: 688 },
  { ...s2, ...plate, off: 2, length: 1272 },
  { ...s3, ...plate, off: 2, length: 1107 },
  { ...s1, ...stud, off: 4 },
  { ...s2, ...stud, off: 6 },
  { ...s3, ...stud, off: 7 },
  { ...s1, ...noggin, off: 3, length: 41 },
  { ...s1, ...noggin, off: 6, length: 264 },
  { ...s1, ...noggin, off: 6, length: 231 },
  { ...s2, ...noggin, off: 4, length: 343 },
  { ...s2, ...noggin, off: 4, length: 193 },
  { ...s2, ...noggin, off: 2, length: 99 },
  { ...s2, ...noggin, off: 4, length: 279.5 },
  { ...s2, ...noggin, off: 4, length: 129.5 },
  // Twice 173, on both sides of the stud at 293.
  { ...s3, ...noggin, off: 8, length: 173 },
  { ...s3, ...noggin, off: 4, length: 265 },
  { ...s3, ...noggin, off: 4, length: 168 },
  { ...s3, ...noggin, off: 1, length: 44 },
  { ...s1, ...crossRail, off: 4 },
  { ...s2, ...crossRail, off: 4 },
  { ...s3, ...crossRail, off: 4 },
  { ...s1, ...post, off: 2 },
  { ...s2, ...post, off: 2 },
  { ...s3, ...post, off: 2 },
  // Top and bottom behind shelves and doors; the open space keeps its floor free.
  { ...s1, ...rail, off: 2, length: 612 },
  { ...s2, ...rail, off: 2, length: 711 },
  { ...s3, ...rail, off: 1, length: 609 },
];
