/*
 * The door to cutting for who has no design at hand: the worker, a problem typed or read from a file.
 */

export {
  changes,
  movePiece,
  type OnBar,
  type OnSheet,
  restOf,
  type ToBar,
  type ToSheet,
  withLocked,
} from './cutting/by-hand/index';
export { isSlip, largeEnough, leastSides } from './cutting/least-offcut';
export { type LpSolver, loadLp } from './cutting/lp';
export {
  checkCutProblem,
  type ListDefaults,
  type ListRead,
  type ProblemRead,
  readCutList,
  readCutProblem,
  readRack,
} from './cutting/read/index';
export { caresOf, cutsOf, type PlannedBatch, reorderTogether, settingsOf } from './cutting/set-ups/index';
export { anglesOf, endsOf, planeAt } from './cutting/set-ups/planes';
export { stagesWords } from './cutting/set-ups/stages';
export { type CutMeans, firstPlan, startCutting } from './cutting/start';
export { type Total, totalOf } from './cutting/total';
