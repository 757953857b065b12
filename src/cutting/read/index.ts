export { type ListDefaults, type ListRead, readCutList } from './list';
export { checkCutProblem, type ProblemRead, readCutProblem } from './problem';
export { readRack } from './rack';
