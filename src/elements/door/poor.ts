import type { Box } from '../../base/box';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Carcass } from '../../vocabulary/carcass';
import type { Finding } from '../../vocabulary/finding';
import type { Rod, RodRun } from '../../vocabulary/rod';
import type { InBay } from './field';
import { besideCorner, proudOfTop, wideLeaf } from './findings';

/** A door wider than this drags on its hinges, mm (common practice, no source). */
const WIDE_DOOR = 600;

/** Between fronts and the corner that the backs of two runs make: for handles, and so that doors and drawers clear the neighbour's (common practice, no source). */
const CORNER_CLEAR = 60;

/** What can be made, and will be a nuisance. `between`: whether the fronts could lie between the posts instead. */
export function poor(
  { run, bay, carcass, field }: InBay,
  purpose: 'doors' | 'drawers',
  first: Box,
  rod: Rod,
  between: () => boolean,
): readonly Finding[] {
  const wide = first.to - first.from;
  const under = stopsUnder(carcass);
  const cover = under ? under.edge : rod.layers[rod.top.layer].inner;
  const proud = cover - field.back;
  const clear = Math.min(...(['left', 'right'] as const).map((side) => fromCorner(run, side, carcass, field)));
  return [
    ...(purpose === 'doors' && wide > WIDE_DOOR + SAME_LENGTH ? [wideLeaf(run, bay, wide, WIDE_DOOR)] : []),
    ...(proud > SAME_LENGTH
      ? [proudOfTop(run, bay, proud, under ? 'worktop' : 'top', cover - carcass.back <= SAME_LENGTH && between())]
      : []),
    ...(clear < CORNER_CLEAR - SAME_LENGTH ? [besideCorner(run, bay, clear, CORNER_CLEAR)] : []),
  ];
}

/** The worktop under which the posts stop, where they do; else the top covers them. */
const stopsUnder = ({ worktop, high }: Carcass): Carcass['worktop'] =>
  worktop && !worktop.leftOut && worktop.high - worktop.thickness >= high ? worktop : undefined;

/** How far fronts stay from the corner that two runs have between their backs; none at other ends. */
function fromCorner(run: RodRun, side: 'left' | 'right', { back }: Carcass, field: Box): number {
  const { kind, deflectionDeg, toReturn, grows } = run[side];
  if (kind !== 'corner' || toReturn || deflectionDeg <= 0) return Infinity;
  return side === 'left' ? field.from + back * grows : run.length + back * grows - field.to;
}
