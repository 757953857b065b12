import type { Ends } from './ends';

/** Pieces in a row: the pose of each, and all gaps between them, mm. */
export interface Row {
  readonly poses: readonly number[];
  readonly gaps: number;
}

/** Places in the table of an exact search; beyond, pieces are laid one by one to the best neighbour. */
const MOST_PLACES = 30_000;

/** Orders pieces on a bar, of each class of ends so many, that the gaps between them are least. Answers are remembered. */
export function orderer(ends: Ends): (counts: readonly number[]) => Row {
  const known = new Map<string, Row>();
  return (counts) => {
    const key = counts.join();
    let row = known.get(key);
    if (!row) {
      const places = counts.reduce((all, n) => all * (n + 1), ends.poses.length);
      row = places <= MOST_PLACES ? exact(ends, counts) : greedy(ends, counts);
      known.set(key, row);
    }
    return row;
  };
}

/** Dynamic programming over how many of each class lie already and which pose came last (Held & Karp 1962, over classes). */
function exact({ classes, gaps, poses }: Ends, counts: readonly number[]): Row {
  const all = counts.reduce((sum, n) => sum + n, 0);
  const strides: number[] = [];
  let states = 1;
  for (const n of counts) {
    strides.push(states);
    states *= n + 1;
  }
  const width = poses.length;
  const least = new Float64Array(states * width).fill(Number.POSITIVE_INFINITY);
  const before = new Int32Array(states * width).fill(-1);
  for (let state = 1; state < states; state++) {
    for (let c = 0; c < counts.length; c++) {
      if (Math.floor(state / strides[c]) % (counts[c] + 1) === 0) continue;
      const earlier = state - strides[c];
      for (const pose of classes[c].poses) {
        const at = state * width + pose;
        if (earlier === 0) least[at] = 0;
        else
          for (let last = 0; last < width; last++) {
            const sum = least[earlier * width + last] + gaps[last][pose];
            if (sum < least[at] - 1e-12) {
              least[at] = sum;
              before[at] = last;
            }
          }
      }
    }
  }
  const classOf = classOfPose(classes, width);
  const row: number[] = [];
  let state = states - 1;
  let pose = leastAt(least, state * width, width);
  const total = all === 0 ? 0 : least[state * width + pose];
  while (state > 0) {
    row.push(pose);
    const last = before[state * width + pose];
    state -= strides[classOf[pose]];
    pose = last;
  }
  return { poses: row.reverse(), gaps: total };
}

/** From every pose in turn, always on to the nearest; the best of these rows. */
function greedy({ classes, gaps, poses }: Ends, counts: readonly number[]): Row {
  const classOf = classOfPose(classes, poses.length);
  let best: Row | undefined;
  for (let start = 0; start < poses.length; start++) {
    if (counts[classOf[start]] === 0) continue;
    const left = [...counts];
    const row = [start];
    left[classOf[start]]--;
    let sum = 0;
    for (let last = start; ; ) {
      let next = -1;
      for (let pose = 0; pose < poses.length; pose++)
        if (left[classOf[pose]] > 0 && (next < 0 || gaps[last][pose] < gaps[last][next])) next = pose;
      if (next < 0) break;
      sum += gaps[last][next];
      left[classOf[next]]--;
      row.push(next);
      last = next;
    }
    if (!best || sum < best.gaps) best = { poses: row, gaps: sum };
  }
  return best ?? { poses: [], gaps: 0 };
}

function classOfPose(classes: Ends['classes'], width: number): Int32Array {
  const classOf = new Int32Array(width);
  for (let c = 0; c < classes.length; c++) for (const pose of classes[c].poses) classOf[pose] = c;
  return classOf;
}

function leastAt(values: Float64Array, from: number, width: number): number {
  let best = 0;
  for (let i = 1; i < width; i++) if (values[from + i] < values[from + best]) best = i;
  return best;
}
