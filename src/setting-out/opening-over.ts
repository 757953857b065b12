import { tenth } from '../base/tenth';
import { SAME_LENGTH } from '../base/tolerance';
import type { BackBay, Carcass } from '../vocabulary/carcass';
import type { Finding } from '../vocabulary/finding';
import type { BayPurpose } from '../vocabulary/job';
import type { PlacedOpening } from '../vocabulary/opening';
import type { Rod, RodRun } from '../vocabulary/rod';
import { nameOf } from './opening-findings';

/** What fills a bay, so that what comes down into it meets something; and what can be done about that. */
const FILLED: Partial<Readonly<Record<BayPurpose, { readonly has: string; readonly remedy: string }>>> = {
  shelves: {
    has: 'shelves: what comes through it meets them',
    remedy: 'Notch the shelves by hand round what comes down',
  },
  drawers: {
    has: 'drawers: what comes through it meets them',
    remedy: 'Make the drawer boxes by hand so that they pass what comes down',
  },
  appliance: {
    has: 'an appliance: what comes through it meets that',
    remedy: 'Lead what comes down past the appliance, clear of its air',
  },
};

/** Openings through the top over a bay that is filled: what comes through them has to go somewhere. */
export function overBays({ runs, carcass, top }: Rod, placed: readonly PlacedOpening[]): readonly Finding[] {
  if (!carcass) return [];
  const [back, front] = reachOf(carcass);
  return placed.flatMap((opening) => {
    if (opening.through !== 'top') return [];
    // Through the top heights are distances back from its front edge.
    const [rear, fore] = [top.overhang - opening.high, top.overhang - opening.low];
    if (rear >= front - SAME_LENGTH || fore <= back + SAME_LENGTH) return [];
    return runs
      .filter(({ id }) => id === opening.run)
      .flatMap((run) => run.backBays.flatMap((bay) => over(opening, run, bay)));
  });
}

/** From where to where what fills a bay lies open to the top: not where a worktop lies between. */
const reachOf = ({ back, front, worktop }: Carcass): readonly [number, number] => [
  back,
  worktop ? Math.min(front, worktop.edge) : front,
];

function over(opening: PlacedOpening, run: RodRun, { bay, wish, from, to }: BackBay): readonly Finding[] {
  const filled = wish && FILLED[wish.purpose];
  const shared = Math.min(opening.to, to) - Math.max(opening.from, from);
  if (!filled || bay === undefined || shared <= SAME_LENGTH) return [];
  const { index } = opening;
  return [
    {
      severity: 'note',
      rule: 'opening-over-bay',
      subject: { run: run.id, path: `/unit/openings/${index}` },
      value: shared,
      limit: 0,
      message: `${nameOf(opening, index)} in run ${run.id} lies over bay ${bay + 1} by ${tenth(shared)} mm, which is to have ${filled.has}.`,
      source: 'geometry of the setting-out',
      remedy: `${filled.remedy}, or move the opening over another bay.`,
    },
  ];
}
