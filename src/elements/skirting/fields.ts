import { stock } from '../../base/fields';

/** Skirting between the plinth blocks, ready moulded. */
export const fields = {
  moulding: stock({
    of: 'moulding',
    label: 'Skirting',
    default: 'skirting-ogee-120',
    help: 'Not thicker than the blocks, or its end grain shows.',
  }),
} as const;
