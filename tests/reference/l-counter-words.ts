import { expect } from 'vitest';
import type { EndCut, Part } from '../../src/vocabulary/part';

/** One line of a cutting list written by hand. Sizes in mm, long point to long point; of timber the greater side is the width. */
export interface ByHand {
  readonly run: 'A' | 'B';
  readonly code: string;
  readonly name: string;
  readonly stock: string;
  readonly off: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** From short point to short point, where an end is not square. */
  readonly short?: number;
  /** Left and right end (lower and upper, of what stands), where not square: kind, degrees, which side is the longer. */
  readonly left?: string;
  readonly right?: string;
  /** What is done along an edge. */
  readonly edge?: string;
  readonly flutes?: string;
  /** Left on to be scribed. */
  readonly on?: string;
  readonly leaves: 'S1' | 'S2' | 'S3' | 'site';
}

/** Two decimals: finer than anything is cut to. */
const mm = (length: number): string => length.toFixed(2);

/** The line in words, so that lists can be compared; without how many. */
const line = ({ run, code, name, stock, length, width, thickness, leaves, ...more }: Omit<ByHand, 'off'>): string =>
  [
    `${run} ${code} ${name}, ${stock}`,
    `${mm(length)} × ${mm(width)} × ${mm(thickness)}, short ${mm(more.short ?? length)}`,
    `${more.left ?? 'square'} / ${more.right ?? 'square'}`,
    more.edge ?? 'plain',
    more.flutes ?? 'no flutes',
    more.on ?? 'nothing on',
    leaves,
  ].join(' | ');

const endOf = ({ kind, sawDeg, tiltDeg, longSide }: EndCut): string | undefined =>
  kind === 'square' ? undefined : `${kind} ${(kind === 'bevel' ? tiltDeg : sawDeg).toFixed(2)}° ${longSide}`;

const wordsOf = (part: Part): string => {
  const { run, code, name, material, size, shortPoint, ends, edges, grooves, oversize = [], fitted, inSection } = part;
  return line({
    ...size,
    ...{ run: run as 'A' | 'B', code, name, stock: material, short: shortPoint },
    left: endOf(ends[0]),
    right: endOf(ends[1]),
    edge:
      edges
        .map((e) =>
          [e.edge, e.work, e.cutter ?? `${e.angleDeg}° ${e.longSide}, back ${mm(e.backWidth ?? 0)}`].join(' '),
        )
        .join(', ') || undefined,
    flutes:
      grooves.length > 0
        ? `${grooves.map((g) => mm(g.centre)).join(' ')}, ${mm(grooves[0].width)} wide, ${mm(grooves[0].depth)} deep`
        : undefined,
    on: oversize.map((o) => `${o.amount} on ${o.side}`).join(', ') || undefined,
    leaves: (fitted === 'site' ? 'site' : inSection) as ByHand['leaves'],
  });
};

const listed = (lines: readonly (readonly [string, number])[]): readonly string[] => {
  const off = new Map<string, number>();
  for (const [words, n] of lines) off.set(words, (off.get(words) ?? 0) + n);
  return [...off].map(([words, n]) => `${words} | ${n} off`).sort();
};

/** Both lists in one form: like with like, so many off. */
export const handListed = (lines: readonly ByHand[]): readonly string[] =>
  listed(lines.map(({ off, ...one }) => [line(one), off]));
export const toolListed = (parts: readonly Part[]): readonly string[] => listed(parts.map((p) => [wordsOf(p), 1]));

/** As many numbers as worked by hand, and each the same to a millionth. */
export function near(found: readonly number[], expected: readonly number[]): void {
  expect(found).toHaveLength(expected.length);
  for (const [i, x] of expected.entries()) expect(found[i]).toBeCloseTo(x, 6);
}
