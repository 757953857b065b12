import { rectangle } from '../../base/outline';
import { level, onFace, placeOf, UP } from '../../base/place';
import { type Stuff, standing } from '../../base/stuff';
import type { Vec2 } from '../../vocabulary/geometry';
import type { PartDraft } from '../../vocabulary/part';
import { across, board, box, common, hinged, MOST_ON_TWO, runAt } from './common';
import type { Decisions, Gap } from './gap';

/** The gate below: hung at the flap's hinge side, opening to the back; its stop stands in front of it at the other side. */
export function gateOf(gap: Gap, { gateSheet, stop }: Decisions, kgM3: number): readonly PartDraft[] {
  const { gate, left, flap } = gap;
  const [wide, high] = [gate.to - gate.from, gate.high - gate.low];
  const hinges = high > MOST_ON_TWO.height || wide * high * gate.thickness * 1e-9 * kgM3 > MOST_ON_TWO.kg ? 3 : 2;
  const { notch } = gate;
  const cut = gate.notchHigh - gate.low;
  // Up the gate, and across it from its right-hand edge: its lower end narrower where the plinth blocks stand proud of the jambs.
  const outline: readonly Vec2[] =
    notch > 0
      ? [
          [0, notch],
          [cut, notch],
          [cut, 0],
          [high, 0],
          [high, wide],
          [cut, wide],
          [cut, wide - notch],
          [0, wide - notch],
        ]
      : box(high, wide);
  const closing = across(flap.hinge);
  const right = closing === 'right' ? gap.to - gap.jamb : gap.from + gap.jamb + stop;
  const bead: Stuff = standing(left, rectangle(stop, gate.thickness), {
    x: right,
    d: gate.face,
    low: gap.low,
    high: gate.high,
  });
  return [
    {
      ...common('GT', 'gate', runAt(gap, flap.hinge)),
      material: gateSheet,
      finish: 'paint',
      from: 'finished',
      where: `below the flap, hung at the ${flap.hinge}`,
      edgeNames: ['right edge', 'left edge'],
      holds: [hinged(hinges, 'gate to the jamb')],
      hardware: [
        { what: 'hinge', count: hinges },
        { what: 'catch', count: 1 },
      ],
      shape: board(outline, gate.thickness),
      place: placeOf(onFace(left, gate.to, gate.face - gate.thickness, gate.low), UP, level(left.front)),
    },
    {
      ...common('GS', 'gate stop', runAt(gap, closing)),
      material: gateSheet,
      finish: 'paint',
      from: 'finished',
      where: `${closing} of the gate`,
      holds: [
        {
          by: 'brad',
          through: stop,
          where: { at: 'length', centres: 200 },
          glue: 'pva',
          rule: 'gate stop to the jamb, at 200 (common practice, no source)',
        },
      ],
      ...bead,
    },
  ];
}
