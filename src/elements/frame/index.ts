import type { Room } from '../../vocabulary/room';
import { fields } from './fields';
import { marks } from './marks';
import { parts } from './parts';

/** The softwood front frame: plates, studs, noggins, corner fillets. It provides the backing that others ask for. */
export const frame: Room<typeof fields> = {
  kind: 'frame',
  label: 'Frame',
  group: 'frame',
  layer: 'frame',
  fields,
  demands({ timber, lay, centres, method, datum, nogginRows }, book) {
    const { width, thickness } = book.item('timber', timber);
    const [face, depth] = lay === 'edge' ? [thickness, width] : [width, thickness];
    return { timber: { stock: timber, face, depth, centres, method, datum, nogginRows } };
  },
  backing: () => [],
  parts,
  marks,
};
