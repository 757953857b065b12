import { describe, expect, test } from 'vitest';
import { type Arc, arcOf } from '../../src/base/arc';
import type { EdgePath } from '../../src/base/edge-path';
import { bead, cavetto, chamfer, cymaRecta, cymaReversa, ovolo, tangentRadius, torus } from '../../src/base/mouldings';
import { areaOf } from '../../src/base/outline';
import { mouldedStrip } from '../../src/base/profiles';
import { degrees } from '../../src/base/vec';

// Constructions: P. Nicholson, The Mechanic's Companion, on mouldings; Building Trades Pocketbook, on the torus. The check
// values are plane geometry, worked by hand. P: projection, back from the face; H: height, along the face. mm.

function arcsOf(path: EdgePath): Arc[] {
  const arcs: Arc[] = [];
  let from = path.start;
  for (const segment of path.segments) {
    const arc = arcOf(from, segment);
    if (arc) arcs.push(arc);
    from = segment.to;
  }
  return arcs;
}
/** What a moulding takes off the arris, mm². */
const taken = (path: EdgePath): number => 300 * 60 - areaOf(mouldedStrip(300, 60, path));
const QUARTER = Math.PI / 4;

describe('half rounds', () => {
  test('bead: H 12 gives radius 6 and projects 6', () => {
    const [arc] = arcsOf(bead(12, 2));
    expect(arc.radius).toBe(6);
    expect(degrees(arc.sweep)).toBeCloseTo(180, 9);
    // Sunk 6 deep over 12 + 2 of the face, less the half disc that stays.
    expect(taken(bead(12, 2))).toBeCloseTo(6 * 14 - (Math.PI * 36) / 2, 9);
  });
  test('torus: H 30 gives radius 15', () => {
    const [arc] = arcsOf(torus(30, 4));
    expect(arc.radius).toBe(15);
    expect(taken(torus(30, 4))).toBeCloseTo(15 * 34 - (Math.PI * 225) / 2, 9);
  });
});

describe('ovolo and cavetto', () => {
  test('the Roman ovolo is a quadrant: r = P = H', () => {
    const [arc] = arcsOf(ovolo(9, 9));
    expect(arc.radius).toBe(9);
    expect(degrees(arc.sweep)).toBeCloseTo(90, 9);
    expect(arc.centre[0]).toBeCloseTo(-9, 9);
    expect(arc.centre[1]).toBeCloseTo(-9, 9);
    expect(taken(ovolo(9, 9))).toBeCloseTo(81 * (1 - QUARTER), 9);
  });
  test("Nicholson's ovolo, P 20, H 30: radius 30, chord 36.056, sweep 73.87°", () => {
    const [arc] = arcsOf(ovolo(20, 30, 2, 'nicholson'));
    expect(arc.radius).toBe(30);
    expect(Math.hypot(arc.to[0] - arc.from[0], arc.to[1] - arc.from[1])).toBeCloseTo(36.056, 3);
    expect(degrees(arc.sweep)).toBeCloseTo(73.87, 2);
  });
  test('tangent at one end, P 20, H 30: r = (H² + P²)/2P = 32.5, the other way up 32.5; the other form would be 21.667', () => {
    expect(tangentRadius(20, 30)).toBe(32.5);
    expect(tangentRadius(30, 20)).toBe(32.5);
    const [arc] = arcsOf(ovolo(20, 30));
    // Tangent to the face where it leaves it: the centre is level with that end.
    expect(arc.centre[1]).toBeCloseTo(-30, 9);
    expect((30 * 30 + 20 * 20) / (2 * 30)).toBeCloseTo(21.667, 3);
  });
  test('the cavetto is the ovolo hollowed: the two take the whole rectangle between them', () => {
    expect(arcsOf(cavetto(12, 12))[0].radius).toBe(12);
    expect(degrees(arcsOf(cavetto(12, 12))[0].sweep)).toBeCloseTo(-90, 9);
    for (const [p, h] of [
      [12, 12],
      [20, 30],
      [30, 20],
    ]) {
      const round = taken(ovolo(p, h)) - taken(chamfer(p, h));
      const hollow = taken(cavetto(p, h)) - taken(chamfer(p, h));
      expect(round).toBeCloseTo(-hollow, 8);
    }
    expect(taken(cavetto(12, 12))).toBeCloseTo(144 * QUARTER, 9);
  });
});

describe('cymas: two equal arcs that meet at the middle', () => {
  test('P = H = 40: two quadrants of radius 20', () => {
    for (const path of [cymaRecta(40, 40), cymaReversa(40, 40)]) {
      const arcs = arcsOf(path);
      expect(arcs.map((arc) => arc.radius)).toEqual([20, 20]);
      for (const arc of arcs) expect(Math.abs(degrees(arc.sweep))).toBeCloseTo(90, 9);
    }
  });
  test('recta: the part that projects is hollow; reversa: it is round', () => {
    expect(arcsOf(cymaRecta(40, 40)).map((arc) => Math.sign(arc.sweep))).toEqual([-1, 1]);
    expect(arcsOf(cymaReversa(40, 40)).map((arc) => Math.sign(arc.sweep))).toEqual([1, -1]);
  });
  test('P 30, H 40: per half p = 15, h = 20, r = (p² + h²)/2p = 20.833', () => {
    for (const arc of [...arcsOf(cymaRecta(30, 40)), ...arcsOf(cymaReversa(30, 40))]) {
      expect(arc.radius).toBeCloseTo(20.833, 3);
    }
    expect((15 * 15 + 20 * 20) / (2 * 20)).toBe(15.625);
  });
  test('round and hollow are equal, so a cyma takes what a chamfer takes', () => {
    for (const [p, h] of [
      [40, 40],
      [30, 40],
      [14, 8],
    ]) {
      expect(taken(cymaRecta(p, h))).toBeCloseTo((p * h) / 2, 8);
      expect(taken(cymaReversa(p, h))).toBeCloseTo((p * h) / 2, 8);
    }
  });
});
