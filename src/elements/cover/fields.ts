import { stock } from '../../base/fields';

/** Strips over joins that no pillar covers. */
export const fields = {
  sheet: stock({
    of: 'sheet',
    label: 'Cover strip sheet',
    default: 'mdf-6',
    help: 'A strip of it is fixed over a join that lies behind no pillar. Thin, and thinner than the pillars, is usual.',
  }),
} as const;
