import { describe, expect, test } from 'vitest';
import { rectangle } from '../../src/base/outline';
import { SQUARE_EDGE } from '../../src/base/profiles';
import { design } from '../../src/flow';
import { makeParts } from '../../src/parts/make';
import type { Board, Stick } from '../../src/vocabulary/shape';
import { jobOf } from '../elements/job-of';
import { draft, plane } from '../parts/draft';

const sheet = (length: number, width: number, thickness: number): Board => ({
  kind: 'board',
  outline: [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ],
  holes: [],
  thickness,
  edges: [SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE, SQUARE_EDGE],
});
const weigh = (shape: Board | Stick, density: number): number =>
  makeParts([draft(shape)], () => density, 0.5)[0].weightKg;

// Densities: typical of MDF by thickness, from memory; kg/m² = thickness in mm × density / 1000. Printed to 10 g.
describe('whole sheets of MDF', () => {
  test.each([
    [6, 800, 4.8, 14.29, 17.86],
    [9, 780, 7.02, 20.9, 26.12],
    [12, 760, 9.12, 27.15, 33.94],
    [15, 750, 11.25, 33.49, 41.86],
    [18, 750, 13.5, 40.19, 50.23],
    [22, 740, 16.28, 48.46, 60.58],
    [25, 730, 18.25, 54.33, 67.91],
    [30, 720, 21.6, 64.3, 80.37],
  ])('%d mm at %d kg/m³: %d kg/m², %d kg at 2440 × 1220, %d kg at 3050 × 1220', (t, density, perM2, small, large) => {
    expect(weigh(sheet(1000, 1000, t), density)).toBeCloseTo(perM2, 9);
    expect(Math.abs(weigh(sheet(2440, 1220, t), density) - small)).toBeLessThan(0.0051);
    expect(Math.abs(weigh(sheet(3050, 1220, t), density) - large)).toBeLessThan(0.0051);
  });
});

// A section 1800 long, worked by hand. C16 at 370 kg/m³: EN 338:2016, mean density. MDF and oak: typical, from memory.
describe('a section of 1800', () => {
  const timber: Stick = { kind: 'stick', section: rectangle(38, 63), start: plane(0), end: plane(10_200) };
  test('10.2 m of 38 × 63 C16 weighs 9.03 kg', () => expect(Math.abs(weigh(timber, 370) - 9.03)).toBeLessThan(0.0051));
  test('its 12 mm front, 1800 × 1000, weighs 16.42 kg', () =>
    expect(weigh(sheet(1800, 1000, 12), 760)).toBeCloseTo(16.42, 2));
  test('its oak top, 1800 × 600 × 40, weighs 30.24 kg', () =>
    expect(weigh(sheet(1800, 600, 40), 700)).toBeCloseTo(30.24, 9));
  test('carcass 25.45 kg, with its top 55.69 kg', () => {
    const carcass = weigh(timber, 370) + weigh(sheet(1800, 1000, 12), 760);
    expect(Math.abs(carcass - 25.45)).toBeLessThan(0.0051);
    expect(Math.abs(carcass + weigh(sheet(1800, 600, 40), 700) - 55.69)).toBeLessThan(0.0051);
  });

  // The same figures from a whole job: a straight front 1800 long, 1000 high under a top of 40.
  test('as parts of a job: timber by the metre, front and top', () => {
    const made = design(
      jobOf({
        runs: [{ length: 1800 }],
        height: 1040,
        depth: 600,
        elements: { cladding: { floorGap: 0 } },
        stock: {
          'sawn-38x63': { densityKgM3: 370 },
          'mdf-12': { densityKgM3: 760 },
          'oak-40': { densityKgM3: 700 },
        },
      }),
    );
    const total = (material: string) => made.totals.materials.find((m) => m.material === material);
    const timberTotal = total('sawn-38x63');
    expect(((timberTotal?.weightKg ?? 0) / (timberTotal?.amount ?? 1)) * 10.2).toBeCloseTo(9.0349, 3);
    expect(Math.abs((total('mdf-12')?.weightKg ?? 0) - 16.42)).toBeLessThan(0.0051);
    expect(total('oak-40')?.weightKg).toBeCloseTo(30.24, 9);
  });
});
