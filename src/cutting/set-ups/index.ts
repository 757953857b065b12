export { caresOf } from './care';
export { cutsOf } from './cuts';
export { reorderForSettings, reorderTogether } from './reorder';
export type { PlannedBatch } from './saws';
export { settingsOf } from './settings';
