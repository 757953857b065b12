import type { Design } from '../vocabulary/design';
import type { SiteWork } from '../vocabulary/making';
import { floorOf } from './floor';
import { packersOf } from './packers';
import { floorScribes, notchesOf, wallScribes } from './scribes';
import type { Touching } from './touching';

/** What waits on site, from the survey: packers under the posts, what is scribed, what is notched over skirting that stays. */
export function siteOf({ job, rod, parts }: Pick<Design, 'job' | 'rod' | 'parts'>, touching: Touching): SiteWork {
  const floor = floorOf(job.survey.levels, rod);
  return {
    packers: floor ? packersOf(parts, rod, floor, touching) : [],
    scribes: [...wallScribes(job, rod), ...(floor ? floorScribes(parts, rod, floor) : [])],
    notches: notchesOf(job, rod, parts),
    notes: floor?.notes ?? [],
  };
}
