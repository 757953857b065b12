import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Scribe } from '../vocabulary/making';
import type { Part } from '../vocabulary/part';
import type { Rod } from '../vocabulary/rod';
import type { Join, Section } from '../vocabulary/section';
import { boltRoom } from './bolts';
import { carried, looseParts } from './carry';
import { levelFloor } from './floor';
import { floorGap } from './floor-gap';
import { openEnds } from './free-end';
import { sawTilt } from './saw-tilt';
import { scribeEnough } from './scribe';
import { longestStock } from './stock-length';
import { outOfSquare } from './walls';

/** What a check may look at. */
export interface Checked {
  readonly job: Job;
  readonly rod: Rod;
  readonly parts: readonly Part[];
  readonly sections: readonly Section[];
  /** What is to be scribed to the walls. */
  readonly scribes: readonly Scribe[];
  /** What is to be scribed to the floor, where it was surveyed. */
  readonly floorScribes?: readonly Scribe[];
  readonly joins?: readonly Join[];
}

/** Every check, in the order in which its findings are shown among equals. A new check is a file and a line here. */
const CHECKS: readonly ((checked: Checked) => readonly Finding[])[] = [
  carried,
  looseParts,
  longestStock,
  sawTilt,
  outOfSquare,
  scribeEnough,
  levelFloor,
  floorGap,
  boltRoom,
  openEnds,
];

export const checkAll = (checked: Checked): readonly Finding[] => CHECKS.flatMap((check) => check(checked));
