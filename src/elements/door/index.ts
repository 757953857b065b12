import type { Room } from '../../vocabulary/room';
import { fields } from './fields';
import { marks } from './marks';
import { parts } from './parts';

/** Plain doors and drawer fronts at the back of a bay, with the ironmongery they ask for. */
export const door: Room<typeof fields> = {
  kind: 'door',
  label: 'Doors and drawers',
  group: 'behind',
  fields,
  demands: () => ({}),
  backing: () => [],
  parts,
  marks,
};
