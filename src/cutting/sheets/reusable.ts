import type { Scaled } from './scaled';

/** Whether a cell left over is large enough for the rack. */
export function isReusable(length: number, width: number, { leastOffcut: [longer, shorter] }: Scaled): boolean {
  return Math.max(length, width) >= longer && Math.min(length, width) >= shorter;
}
