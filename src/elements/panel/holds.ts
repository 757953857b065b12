import type { Hold } from '../../vocabulary/part';

/** How mouldings and rails are held on the skin; `through` them, mm. */
export const onSkin = (through: number): readonly Hold[] => [
  {
    by: 'brad',
    through,
    where: { at: 'length', centres: 250 },
    glue: 'grab',
    rule: 'flat mouldings on the skin at 200–300, pins and adhesive (trade, from memory)',
  },
];
