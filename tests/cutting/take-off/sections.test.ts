import { describe, expect, test } from 'vitest';
import { bead, chamfer, ovolo } from '../../../src/base/mouldings';
import { rectangle } from '../../../src/base/outline';
import { mouldedSection, panelMoulding } from '../../../src/base/profiles';
import { straight } from '../../../src/base/stuff';
import { barsFor, stripOf } from '../../../src/cutting/take-off/sides';
import { turnsOf } from '../../../src/cutting/take-off/turns';
import { startingStock } from '../../../src/job/start';
import type { Outline } from '../../../src/vocabulary/geometry';

/** A stick of a section, as much of a part as is asked. */
const stick = (section: Outline, width: number, thickness: number) => ({
  shape: {
    kind: 'stick' as const,
    section,
    start: { at: 0, perAcross: 0, perOut: 0 },
    end: { at: 100, perAcross: 0, perOut: 0 },
  },
  size: { length: 100, width, thickness },
});

describe('how a bar can be turned, from its outline', () => {
  test('a rectangle every way, wherever its outline begins', () => {
    expect(turnsOf(rectangle(63, 38))).toEqual(['rolled', 'swung', 'tumbled']);
    // One side drawn as two.
    expect(
      turnsOf({
        start: [5, 2],
        segments: [{ to: [25, 2] }, { to: [25, 10] }, { to: [5, 10] }, { to: [5, 4] }, { to: [5, 2] }],
      }),
    ).toHaveLength(3);
  });

  test('a moulding alike on both edges: swung end for end on its back', () => {
    expect(turnsOf(mouldedSection(40, 12, { upper: ovolo(6, 6), lower: ovolo(6, 6) }))).toEqual(['swung']);
  });

  test('one alike in face and back: tumbled; one turned about its middle: rolled', () => {
    // A half round on one edge, seen from the side: drawn as an edge with a nosing.
    const nosing: Outline = {
      start: [0, 0],
      segments: [{ to: [40, 0] }, { to: [40, 20], radius: 10 }, { to: [0, 20] }, { to: [0, 0] }],
    };
    expect(turnsOf(nosing)).toEqual(['tumbled']);
    // A parallelogram.
    const slanted = straight([
      [0, 0],
      [30, 0],
      [38, 12],
      [8, 12],
    ]);
    expect(turnsOf(slanted)).toEqual(['rolled']);
  });

  test('a step of a tenth of a millimetre is a difference', () => {
    const nearly = straight([
      [0, 0],
      [30, 0],
      [30, 10.1],
      [0, 10],
    ]);
    expect(turnsOf(nearly)).toEqual([]);
    expect(turnsOf(panelMoulding(25, 12, bead(8, 2), chamfer(2, 2)))).toEqual([]);
  });

  test('of the mouldings in the starting book only the round rail can be turned', () => {
    const turning = startingStock.items.flatMap((item) =>
      item.kind === 'moulding' && turnsOf(item.section).length > 0 ? [[item.id, turnsOf(item.section)]] : [],
    );
    expect(turning).toEqual([['rail-round-45', ['rolled', 'swung', 'tumbled']]]);
  });
});

describe('what a section is cut from', () => {
  test('the side that is as thick as the sheet is not the width', () => {
    // A stop 15 across from a sheet of 18 is a strip of 15, though its greater side is 18.
    expect(stripOf(stick(rectangle(15, 18), 18, 15), 18)).toMatchObject({ width: 15, layers: 1, onEdge: false });
    expect(stripOf(stick(rectangle(18, 15), 18, 15), 18)).toMatchObject({ width: 15, layers: 1, onEdge: true });
    expect(stripOf(stick(rectangle(150, 25), 150, 25), 25)).toMatchObject({ width: 150, layers: 1 });
  });

  test('thinner than its stuff: the narrower of what needs no gluing; thicker: glued up', () => {
    expect(stripOf(stick(rectangle(25, 30), 30, 25), 40)).toMatchObject({ width: 25, layers: 1 });
    expect(stripOf(stick(rectangle(18, 60), 60, 18), 40)).toMatchObject({ width: 60, layers: 1, onEdge: true });
    expect(stripOf(stick(rectangle(80, 50), 80, 50), 40)).toMatchObject({ layers: 2 });
  });

  test('bars of 38 × 63: a stick on edge one, a large wedge as many as hold it', () => {
    const bar = { width: 63, thickness: 38 };
    expect(barsFor(stick(rectangle(38, 63), 63, 38), bar)).toBe(1);
    expect(barsFor(stick(rectangle(62, 30), 62, 30), bar)).toBe(1);
    // A right-angled wedge of 63 × 63: on its long side 89.1, and 44.5 high; as drawn 63 × 63. Two bars side by side either way.
    const wedge = (a: number) =>
      straight([
        [0, 0],
        [a, 0],
        [0, a],
      ]);
    expect(barsFor(stick(wedge(63), 63, 63), bar)).toBe(2);
    // Of 44: 62.2 on its long side, 31.1 high. It needs turning to be cut from one.
    expect(barsFor(stick(wedge(44), 44, 44), bar)).toBe(1);
    // Of 90: 127.3 × 63.6 on its long side, 90 × 90 as drawn: two by three either way.
    expect(barsFor(stick(wedge(90), 90, 90), bar)).toBe(6);
  });
});
