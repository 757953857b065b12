import type { Finding } from '../../vocabulary/finding';
import type { Gap } from './gap';

/** Where something hinged may fall. */
export const FINGERS =
  'A flap or gate that falls to crushes fingers: a stay must hold the flap open by itself, and a catch keep it shut. Where the public pass, or on an escape route, local rules come first.';

/** Where a gap is, in words. */
export const between = ({ left, right }: Gap): string => `between runs ${left.id} and ${right.id}`;
export const subjectOf = ({ left }: Gap): Finding['subject'] => ({
  run: left.id,
  ...(left.jobIndex === null ? {} : { path: `/unit/plan/runs/${left.jobIndex}/flap` }),
});
