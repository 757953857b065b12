import { describe, expect, it } from 'vitest';
import { massCentre } from '../../../src/base/solid/mass';
import { solidOf } from '../../../src/base/solid/solid';
import { design } from '../../../src/flow';
import type { Shape } from '../../../src/vocabulary/shape';
import { jobOf } from '../../elements/job-of';

const HERE = { origin: [0, 0, 0], along: [1, 0, 0], across: [0, 1, 0], out: [0, 0, 1] } as const;

/** The centre of a mesh, by the divergence theorem over its triangles. */
function meshCentre(shape: Shape): readonly number[] {
  const { points: p, triangles: t } = solidOf(shape);
  let volume = 0;
  const sum = [0, 0, 0];
  for (let k = 0; k < t.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((i) => [0, 1, 2].map((j) => p[3 * t[k + i] + j]));
    const six =
      a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
    volume += six;
    for (let i = 0; i < 3; i++) sum[i] += (six * (a[i] + b[i] + c[i])) / 4;
  }
  return sum.map((s) => s / volume);
}

describe('the centre of mass', () => {
  it('of every shape of a whole unit is that of its mesh', () => {
    const { parts } = design(
      jobOf({
        runs: [{ length: 2400, deflectionDeg: 70 }, { length: 1800, deflectionDeg: -40 }, { length: 1500 }],
        rightEnd: { kind: 'free' },
        elements: { carcass: { build: true }, pillar: { fluteEnds: 'stopped', fluteStop: 40 } },
      }),
    );
    for (const { shape, mark } of parts) {
      const centre = massCentre({ shape, place: HERE });
      meshCentre(shape).forEach((x, i) => {
        expect(centre[i], `${mark} ${i}`).toBeCloseTo(x, 6);
      });
    }
  });
});
