import { CLEAR_OF_HOLE } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
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
  /** Its own timber keeps clear of every opening in the front. */
  backing: (_, { openings }) =>
    openings
      .filter((o) => o.through === 'front')
      .map(
        (o): Backing => ({
          kind: 'keep-out',
          run: o.run,
          from: o.from - CLEAR_OF_HOLE,
          to: o.to + CLEAR_OF_HOLE,
          low: o.low - CLEAR_OF_HOLE,
          high: o.high + CLEAR_OF_HOLE,
          reason: `opening ${o.index + 1}${o.name ? ` (${o.name})` : ''}`,
          opening: o.index,
        }),
      ),
  parts,
  marks,
};
