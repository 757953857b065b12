import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import { contactsOf, MOST_GAP } from '../../src/making/contacts';
import type { Vec3 } from '../../src/vocabulary/geometry';
import type { Part } from '../../src/vocabulary/part';
import { boundsInRoom } from '../base/bounds';
import { SEED } from '../base/seed';
import { referee, solidOf } from '../properties/referee';
import { sampleOf } from '../properties/sample';

const JOBS = 50;
/** Of so many every pair is looked at; of the others only whether each part touches any. */
const CLOSELY = 8;
/** Kernel and engine may differ in the last digits about what is half a millimetre. */
const NOISE = 1e-5;

/** The kernel's word on which parts touch. */
class Kernel {
  private readonly solids: readonly Manifold[];
  private readonly boxes: readonly { min: Vec3; max: Vec3 }[];

  constructor(
    wasm: ManifoldToplevel,
    private readonly parts: readonly Part[],
  ) {
    this.solids = parts.map((part) => solidOf(wasm, part));
    this.boxes = parts.map(boundsInRoom);
  }

  near(i: number, j: number): boolean {
    const [a, b] = [this.boxes[i], this.boxes[j]];
    return [0, 1, 2].every((k) => a.min[k] <= b.max[k] + 1 && b.min[k] <= a.max[k] + 1);
  }

  gap = (i: number, j: number): number => (this.near(i, j) ? this.solids[i].minGap(this.solids[j], 1) : 1);

  touches = (i: number): boolean => this.parts.some((_, j) => j !== i && this.gap(i, j) <= MOST_GAP + NOISE);

  /**
   * Whether two parts meet over a face: pushed into one another twice as far along an axis of one, they share about twice as much, and
   * moved a little aside not much less. Where an arris meets an arris it is four times as much, or nothing; on a sliver little is left.
   */
  faces(i: number, j: number): boolean {
    const gap = this.gap(i, j);
    return [this.parts[i].place, this.parts[j].place].some(({ along, across, out }) => {
      const axes = [along, across, out];
      return axes.some((axis, k) =>
        [1, -1].some((sign) => {
          const way = (far: number, side: Vec3 = [0, 0, 0], aside = 0): number =>
            this.shared(i, j, [0, 1, 2].map((c) => sign * axis[c] * (gap + far) + side[c] * aside) as unknown as Vec3);
          const once = way(0.5);
          if (once < LEAST_SHARED || way(1) / once > 2.8) return false;
          const sides = axes.filter((_, other) => other !== k);
          return sides.every((side) => [ASIDE, -ASIDE].every((aside) => way(0.5, side, aside) > once / 3));
        }),
      );
    });
  }

  private shared(i: number, j: number, move: Vec3): number {
    const moved = this.solids[i].translate([...move]);
    const both = moved.intersect(this.solids[j]);
    const mm3 = both.volume();
    moved.delete();
    both.delete();
    return mm3;
  }

  delete(): void {
    for (const solid of this.solids) solid.delete();
  }
}

/** So far parts are moved aside, mm: a sliver narrower than twice this holds nothing. */
const ASIDE = 0.3;
/** Less than this is an arris with the noise of the last digits, or a patch of some square millimetres that holds nothing, mm³. */
const LEAST_SHARED = 2;

describe(`parts that touch, in ${JOBS} random jobs, by the solid kernel (seed ${SEED})`, () => {
  const sample = sampleOf(JOBS, SEED);

  it('parts that touch nothing are the same for both', { timeout: 600_000 }, async () => {
    const wasm = await referee();
    let looked = 0;
    const wrong = sample.flatMap(({ parts }, n) => {
      const touching = new Set(contactsOf(parts).flatMap(({ a, b }) => [a, b]));
      const kernel = new Kernel(wasm, parts);
      looked += parts.length;
      const found = parts
        .filter((part, i) => touching.has(part.mark) !== kernel.touches(i))
        .map((p) => `job ${n}: ${p.mark}`);
      kernel.delete();
      return found;
    });
    expect(wrong).toEqual([]);
    expect(looked).toBeGreaterThan(JOBS * 20);
  });

  it(`in ${CLOSELY} of them every pair is judged alike, arris on arris left out`, { timeout: 600_000 }, async () => {
    const wasm = await referee();
    let [met, grazed] = [0, 0];
    const wrong = sample.slice(0, CLOSELY).flatMap(({ parts }, n) => {
      const kernel = new Kernel(wasm, parts);
      const told = new Set(contactsOf(parts).map(({ a, b }) => `${a} ${b}`));
      const found: string[] = [];
      for (let i = 0; i < parts.length; i++)
        for (let j = i + 1; j < parts.length; j++) {
          const pair = `${parts[i].mark} ${parts[j].mark}`;
          const gap = kernel.gap(i, j);
          if (told.has(pair)) {
            met++;
            if (gap > MOST_GAP + NOISE) found.push(`job ${n}: ${pair} are ${gap} apart`);
          } else if (gap <= MOST_GAP - NOISE) {
            grazed++;
            if (kernel.faces(i, j)) found.push(`job ${n}: ${pair} touch`);
          }
        }
      kernel.delete();
      return found;
    });
    expect(wrong).toEqual([]);
    expect(met).toBeGreaterThan(CLOSELY * 50);
    expect(grazed).toBeLessThan(met / 4);
  });
});
