import { toStep } from '../base/round';
import { SAME_LENGTH } from '../base/tolerance';
import type { RunFraming } from '../vocabulary/backing';
import type { Spacer } from '../vocabulary/making';
import type { Rod } from '../vocabulary/rod';

/** A clear gap in a frame. */
interface ClearGap {
  readonly length: number;
  readonly where: string;
}

/** A gap narrower than this is no gap: the timbers stand tight (common practice, no source). */
const TIGHT = 0.5;

/**
 * The blocks against which the frames are built, shortest first: one for each different clear gap between studs, under the lowest
 * noggin, from noggin to noggin, and above the highest. Gaps that are cut to the same shop length are served by one block.
 */
export function spacersOf(framing: readonly RunFraming[], rod: Rod, step: number): readonly Spacer[] {
  const gaps = framing.flatMap((run) => gapsOf(run, rod)).sort((a, b) => a.length - b.length);
  const spacers: { length: number; shopLength: number; times: number; last: number; where: string[] }[] = [];
  for (const { length, where } of gaps) {
    const shopLength = toStep(length, step);
    const known = spacers.at(-1);
    if (known && (known.shopLength === shopLength || length - known.last <= SAME_LENGTH)) {
      known.times++;
      known.last = length;
      if (!known.where.includes(where)) known.where.push(where);
    } else spacers.push({ length, shopLength, times: 1, last: length, where: [where] });
  }
  return spacers.map(({ length, shopLength, times, where }) => ({
    length,
    shopLength,
    stock: rod.timber.stock,
    times,
    where,
  }));
}

/** The clear gaps of one run's frame. */
function gapsOf({ run, studs, noggins }: RunFraming, rod: Rod): readonly ClearGap[] {
  const clear = { low: rod.frameLow + rod.timber.face, high: rod.frameHeight - rod.timber.face };
  const between = studs.slice(1).map((stud, i) => ({ from: studs[i].to, to: stud.from }));
  return between
    .flatMap(({ from, to }): ClearGap[] => {
      const own = noggins
        .filter((n) => n.from < to - SAME_LENGTH && n.to > from + SAME_LENGTH)
        .sort((a, b) => a.low - b.low);
      const up = own.map((n, i): ClearGap => {
        const below = own[i - 1];
        return below
          ? { length: n.low - below.high, where: `from noggin to noggin, run ${run}` }
          : { length: n.low - clear.low, where: `under the lowest noggin, run ${run}` };
      });
      const highest = own.at(-1);
      const above = highest
        ? [{ length: clear.high - highest.high, where: `above the highest noggin, run ${run}` }]
        : [];
      return [{ length: to - from, where: `between studs, run ${run}` }, ...up, ...above];
    })
    .filter(({ length }) => length >= TIGHT);
}
