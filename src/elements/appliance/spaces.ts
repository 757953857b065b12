import type { BackBay, Carcass } from '../../vocabulary/carcass';
import type { Rod, RodRun, SaidOfBay } from '../../vocabulary/rod';

/** A space between cross frames in which something is to stand or hang. Clear sizes, mm; `front`, `rear`: d of what bounds its depth. */
export interface Space {
  readonly run: RodRun;
  readonly bay: BackBay;
  readonly wish: SaidOfBay;
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  readonly front: number;
  readonly rear: number;
  /** Underside of the top or worktop over it. */
  readonly top: number;
}

/** Underside of what lies on the cross frames: the worktop, or the top. */
const topOf = ({ worktop, high }: Carcass): number => (worktop ? worktop.high - worktop.thickness : high);

/**
 * Clear sizes of a space. What stands on the floor passes under the rails; a bowl hangs from the top between what lies along the run there:
 * a worktop's bearer on the front frame, and the rear rail (or the one that is made for it).
 */
function spaceOf(run: RodRun, bay: BackBay, wish: SaidOfBay, carcass: Carcass, railThickness: number): Space {
  const top = topOf(carcass);
  const { worktop, face, depth } = carcass;
  const common = { run, bay, wish, width: bay.to - bay.from, top };
  if (wish.purpose !== 'sink') {
    const high = worktop ? Math.min(bay.high, top - depth) : bay.high;
    const [front, rear] = [carcass.front, carcass.back];
    return { ...common, height: high - bay.low, depth: front - rear, front, rear };
  }
  const front = carcass.front - (worktop ? face : 0);
  const rear = railAt(carcass) + (carcass.rearRail ? face : railThickness);
  return { ...common, height: top - bay.low, depth: front - rear, front, rear };
}

/** Rear face of the rail under the top, or under the rear edge of a worktop between posts that go through. */
export const railAt = (carcass: Carcass): number =>
  carcass.worktop && topOf(carcass) < carcass.high ? carcass.worktop.edge : carcass.back;

/** Every space of the unit in which an appliance, a sink or a bin is to be. */
export const spacesOf = ({ runs, carcass }: Rod, railThickness: number): readonly Space[] =>
  carcass
    ? runs.flatMap((run) =>
        run.backBays.flatMap((bay) =>
          bay.wish && ['appliance', 'sink', 'bin'].includes(bay.wish.purpose)
            ? [spaceOf(run, bay, bay.wish, carcass, railThickness)]
            : [],
        ),
      )
    : [];

/** A size with the clear space that it needs and what there is: whatever is stated. */
export interface Need {
  readonly what: 'wide' | 'high' | 'deep';
  readonly size: number;
  readonly clear: number;
  readonly need: number;
  readonly have: number;
}

/** What the thing needs each way; a size of 0 is not stated and asks nothing. */
export function needsOf({ wish, width, height, depth }: Space): readonly Need[] {
  const need = (what: Need['what'], size: number, clear: number, have: number): Need[] =>
    size > 0 ? [{ what, size, clear, need: size + clear, have }] : [];
  return [
    ...need('wide', wish.width, 2 * wish.besides, width),
    // A bowl hangs from what is above it.
    ...need('high', wish.height, wish.purpose === 'sink' ? 0 : wish.above, height),
    ...need('deep', wish.depth, wish.behind, depth),
  ];
}
