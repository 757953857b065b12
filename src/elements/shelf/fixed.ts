import { crossStick, flatBoard } from '../../base/box';
import { rectangle } from '../../base/outline';
import { lying } from '../../base/stuff';
import type { Timber } from '../../vocabulary/book';
import type { Hold, PartDraft } from '../../vocabulary/part';
import { draftOf } from './draft';
import type { Decisions, Laid } from './lay';

/**
 * Shelves that rest on bearers: one along the back of the front frame, one at each side from it to the rear face of the post. A side bearer
 * is screwed to the post and to the end of the one in front. The bay's middle has no bearer: what a shelf bends is another matter.
 */
export function fixedShelves(laid: Laid, { sheet, bearer }: Decisions, timber: Timber): readonly PartDraft[] {
  const { run, bay, carcass, from, to, back, front, thickness } = laid;
  const { width: high, thickness: thick } = timber;
  const section = rectangle(high, thick);
  const behind = carcass.front - thick;
  return laid.undersides.flatMap((z, k) => {
    const shelf = `shelf ${k + 1}`;
    const side = (where: 'left' | 'right'): PartDraft => {
      const [start, end] = where === 'left' ? [bay.from, bay.from + thick] : [bay.to - thick, bay.to];
      const box = { from: start, to: end, back, front: behind, low: z - high, high: z };
      return draftOf(
        laid,
        'SB',
        'shelf bearer',
        bearer,
        `${shelf}, ${where}`,
        crossStick(run, box, section, where === 'left' ? 1 : -1),
        {
          finish: 'bare',
          from: 'framed',
          holds: sideHolds(thick),
        },
      );
    };
    const along = lying(run, section, { from: bay.from, to: bay.to, d: behind, z: z - high });
    return [
      draftOf(laid, 'SB', 'shelf bearer', bearer, `${shelf}, front`, along, {
        finish: 'bare',
        from: 'framed',
        holds: frontHolds(thick),
      }),
      side('left'),
      side('right'),
      draftOf(
        laid,
        'SH',
        'shelf',
        sheet,
        shelf,
        flatBoard(run, { from, to, back, front, low: z, high: z + thickness }),
        { holds: shelfHolds(thickness) },
      ),
    ];
  });
}

const frontHolds = (through: number): readonly Hold[] => [
  {
    by: 'screw',
    through,
    where: { at: 'length', centres: 300 },
    rule: 'shelf bearer on studs and noggins: a screw every 300 mm (common practice, no source)',
  },
];

const sideHolds = (through: number): readonly Hold[] => [
  {
    by: 'screw',
    through,
    where: { at: 'all', each: 2 },
    rule: 'shelf bearer on a post: 2 screws (common practice, no source)',
  },
  {
    by: 'screw',
    through,
    where: { at: 'all', each: 1 },
    endGrain: true,
    rule: 'shelf bearer to the end of its neighbour: 1 screw (common practice, no source)',
  },
];

const shelfHolds = (through: number): readonly Hold[] => [
  {
    by: 'screw',
    through,
    where: { at: 'all', each: 6 },
    rule: 'shelf on its bearers: 2 screws into each, countersunk (common practice, no source)',
  },
];
