import { SAME_LENGTH } from '../base/tolerance';
import type { CarcassWorktop } from '../vocabulary/carcass';
import type { Finding } from '../vocabulary/finding';
import type { Demands, FrameTimber } from '../vocabulary/rod';
import { badHeight, LEAST_OVER, postsMoved } from './carcass-findings';

/** What the front gives the frame behind it. `depth`: of the top, from its front edge to its back edge. */
export interface Before {
  readonly timber: FrameTimber;
  readonly frameLow: number;
  readonly frameHeight: number;
  readonly overhang: number;
  readonly depth: number;
}

/** A rail from front to back is at least this long beside the post, and so much stays clear between two rails (common practice, no source). */
export const LEAST_RAIL = 100;

/** A worktop, the rear face of the posts that go with it, and whether they stop under it. */
export interface LaidWorktop {
  readonly worktop: CarcassWorktop;
  readonly posts: number;
  readonly under: boolean;
}

/** Rear face of posts that carry the top. */
export const underTop = ({ setBack }: NonNullable<Demands['carcass']>, { overhang, depth }: Before): number =>
  overhang - depth + setBack;

/**
 * Where the worktop's rear edge and the posts lie. The top's posts go through where the top reaches as far back as the worktop; else they
 * stop under the worktop.
 */
export function worktopOf(
  asked: NonNullable<Demands['carcass']>,
  wished: Demands['worktop'],
  before: Before,
): { readonly laid?: LaidWorktop; readonly findings: readonly Finding[] } {
  if (!wished) return { findings: [] };
  const edge = -before.timber.depth - wished.depth;
  const under = edge < before.overhang - before.depth - SAME_LENGTH;
  const posts = under ? edge + wished.behind : Math.min(underTop(asked, before), edge);
  const floor = Math.max(asked.toeHeight, before.frameLow) + asked.depth;
  const least = floor + LEAST_RAIL + asked.depth + wished.thickness;
  const most = before.frameHeight - (under ? 0 : asked.depth) - LEAST_OVER;
  const { stock, thickness } = wished;
  const wrong = wished.high < least - SAME_LENGTH ? 'low' : wished.high > most + SAME_LENGTH ? 'high' : undefined;
  const nearest = wrong === 'low' ? least : most;
  const refused = wrong ? [badHeight(wished.high, wrong, nearest)] : [];
  if (wrong && least > most) return { findings: refused };
  // What stands behind stays where the nearest height that would do has it: nothing else moves for a wrong figure.
  const worktop = {
    stock,
    high: wrong ? nearest : wished.high,
    thickness,
    edge,
    ...(wrong ? { leftOut: true as const } : {}),
  };
  const moved = !under && posts < underTop(asked, before) - SAME_LENGTH;
  return {
    laid: { worktop, posts, under },
    findings: [
      ...refused,
      ...(moved ? [postsMoved(asked.setBack, posts - (before.overhang - before.depth), posts)] : []),
    ],
  };
}
