import type { EdgeWork, EndCut } from '../../src/vocabulary/part';
import { angle } from '../shell/format';

/** A piece no wider than this can stand on edge against the fence of a mitre saw, mm (common practice, no source). */
const STANDS = 160;

/** What the saw is set to for a cut of a piece so wide, lying on its back unless it says otherwise. */
function settings({ kind, sawDeg, tiltDeg }: EndCut, width: number): readonly string[] {
  const saw = `saw at ${angle(sawDeg)}`;
  const blade = `blade tilted ${angle(tiltDeg)}`;
  switch (kind) {
    case 'square':
      return [];
    case 'mitre':
      return ['mitred', saw];
    case 'bevel':
      return [
        'bevelled',
        blade,
        width <= STANDS ? `lying on its back (or saw at ${angle(tiltDeg)}, standing on edge)` : 'lying on its back',
      ];
    case 'compound':
      return ['compound cut', saw, blade, 'lying on its back'];
  }
}

/** An end in the words of the saw: what it looks like, what the scales are set to, which side stays long. */
export function endWords(cut: EndCut, width: number): string {
  if (cut.kind === 'square') return 'square';
  const side = cut.longSide === 'none' ? [] : [`longer at the ${cut.longSide}`];
  return [...settings(cut, width), ...side].join(', ');
}

/** An end in a word and an angle, for a list: "mitre 45°", "bevel 44.25°", "compound 31.6° / 20.7°". */
export function endBrief({ kind, sawDeg, tiltDeg }: EndCut): string {
  if (kind === 'square') return 'square';
  const angles = [sawDeg, tiltDeg].filter((deg) => deg !== 0).map(angle);
  return `${kind} ${angles.join(' / ')}`;
}

/** Both ends for a list: once when they are the same. */
export function endsBrief([first, second]: readonly [EndCut, EndCut]): string {
  const [a, b] = [endBrief(first), endBrief(second)];
  if (a !== b) return `${a}, ${b}`;
  return a === 'square' ? a : `${a} both`;
}

/** Work along an edge; `size` writes a length. */
export function edgeWords({ edge, work, angleDeg, cutter, backWidth }: EdgeWork, size: (mm: number) => string): string {
  const rest = [
    angleDeg === undefined ? '' : angle(angleDeg),
    cutter ?? '',
    backWidth === undefined ? '' : `${size(backWidth)} wide at the back`,
  ];
  return [`${edge} ${work}`, ...rest.filter(Boolean)].join(', ');
}
