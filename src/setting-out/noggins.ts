import { SAME_LENGTH } from '../base/tolerance';
import type { Backing, Noggin, Stud } from '../vocabulary/backing';
import type { FrameTimber } from '../vocabulary/rod';

/** A line of fixings must lie at least this far in from the edge of the timber (common practice, no source). */
const LEAST_EDGE = 6;

/** A row that only stiffens is left out where a noggin lies within this many faces of it (common practice, no source). */
const NEAR_ROW_FACES = 3;

/** A gap between studs narrower than this takes no noggin: the studs themselves are the backing (common practice, no source). */
const LEAST_NOGGIN = 30;

type NogginWish = Extract<Backing, { kind: 'noggin' }>;
interface Line {
  readonly z: number;
  readonly reason: string;
}
interface Band {
  low: number;
  high: number;
  reasons: string[];
}

/** Noggins between neighbouring studs: wherever a room asks, and in the rows that the frame itself has. Heights above the floor, mm. */
export function layNoggins(
  studs: readonly Stud[],
  timber: FrameTimber,
  frame: { readonly low: number; readonly high: number },
  wishes: readonly NogginWish[],
): readonly Noggin[] {
  const gaps = studs.slice(1).map((stud, i) => ({ from: studs[i].to, to: stud.from }));
  return gaps
    .filter((gap) => gap.to - gap.from >= LEAST_NOGGIN)
    .flatMap((gap) => {
      const lines = wishes
        .filter((w) => w.from < gap.to - SAME_LENGTH && w.to > gap.from + SAME_LENGTH)
        .map(({ z, reason }) => ({ z, reason }));
      return bands(lines, timber, frame).map((band) => ({ from: gap.from, to: gap.to, ...band }));
    });
}

/** The heights of the noggins in one gap. Plates above and below serve as backing too. */
function bands(
  lines: readonly Line[],
  timber: FrameTimber,
  frame: { readonly low: number; readonly high: number },
): readonly Band[] {
  const { face } = timber;
  const clear = { low: frame.low + face, high: frame.high - face };
  if (clear.high - clear.low < face) return [];
  const laid: Band[] = [];
  const rising = lines
    .filter((l) => l.z > clear.low - LEAST_EDGE && l.z < clear.high + LEAST_EDGE)
    .sort((a, b) => a.z - b.z);
  for (let i = 0; i < rising.length; i++) {
    const last = laid.at(-1);
    if (last && rising[i].z <= last.high - LEAST_EDGE + SAME_LENGTH) {
      addReason(last, rising[i].reason);
      continue;
    }
    const together = rising.slice(i).filter((l) => l.z - rising[i].z <= Math.max(0, face - 2 * LEAST_EDGE));
    const centre = (rising[i].z + together[together.length - 1].z) / 2;
    const low = Math.max(last?.high ?? clear.low, Math.min(centre - face / 2, clear.high - face));
    if (low + face <= clear.high + SAME_LENGTH) laid.push({ low, high: low + face, reasons: [rising[i].reason] });
    else if (last) addReason(last, rising[i].reason);
  }
  return withRows(laid, timber, clear);
}

/** Adds the frame's own rows, equally spaced between the plates, where nothing lies near. */
function withRows(
  laid: readonly Band[],
  { face, nogginRows }: FrameTimber,
  clear: { readonly low: number; readonly high: number },
): readonly Band[] {
  const all = [...laid];
  for (let row = 1; row <= nogginRows; row++) {
    const centre = clear.low + ((clear.high - clear.low) * row) / (nogginRows + 1);
    const near = all.some((b) => Math.abs((b.low + b.high) / 2 - centre) < NEAR_ROW_FACES * face);
    const fits = centre - face / 2 >= clear.low && centre + face / 2 <= clear.high;
    if (!near && fits) all.push({ low: centre - face / 2, high: centre + face / 2, reasons: [`row ${row}`] });
  }
  return all.sort((a, b) => a.low - b.low);
}

function addReason(band: Band, reason: string): void {
  if (!band.reasons.includes(reason)) band.reasons.push(reason);
}
