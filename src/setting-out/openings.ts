import type { Finding } from '../vocabulary/finding';
import type { Opening } from '../vocabulary/job';
import type { Obstacle, PlacedOpening } from '../vocabulary/opening';
import type { Rod } from '../vocabulary/rod';
import { nameOf, noSuchRun, notMade, refused } from './opening-findings';
import { type Block, type Ground, groundOf, withWeb } from './opening-ground';
import { overBays } from './opening-over';
import { boxOf, hitsOf, type Wished } from './opening-places';

/**
 * Gives each wished opening its place on the front or in the top of its run. One that meets something that can't give way is refused,
 * with how far the nearest good place is; nothing else moves for it. The first of two that meet has its place.
 */
export function placeOpenings(
  rod: Rod,
  openings: readonly Opening[],
  obstacles: readonly Obstacle[],
): { readonly placed: readonly PlacedOpening[]; readonly findings: readonly Finding[] } {
  const placed: PlacedOpening[] = [];
  const findings: Finding[] = [];
  const grounds = new Map<string, Ground>();
  openings.forEach((opening, index) => {
    const { run: number, through } = opening;
    const said = { path: `/unit/openings/${index}` };
    const run = rod.runs.find((r) => r.jobIndex === number - 1);
    if (!run) findings.push(noSuchRun(nameOf(opening, index), number, said));
    else if (!run.sound) findings.push(notMade(nameOf(opening, index), run.id, said));
    else {
      const key = `${run.id} ${through}`;
      const ground = grounds.get(key) ?? groundOf(rod, run, through, obstacles);
      const wished = wishedOf(opening);
      const [worst] = hitsOf(ground, wished);
      if (worst) findings.push(refused({ opening, index, run: run.id, ground, wished }, worst));
      else {
        const box = boxOf(wished);
        placed.push({ index, name: opening.name, run: run.id, through, use: opening.use, round: wished.round, ...box });
        grounds.set(key, blockedBy(ground, withWeb(box, nameOf(opening, index, 'opening'))));
      }
    }
  });
  return { placed, findings: [...findings, ...overBays(rod, placed)] };
}

/** The ground with one thing more in the way. */
const blockedBy = (ground: Ground, block: Block): Ground => ({ ...ground, blocks: [...ground.blocks, block] });

/** A pipe's hole is round: its height is its width. */
function wishedOf({ x, z, width, height, use }: Opening): Wished {
  const round = use === 'pipe';
  return { x, z, width, height: round ? width : height, round };
}
