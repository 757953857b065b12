import type { ByHand } from './l-counter-words';

/* What is put on and behind the frame, by hand; the rod is in `l-counter-frame.ts`. */

const S1 = { run: 'A', leaves: 'S1' } as const;
const S2 = { run: 'A', leaves: 'S2' } as const;
const S3 = { run: 'B', leaves: 'S3' } as const;
const A_SITE = { run: 'A', leaves: 'site' } as const;
const B_SITE = { run: 'B', leaves: 'site' } as const;
/** A mitre through the thickness at a square corner: half of 90°, the face the longer. */
const BEVEL = 'bevel 45.00° face';

/*
 * Skin: from 5 above the floor to 1050: 1045. S1: 0–691. S2: 691 to the corner, 1963 − 691 = 1272 on its back, + 12·1 on its face.
 * S3: 1170 on its back, 1182 on its face. None is longer than a sheet of 2440, so there are no other joints.
 */
const skin = { code: 'CL', name: 'cladding', stock: 'mdf-12', off: 1, width: 1045, thickness: 12 };

/*
 * Pillars stand on the blocks: 1050 − 150 = 900. Five flutes: (120 − 2·15 − 4·5)/5 = 14 wide; the first at 15 + 7 = 22, then every
 * 14 + 5 = 19. A corner board of 100 has no room for five (90 + 30 = 120); three take 3·14 + 2·5 = 52: first (100 − 52)/2 + 7 = 31.
 * Its back, in the skin's face: 100 − 18·1 = 82.
 */
const pillar = { code: 'PI', stock: 'mdf-18', length: 900, thickness: 18 };
const five = '22.00 41.00 60.00 79.00 98.00, 14.00 wide, 5.00 deep';
const three = '31.00 50.00 69.00, 14.00 wide, 5.00 deep';
const board = { ...pillar, name: 'pillar board', width: 120, flutes: five };
const cornerBoard = { ...pillar, name: 'corner pillar board', off: 1, width: 100, flutes: three };
const bevelled = (side: string): string => `${side} long edge bevelled 45° face, back 82.00`;

/*
 * Blocks, 5 wider than the pillars on each side: at the wall 0 to 125; between 120 + 10 = 130. Corner blocks: A from 1893 − 5 = 1888;
 * back, d 12, to 1963 + 12 = 1975: 87; face, d 37, to 2000: 112, which is what A was measured over. B from 70 + 5 = 75 to −12: 87,
 * and to −37: 112. At the free end from 1050 − 5 = 1045: back to 1170: 125, face 25 on: 150. The return goes from there, d 12, to the
 * back of the frame, d −63: 75 on its back, 75 + 25 = 100 on its face; from outside its front is at the left.
 */
const strip = { stock: 'mdf-25', width: 150, thickness: 25, edge: 'front upper arris moulded Ovolo 9' };
const block = { ...strip, code: 'BK', name: 'plinth block' };
const cornerBlock = { ...strip, code: 'BK', name: 'corner plinth block', off: 1, length: 112, short: 87 };

// Skirting from block to block: 626 − 125 = 1257 − 756 = 1888 − 1387 = 501; B 495 − 75 = 1045 − 625 = 420.
const skirting = { code: 'SK', name: 'skirting', stock: 'skirting-ogee-120', width: 120, thickness: 18 };

/*
 * Panel frames: a margin of 70 all round, from the skirting's 120 to 1050: 1050 − 120 − 140 = 790 high; 511 − 140 = 371 and 430 − 140 = 290
 * wide. Cut to the long point; the short point is two widths of 30 less.
 */
const moulding = { code: 'PM', name: 'panel moulding', stock: 'panel-ogee-30', width: 30, thickness: 15 };
const mitres = { left: 'mitre 45.00° outer edge', right: 'mitre 45.00° outer edge' };
const member = (length: number) => ({ ...moulding, ...mitres, length, short: length - 60 });

/*
 * Shelves: bearers 25 × 38 along the front frame, from post to post 612; at the sides from −485 to the one in front, −63 − 25 = −88: 397.
 * Boards 2 shorter than the space: 610; from −485 to 1 short of the front frame, −64: 421.
 */
const bearer = { code: 'SB', name: 'shelf bearer', stock: 'sawn-25x38', width: 38, thickness: 25 };

/*
 * Doors over half of each post less half a gap: from 710 + 1.5 to 1459 − 1.5 = 746; two and a gap of 3: (746 − 3)/2 = 371.5. From 15
 * above the floor to 3 under the top: 1047 − 15 = 1032. They are hung on site.
 */
const door = { code: 'DR', name: 'door', stock: 'mdf-18', length: 1032, width: 371.5, thickness: 18 };

/*
 * Top, front edge d 75, back edge 75 − 600 = −525. A from the wall: front 1963 + 75 = 2038, back 1963 − 525 = 1438. B from −75 and from
 * 525 to 1170 + 30 = 1200: 1275 and 675. Mitred 45° across its width, the front longer.
 */
const top = { code: 'TP', name: 'top', stock: 'oak-40', off: 1, width: 600, thickness: 40 };

export const FRONT: readonly ByHand[] = [
  { ...S1, ...skin, length: 691, on: '15 on left end' },
  { ...S2, ...skin, length: 1284, short: 1272, right: BEVEL },
  { ...S3, ...skin, length: 1182, short: 1170, left: BEVEL },

  { ...S1, ...board, off: 1, on: '15 on left long edge' },
  { ...A_SITE, ...board, off: 1 },
  { ...S2, ...board, off: 1 },
  { ...A_SITE, ...cornerBoard, edge: bevelled('right') },
  { ...B_SITE, ...cornerBoard, edge: bevelled('left') },
  { ...S3, ...board, off: 2 },

  { ...S1, ...block, off: 1, length: 125, on: '15 on left end' },
  { ...A_SITE, ...block, off: 1, length: 130 },
  { ...S2, ...block, off: 1, length: 130 },
  { ...A_SITE, ...cornerBlock, right: BEVEL },
  { ...B_SITE, ...cornerBlock, left: BEVEL },
  { ...S3, ...block, off: 1, length: 130 },
  { ...S3, ...block, off: 1, length: 150, short: 125, right: BEVEL },
  { ...S3, ...strip, code: 'BR', name: 'plinth return', off: 1, length: 100, short: 75, left: BEVEL },

  { ...S1, ...skirting, off: 1, length: 501 },
  { ...S2, ...skirting, off: 2, length: 501 },
  { ...S3, ...skirting, off: 2, length: 420 },

  { ...S1, ...member(371), off: 2 },
  { ...S1, ...member(790), off: 2 },
  { ...S2, ...member(371), off: 4 },
  { ...S2, ...member(790), off: 4 },
  { ...S3, ...member(290), off: 4 },
  { ...S3, ...member(790), off: 4 },

  { ...S1, ...bearer, off: 2, length: 612 },
  { ...S1, ...bearer, off: 4, length: 397 },
  { ...S1, code: 'SH', name: 'shelf', stock: 'mdf-18', off: 2, length: 610, width: 421, thickness: 18 },

  { ...A_SITE, ...door, off: 2 },
  { ...A_SITE, ...top, length: 2038, short: 1438, right: 'mitre 45.00° front edge', on: '15 on left end' },
  { ...B_SITE, ...top, length: 1275, short: 675, left: 'mitre 45.00° front edge' },
];

/** The holes in the skin, from its left and lower edge on its back: the socket in S2, 1680 − 691 and 400 − 5; the pipe in S3, 355 and 300 − 5. */
export const HOLES = {
  S2: { middle: [989, 395], size: [145, 85] },
  S3: { middle: [355, 295], size: [60, 60] },
} as const;
