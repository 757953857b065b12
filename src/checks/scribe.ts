import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';
import type { Scribe } from '../vocabulary/making';

/** A gap under this is hidden by a bead of filler, mm (common practice, no source). */
const FILLER = 2;

/** Walls that are further out than the stuff left on to be scribed to them, by more than filler hides. */
export function scribeEnough({ scribes }: { readonly scribes: readonly Scribe[] }): readonly Finding[] {
  return scribes.flatMap(({ where, run, most, left }): Finding[] => {
    if (most < left + FILLER) return [];
    return [
      {
        severity: 'warn',
        rule: 'scribe-too-small',
        subject: { run, path: '/fit/scribe' },
        value: most,
        limit: left,
        message: `The wall leaves as much as ${tenth(most)} mm to scribe (${where}); ${tenth(left)} mm is left on for it.`,
        source: 'survey: lean over the height, out of square over the depth',
        remedy: `Leave at least ${Math.ceil(most)} mm on to be scribed, or fix a packing piece to the wall.`,
      },
    ];
  });
}
