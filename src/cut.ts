/*
 * The door to cutting for who has no design at hand: the worker, a problem typed or read from a file.
 */
export { type LpSolver, loadLp } from './cutting/lp';
