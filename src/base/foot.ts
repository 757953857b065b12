/** What is known of the foot of a front: named heights above the floor, and where its frame begins, mm. */
export interface Foot {
  readonly heights: Readonly<Record<string, number>>;
  readonly frameLow: number;
}

/** Whether one board runs along the whole foot instead of skirting between blocks: a plinth that goes through, or one that is kicked. */
export const runsThrough = ({ heights, frameLow }: Foot): boolean => heights.plinthRuns === 1 || frameLow > 0;

/** Upper edge of what lies along the foot of a bay, mm above the floor: of the skirting, or of the plinth that runs through. */
export const footOf = (foot: Foot): number =>
  runsThrough(foot) ? Math.max(foot.heights.plinth ?? 0, foot.frameLow) : (foot.heights.skirting ?? 0);

/** Between two heights something at a pillar stands into the bays beside it by `by`, mm. */
export interface IntoBay {
  readonly low: number;
  readonly high: number;
  readonly by: number;
}

/** What stands into a bay beside a pillar: its base and its cap, where it has them. */
export function intoBays({ heights, frameHeight }: Foot & { readonly frameHeight: number }): readonly IntoBay[] {
  const { plinth = 0, baseHeight = 0, baseOverhang = 0, capHeight = 0, capOverhang = 0 } = heights;
  return [
    { low: plinth, high: plinth + baseHeight, by: baseOverhang },
    { low: frameHeight - capHeight, high: frameHeight, by: capOverhang },
  ].filter(({ low, high, by }) => high > low && by > 0);
}

/** How far what stands into the bays reaches there between two heights, mm. */
export function reachBetween(there: readonly IntoBay[], low: number, high: number): number {
  let reach = 0;
  for (const z of there) if (z.low < high && z.high > low) reach = Math.max(reach, z.by);
  return reach;
}
