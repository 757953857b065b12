export type { Answer, Refusal } from './answer';
export { type Changes, changes } from './changes';
export { movePiece } from './move';
export type { OnBar, ToBar } from './move-bar';
export type { MoveOptions, OnSheet, ToSheet } from './move-sheet';
export { type Rest, restOf, withLocked } from './rest';
export { type TreeTerms, treeOf } from './tree';
