import { SAME_LENGTH } from '../base/tolerance';
import type { FrameTimber } from '../vocabulary/rod';

/** A module stud is not stood nearer than this, clear, to one that is needed: no room to fix a noggin (common practice, no source). */
export const LEAST_CLEAR = 100;

/** The frame of a run or of one of its sections, from end to end. */
export interface Frame {
  readonly from: number;
  readonly to: number;
}

/** Stud centres between two that stand already. */
export function fill(a: number, b: number, frame: Frame, timber: FrameTimber): readonly number[] {
  if (b - a <= timber.centres + SAME_LENGTH) return [];
  return timber.method === 'module' ? onModule(a, b, frame, timber) : equally(a, b, timber.centres);
}

const equally = (a: number, b: number, centres: number): readonly number[] => {
  const gaps = Math.ceil((b - a) / centres - 1e-9);
  return Array.from({ length: gaps - 1 }, (_, i) => a + ((b - a) * (i + 1)) / gaps);
};

/**
 * Module lines, in whole centres from the left end of the frame, that fall between a and b; those not needed to keep within the centres
 * are left out, and so are those hard by another stud. Where the rest can't keep within the centres, that gap is divided equally.
 */
function onModule(a: number, b: number, { from, to }: Frame, { centres, face }: FrameTimber): readonly number[] {
  const count = Math.floor((to - from) / centres);
  const lines = Array.from({ length: count }, (_, k) => from + (k + 1) * centres).filter(
    (x) => Math.min(x - a, b - x) >= face + LEAST_CLEAR - SAME_LENGTH,
  );
  const kept = dropSpare([a, ...lines, b], centres);
  const widest = Math.max(...kept.slice(1).map((x, i) => x - kept[i]));
  return widest <= centres + SAME_LENGTH ? kept.slice(1, -1) : equally(a, b, centres);
}

function dropSpare(line: readonly number[], centres: number): readonly number[] {
  const kept = [...line];
  for (let i = 1; i < kept.length - 1; ) {
    if (kept[i + 1] - kept[i - 1] <= centres + SAME_LENGTH) kept.splice(i, 1);
    else i++;
  }
  return kept;
}
