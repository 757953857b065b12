import { SAME_LENGTH } from '../../src/base/tolerance';
import type { Design } from '../../src/vocabulary/design';
import type { Mark, RodRun } from '../../src/vocabulary/rod';
import type { Block } from './strips';

/** A width written in a lane; `of`: what it is of, where it is not of something that stands there. */
export interface Width {
  readonly from: number;
  readonly to: number;
  readonly of?: string;
}

/** The widths that a joiner would write in a lane: pillars and bays, sheet pieces, clear gaps between studs. */
export function widthsOf(design: Design, run: RodRun, lane: Mark['lane'], blocks: readonly Block[]): readonly Width[] {
  if (lane === 'front')
    return [...[...run.bays, ...run.pillars].map(({ from, to }) => ({ from, to })), ...flapsBeside(design.rod, run)];
  // What lies flat on the skin's upper edge is not a piece of it.
  if (lane === 'skin') return blocks.filter((block) => block.high - block.low > design.rod.frameHeight / 2);
  if (lane === 'behind') return run.backBays;
  if (lane !== 'timber') return [];
  const studs = [...(design.framing.find((framing) => framing.run === run.id)?.studs ?? [])].sort(
    (a, b) => a.from - b.from,
  );
  const gaps: Width[] = [];
  studs.forEach((stud, i) => {
    const next = studs[i + 1];
    if (next && next.from - stud.to > SAME_LENGTH) gaps.push({ from: stud.to, to: next.from });
  });
  return gaps;
}

/** The gaps of flaps at either end of a run, along it. */
export function flapsBeside(
  { flaps }: Pick<Design['rod'], 'flaps'>,
  run: Pick<RodRun, 'id' | 'length'>,
): readonly Width[] {
  return flaps.flatMap(({ left, right, width }): Width[] => {
    if (left === run.id) return [{ from: run.length, to: run.length + width, of: 'flap' }];
    return right === run.id ? [{ from: -width, to: 0, of: 'flap' }] : [];
  });
}
