import { stock } from '../../base/fields';

/** A moulding under the top. Between pillars, so not further out than their boards (common practice, no source). */
export const fields = {
  moulding: stock({
    of: 'moulding',
    label: 'Moulding under the top',
    default: '',
    optional: true,
    help: 'Between the pillars, tight under the top; mitred at a corner without pillar.',
  }),
} as const;
