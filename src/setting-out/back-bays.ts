import { SAME_LENGTH } from '../base/tolerance';
import type { BackBay, Carcass, CrossLine } from '../vocabulary/carcass';
import type { Finding } from '../vocabulary/finding';
import type { BayPurpose } from '../vocabulary/job';
import type { Bay, FrameTimber, RodRun } from '../vocabulary/rod';

/** What stands on the floor, or keeps it free: a rail along it would be in the way. */
const NO_RAIL: readonly BayPurpose[] = ['open', 'appliance', 'bin'];

/** Whether a rail runs along the bottom of a space at its back. */
const railBelow = (carcass: Carcass, { wish }: Pick<BackBay, 'wish'>): boolean =>
  carcass.rearRail && !(wish && NO_RAIL.includes(wish.purpose));

/** The spaces between neighbouring cross frames, from left to right; the two frames at a join have none between them. */
export function backBaysOf(
  run: Pick<RodRun, 'bays'>,
  lines: readonly CrossLine[],
  carcass: Carcass,
  datum: FrameTimber['datum'],
): readonly BackBay[] {
  return lines
    .slice(1)
    .map((line, i) => ({ from: lines[i].to, to: line.from }))
    .filter(({ from, to }) => to - from > SAME_LENGTH)
    .map(({ from, to }, index): BackBay => {
      const front = bayBefore(run.bays, from, to, datum);
      const wish = front?.wish;
      return {
        index,
        from,
        to,
        ...(front ? { bay: front.index } : {}),
        ...(wish ? { wish } : {}),
        low: railBelow(carcass, { wish }) ? carcass.low + carcass.depth : 0,
        high: underside(carcass) - (carcass.rearRail ? carcass.depth : 0),
      };
    });
}

const underside = ({ high, worktop }: Carcass): number => (worktop ? worktop.high - worktop.thickness : high);

/** Of the bays of the front whose middles lie before a space: one with a purpose first, then the one nearest to its middle. */
function bayBefore(bays: readonly Bay[], from: number, to: number, datum: FrameTimber['datum']): Bay | undefined {
  const middle = (bay: Bay): number => (bay.from + bay.to) / 2;
  const off = (bay: Bay): number => Math.abs(middle(bay) - (from + to) / 2);
  const before = bays.filter((bay) => middle(bay) > from && middle(bay) < to);
  const [first] = (datum === 'left' ? before : before.reverse()).sort(
    (a, b) => Number(hasPurpose(b)) - Number(hasPurpose(a)) || Math.round(off(a) - off(b)),
  );
  return first;
}

const hasPurpose = ({ wish }: Bay): boolean => wish !== undefined && wish.purpose !== 'open';

/** Bays that are to hold something, with no space of their own between cross frames. */
export function withoutSpace(runs: readonly RodRun[]): readonly Finding[] {
  return runs.flatMap((run) =>
    run.bays
      .filter((bay) => hasPurpose(bay) && !run.backBays.some((b) => b.bay === bay.index))
      .map((bay) => nothingBehind(run, bay)),
  );
}

const nothingBehind = (run: RodRun, bay: Bay): Finding => ({
  severity: 'warn',
  rule: 'bay-without-space',
  subject: { run: run.id, path: bay.wish?.path ?? '/unit/bays' },
  value: bay.index + 1,
  limit: run.backBays.length,
  message: `Bay ${bay.index + 1} of run ${run.id} is to have ${bay.wish?.purpose} behind it, and no space between two cross frames is its own; the run has ${run.backBays.length}.`,
  source: 'the setting-out of the carcass',
  remedy:
    'Build the carcass with a cross frame at every bay; where it has them, move the join or the pillar, or choose a bay further from the corner.',
});
