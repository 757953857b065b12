import type { Hold } from '../../vocabulary/part';

/** A skewed screw enters about a third of its length back from the end, so it goes through this much before it meets the base, mm (common practice, no source). */
const SKEW = 25;

/** Skewed screws, one from each side: at both ends of a rail, or where a post stands or meets its rails (5.0 × 65–75, as noggins; trade, from memory). */
export const skewed = (at: 'ends' | 'foot' | 'rails'): Hold => ({
  by: 'screw',
  through: SKEW,
  where: at === 'ends' ? { at: 'ends', each: 2 } : { at: 'all', each: 2 },
  endGrain: false,
  rule: `skewed, one from each side, ${AT[at]} (5.0 × 65–75; trade, from memory)`,
});

const AT = { ends: 'at each end', foot: 'where it stands or hangs', rails: 'into the rail at its foot' } as const;

/** Through a post, or a rail, into the end grain of what stops beside it (5.0 × 100, 2 a joint, as a stud through its plate; trade, from memory). */
export const throughPost = (thickness: number): Hold => ({
  by: 'screw',
  through: thickness,
  where: { at: 'ends', each: 2 },
  endGrain: true,
  rule: 'through the post or rail beside it into its end, 2 each end (5.0 × 100; trade, from memory)',
});

/** Along the back of the front frame, two screws into each stud. */
export const toStuds = (thickness: number, each: number): Hold => ({
  by: 'screw',
  through: thickness,
  where: { at: 'all', each },
  rule: '2 into each stud behind which it lies (common practice, no source)',
});

/** The rear posts of two sections, face to face at a join (M8, two of them; trade, from memory). */
export const bolted = (thickness: number): Hold => ({
  by: 'bolt',
  through: thickness,
  where: { at: 'all', each: 2 },
  rule: 'at the join: bolted to the next section’s post (M8; trade, from memory)',
});
