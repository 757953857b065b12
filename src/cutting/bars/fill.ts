import type { Times } from './knapsack';

/** Fills one bar with some of what is left of each kind, the kinds sorted by size, the largest first. */
export type Fill = (sizes: ArrayLike<number>, left: ArrayLike<number>, capacity: number) => Times;

/** As many as fit of the largest, then of the next: over and over, this is first fit decreasing. */
export const greedyFill: Fill = (sizes, left, capacity) => {
  const times: [number, number][] = [];
  let room = capacity;
  for (let kind = 0; kind < sizes.length; kind++) {
    const n = Math.min(left[kind], Math.floor(room / sizes[kind]));
    if (n <= 0) continue;
    times.push([kind, n]);
    room -= n * sizes[kind];
  }
  return times;
};

/**
 * The fullest bar that begins with the largest kind that fits, found within so many nodes of a depth-first search (minimum bin slack, Gupta &
 * Ho 1999, with the first piece fixed as by Fleszar & Hindi 2002).
 */
export const closestFill = (nodes: number): Fill => searchedFill(nodes, true);

/** The fullest bar, found within so many nodes. */
export const fullestFill = (nodes: number): Fill => searchedFill(nodes, false);

function searchedFill(nodes: number, leads: boolean): Fill {
  return (sizes, left, capacity) => {
    const live: number[] = [];
    for (let kind = 0; kind < sizes.length; kind++) if (left[kind] > 0 && sizes[kind] <= capacity) live.push(kind);
    if (live.length === 0) return [];
    const rest = live.map((kind, i) => left[kind] - (leads && i === 0 ? 1 : 0));
    const beyond = new Float64Array(live.length + 1);
    for (let i = live.length - 1; i >= 0; i--) beyond[i] = beyond[i + 1] + rest[i] * sizes[live[i]];
    const least = sizes[live[live.length - 1]];
    // What is chosen, as it was chosen: places in `live` and numbers in turn.
    const now: number[] = [];
    let best: number[] = [];
    let bestRoom = leads ? capacity - sizes[live[0]] : capacity;
    let budget = nodes;
    const search = (from: number, room: number): void => {
      if (room < bestRoom) {
        bestRoom = room;
        best = now.slice();
      }
      if (room < least) return;
      for (let i = from; i < live.length && bestRoom > 0 && budget > 0; i++) {
        if (room - beyond[i] >= bestRoom) return;
        const size = sizes[live[i]];
        if (size > room) continue;
        for (let n = Math.min(rest[i], Math.floor(room / size)); n > 0 && bestRoom > 0 && budget > 0; n--) {
          budget--;
          now.push(i, n);
          search(i + 1, room - n * size);
          now.length -= 2;
        }
      }
    };
    search(0, bestRoom);
    const times: [number, number][] = leads ? [[live[0], 1]] : [];
    for (let k = 0; k < best.length; k += 2) {
      if (leads && best[k] === 0) times[0][1] += best[k + 1];
      else times.push([live[best[k]], best[k + 1]]);
    }
    return times;
  };
}
