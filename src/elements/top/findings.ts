import { tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Finding } from '../../vocabulary/finding';
import type { Rod, RodRun } from '../../vocabulary/rod';
import { type Block, type Jointed, nearest, type Reach } from './joints';

/** A top that reaches further than this behind what carries it wants support there (200–300 mm is usual for a free overhang; common practice, no source). */
const MOST_UNSUPPORTED = 300;

/** Whether the frame behind carries the top: its rails lie right under it. */
export const carried = ({ carcass, frameHeight }: Rod): boolean =>
  carcass !== undefined && Math.abs(carcass.high - frameHeight) < SAME_LENGTH;

/** The top must reach beyond everything in front of the frame, and over the returns; behind, something must carry it. */
export function cover(rod: Rod): readonly Finding[] {
  const reach = rod.depth - rod.top.overhang;
  const proud = Object.values(rod.layers).filter((l) => l.name !== 'top' && l.outer > rod.top.overhang);
  const worst = proud.sort((a, b) => b.outer - a.outer)[0];
  const free = reach - (rod.carcass && carried(rod) ? -rod.carcass.back : rod.timber.depth);
  const bare = rod.runs.filter((r) => r.jobIndex === null && r.length > reach + SAME_LENGTH);
  return [
    ...(worst ? [short(rod.top.overhang, worst.name, worst.outer)] : []),
    ...(free > MOST_UNSUPPORTED ? [unsupported(free)] : []),
    ...bare.map((r) => beyond(r, reach)),
  ];
}

const short = (value: number, layer: string, limit: number): Finding => ({
  severity: 'warn',
  rule: 'top-does-not-cover',
  subject: { path: '/unit/elements/top/overhang' },
  value,
  limit,
  message: `The top overhangs the frame by ${tenth(value)} mm; the ${layer} stands out ${tenth(limit)} mm.`,
  source: 'geometry of the layers',
  remedy: 'Increase the overhang.',
});

const beyond = ({ id, length }: RodRun, limit: number): Finding => ({
  severity: 'warn',
  rule: 'return-beyond-top',
  subject: { run: id, path: '/unit/depth' },
  value: length,
  limit,
  message: `The return is ${tenth(length)} mm long; behind the frame's face the top covers ${tenth(limit)} mm.`,
  source: 'geometry of the layers',
  remedy: 'Shorten the return or deepen the unit.',
});

export const squeezed = (run: RodRun, rod: Rod): Finding => ({
  severity: 'stop',
  rule: 'top-squeezed',
  subject: { run: run.id, path: '/unit/depth' },
  value: rod.depth,
  message: `The corners of run ${run.id} leave the top no full length at a depth of ${tenth(rod.depth)} mm: its ends meet before its edge.`,
  source: 'geometry of the corners',
  remedy: 'Lengthen the run, or make the top less deep. It is drawn as far as it goes.',
});

const unsupported = (value: number): Finding => ({
  severity: 'note',
  rule: 'top-unsupported',
  subject: { path: '/unit/depth' },
  value,
  limit: MOST_UNSUPPORTED,
  message: `The top reaches ${tenth(value)} mm behind what carries it; ${MOST_UNSUPPORTED} mm is the most for a free overhang.`,
  source: 'common practice, no source',
  remedy: 'Carry its back edge on cross frames, posts or a wall bearer.',
});

/** What is said of joints that come too near to something. */
export function crowdedJoints(
  run: RodRun,
  { at, clear }: Jointed,
  found: { readonly reach: Reach; readonly blocks: readonly Block[]; readonly asked: number; readonly longest: number },
): readonly Finding[] {
  if (clear === found.asked) return [];
  const near = nearest(at, found.reach, found.blocks);
  if (!near) return [];
  const long = tenth(found.reach.to - found.reach.from);
  const where = near.gap > 0 ? `${tenth(near.gap)} mm from ${near.what}` : `in ${near.what}`;
  return [
    {
      severity: clear === undefined ? 'stop' : 'warn',
      rule: 'top-joint-near',
      subject: { run: run.id, path: '/unit/elements/top/jointClear' },
      value: near.gap,
      limit: found.asked,
      message: `The top of run ${run.id}, ${long} mm long, can't be divided into lengths of ${tenth(found.longest)} mm or less with every joint ${tenth(found.asked)} mm clear of joins, openings, corners and ends. The joint at ${tenth(near.x)} mm lies ${where}.`,
      source: 'common practice, no source',
      remedy: `Move the join or opening, allow a longer length, or let joints come nearer. ${clear === undefined ? 'It is drawn divided evenly.' : 'It is drawn with the joints as clear as they can be.'}`,
    },
  ];
}
