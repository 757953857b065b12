/*
 * Guillotine cut trees of all sheets in one block of memory, so that a step of the search makes no garbage and can be taken back. A node is
 * sixteen numbers; its own number is its place, shifted.
 *
 * A node that is cut has parts of one way which fill it, at most one of them left over; the parts of a part are cut the other way. A root
 * is a sheet.
 */

/** A node's fields begin at its number shifted by so many bits. */
export const SHIFT = 4;

export const PARENT = 0;
/** First part. */
export const FIRST = 1;
/** Neighbours among the parts. */
export const NEXT = 2;
export const PREVIOUS = 3;
export const LENGTH = 4;
export const WIDTH = 5;
/** Number of a kind: a piece; or one of `LEFT`, `ALONG`, `ACROSS`. */
export const WHAT = 6;
export const ROOT = 7;
/** How many nodes that are cut it lies in: the stage of the cuts that part it from its neighbours. */
export const DEPTH = 8;
/** The way of the cuts of its parent. */
export const WITHIN = 9;
/** Its place among all that is left over, or among all pieces placed. */
export const PLACE = 10;
/** Of a piece: lies turned (1). */
export const TURNED = 11;
/** Of a node that is cut: the part of it that is left over. */
export const REST = 11;
/** Of a root: number of the sheet, pieces on it, its place among the roots. */
export const SHEET = 12;
export const ON = 13;
export const ROOT_PLACE = 14;

export const LEFT = -1;
export const ALONG = -2;
export const ACROSS = -3;
/** No node. */
export const NONE = -1;
