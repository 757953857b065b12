import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Rod } from '../vocabulary/rod';

/** A floor this near to level needs no packing, mm (common practice, no source). */
const LEVEL_ENOUGH = 2;

/** How much packing the surveyed floor needs: the unit is levelled from the highest point. */
export function levelFloor({ job, rod }: { readonly job: Job; readonly rod: Rod }): readonly Finding[] {
  const heights = job.survey.levels.map((l) => l.height);
  if (heights.length < 2) return [];
  const fall = Math.max(...heights) - Math.min(...heights);
  if (fall <= LEVEL_ENOUGH) return [];
  const high = job.survey.levels[heights.indexOf(Math.max(...heights))];
  return [
    {
      severity: 'note',
      rule: 'floor-out-of-level',
      subject: { path: '/survey/levels' },
      value: fall,
      limit: LEVEL_ENOUGH,
      message: `The floor falls ${tenth(fall)} mm from its highest point, ${tenth(high.along)} mm along run ${rod.runs.find((r) => r.jobIndex === high.run - 1)?.id ?? high.run}. Heights are worked from that point.`,
      source: 'survey',
      remedy: `Pack the plates up by as much as ${tenth(fall)} mm at the lowest point.`,
    },
  ];
}
