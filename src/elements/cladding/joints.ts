/** Places where a skin may be cut, and how it is cut with the least harm. */
export interface Cut {
  readonly x: number;
  readonly behindPillar: boolean;
}

/**
 * Chooses where to cut a skin from `from` to `to` so that no piece is longer than `longest`: as few joints in a painted field as
 * can be, then as few joints, then pieces as even as can be. Undefined when the places don't allow it. mm along the run.
 */
export function chooseCuts(
  from: number,
  to: number,
  longest: number,
  places: readonly Cut[],
): readonly Cut[] | undefined {
  const nodes: readonly Cut[] = [
    { x: from, behindPillar: true },
    ...[...places].filter((p) => p.x > from && p.x < to).sort((a, b) => a.x - b.x),
    { x: to, behindPillar: true },
  ];
  const best: ({ readonly cost: Cost; readonly back: number } | undefined)[] = [{ cost: [0, 0, 0], back: -1 }];
  for (let j = 1; j < nodes.length; j++) {
    for (let i = j - 1; i >= 0; i--) {
      const length = nodes[j].x - nodes[i].x;
      if (length > longest) break;
      const before = best[i];
      if (!before) continue;
      const last = j === nodes.length - 1;
      const cost: Cost = [
        before.cost[0] + Number(!last && !nodes[j].behindPillar),
        before.cost[1] + 1,
        before.cost[2] + length * length,
      ];
      const now = best[j];
      if (!now || less(cost, now.cost)) best[j] = { cost, back: i };
    }
  }
  if (!best[nodes.length - 1]) return undefined;
  const cuts: Cut[] = [];
  for (let j = best[nodes.length - 1]?.back ?? 0; j > 0; j = best[j]?.back ?? 0) cuts.unshift(nodes[j]);
  return cuts;
}

/** Joints in a field; pieces; sum of squared lengths (least when even). */
type Cost = readonly [number, number, number];

/** Sums of squared lengths nearer than this are the same, mm²: on sheets of 3 m less than a thousandth of a millimetre. */
const SAME_SQUARES = 1;

const less = (a: Cost, b: Cost): boolean =>
  a[0] - b[0] || a[1] - b[1] ? a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]) : a[2] < b[2] - SAME_SQUARES;
