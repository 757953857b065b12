import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';
import type { Rod } from '../vocabulary/rod';
import type { Section } from '../vocabulary/section';
import { levelFloor } from './floor';
import { sawTilt } from './saw-tilt';
import { longestStock } from './stock-length';
import { outOfSquare } from './walls';

/** What a check may look at. */
export interface Checked {
  readonly job: Job;
  readonly rod: Rod;
  readonly parts: readonly Part[];
  readonly sections: readonly Section[];
}

/** Every check, in the order in which its findings are shown among equals. A new check is a file and a line here. */
const CHECKS: readonly ((checked: Checked) => readonly Finding[])[] = [longestStock, sawTilt, outOfSquare, levelFloor];

export const checkAll = (checked: Checked): readonly Finding[] => CHECKS.flatMap((check) => check(checked));
