import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';
import type { Scribe } from '../vocabulary/making';

/** An open joint under this at the floor is hidden by a bead of filler, mm (common practice, no source). */
const FILLER = 2;

/** Where the floor falls and nothing is left on at the lower edge to be scribed to it: what stays open under what stands on it. */
export function floorGap({ floorScribes = [] }: { readonly floorScribes?: readonly Scribe[] }): readonly Finding[] {
  return floorScribes.flatMap(({ where, run, most, left, x }): Finding[] => {
    const open = most - left;
    if (open <= FILLER) return [];
    const at = x === undefined ? '' : `, most at ${tenth(x)} mm along it`;
    const leftOn = left > 0 ? `${tenth(left)} mm is` : 'nothing is';
    return [
      {
        severity: 'warn',
        rule: 'floor-gap',
        subject: { run, path: '/survey/levels' },
        value: open,
        limit: FILLER,
        message: `${where.charAt(0).toUpperCase()}${where.slice(1)}: as much as ${tenth(open)} mm stays open below${at}. The floor falls, and ${leftOn} left on at the lower edge.`,
        source: 'survey: the floor below its highest point, from which the unit is levelled',
        remedy: `Leave ${Math.ceil(most)} mm on at the lower edge and scribe it to the floor, or cover the gap with a quadrant or bead.`,
      },
    ];
  });
}
