import { SAME_LENGTH } from '../base/tolerance';
import type { Backing, Noggin, Stud } from '../vocabulary/backing';
import type { FrameTimber } from '../vocabulary/rod';
import { type Band, type Hole, LEAST_EDGE, type Moved, nearRow, type Span, settle, trimmers } from './bands';
import type { KeepOut } from './keep-outs';

/** A gap between studs narrower than this takes no noggin: the studs themselves are the backing (common practice, no source). */
const LEAST_NOGGIN = 30;

type NogginWish = Extract<Backing, { kind: 'noggin' }>;
interface Line {
  readonly z: number;
  readonly reason: string;
}

/** The noggins of a frame, and those that an opening has moved or kept out. */
export interface Laid {
  readonly noggins: readonly Noggin[];
  readonly moved: readonly Moved[];
}

/** Noggins between neighbouring studs: wherever a room asks, and in the rows that the frame itself has. Heights above the floor, mm. */
export function layNoggins(
  studs: readonly Stud[],
  timber: FrameTimber,
  frame: { readonly low: number; readonly high: number },
  wishes: readonly NogginWish[],
  keepOuts: readonly KeepOut[] = [],
  trimmed: readonly KeepOut[] = [],
): Laid {
  const { face } = timber;
  const clear = { low: frame.low + face, high: frame.high - face };
  const gaps = studs
    .slice(1)
    .map((stud, i) => ({ from: studs[i].to, to: stud.from }))
    .filter((gap) => gap.to - gap.from >= LEAST_NOGGIN - SAME_LENGTH);
  const rising = [...wishes].sort((a, b) => a.z - b.z);
  const laid = gaps.map((gap) => {
    const meets = (w: { readonly from: number; readonly to: number }): boolean =>
      w.from < gap.to - SAME_LENGTH && w.to > gap.from + SAME_LENGTH;
    const lines = rising.filter(meets);
    const holes = keepOuts.filter(meets).map((of): Hole => ({ ...of, of, trimmed: trimmed.includes(of) }));
    const { bands, moved } = bandsIn(lines, holes, timber, clear);
    return {
      noggins: bands.map(({ low, high, reasons }): Noggin => ({ from: gap.from, to: gap.to, low, high, reasons })),
      moved,
    };
  });
  return { noggins: laid.flatMap((l) => l.noggins), moved: laid.flatMap((l) => l.moved) };
}

/** The heights of the noggins in one gap, for lines from the lowest up. Plates above and below serve as backing too; nothing crosses a hole. */
function bandsIn(
  lines: readonly Line[],
  holes: readonly Hole[],
  timber: FrameTimber,
  clear: Span,
): { readonly bands: readonly Band[]; readonly moved: readonly Moved[] } {
  const { face } = timber;
  if (clear.high - clear.low < face) return { bands: [], moved: [] };
  const wished = bandsOf(lines, face, clear);
  if (holes.length === 0) return { bands: withRows(wished, timber, clear), moved: [] };
  const round = settle(wished, trimmers(holes, face, clear), holes, face, clear);
  const rows = withRows(round.bands, timber, clear).filter((band) => !round.bands.includes(band));
  const all = settle(rows, round.bands, holes, face, clear);
  return { bands: [...all.bands].sort((a, b) => a.low - b.low), moved: [...round.moved, ...all.moved] };
}

/** Noggins that carry the lines, which come from the lowest up: one for all that it covers. */
function bandsOf(lines: readonly Line[], face: number, clear: Span): readonly Band[] {
  const laid: Band[] = [];
  const rising = lines.filter((l) => l.z > clear.low - LEAST_EDGE && l.z < clear.high + LEAST_EDGE);
  const reach = Math.max(0, face - 2 * LEAST_EDGE);
  for (let i = 0; i < rising.length; i++) {
    const last = laid.at(-1);
    if (last && rising[i].z <= last.high - LEAST_EDGE + SAME_LENGTH) {
      add(last, rising[i]);
      continue;
    }
    let highest = rising[i].z;
    for (let k = i + 1; k < rising.length && rising[k].z - rising[i].z <= reach; k++) highest = rising[k].z;
    const centre = (rising[i].z + highest) / 2;
    const low = Math.max(last?.high ?? clear.low, Math.min(centre - face / 2, clear.high - face));
    const band = { low, high: low + face, reasons: [rising[i].reason], lines: [rising[i].z] };
    if (low + face <= clear.high + SAME_LENGTH) laid.push(band);
    else if (last) add(last, rising[i]);
  }
  return laid;
}

/** Adds the frame's own rows, equally spaced between the plates, where nothing lies near. */
function withRows(laid: readonly Band[], { face, nogginRows }: FrameTimber, clear: Span): readonly Band[] {
  if (nogginRows === 0) return laid;
  const all = [...laid];
  for (let row = 1; row <= nogginRows; row++) {
    const centre = clear.low + ((clear.high - clear.low) * row) / (nogginRows + 1);
    const near = all.some((b) => nearRow(b, centre, face));
    const fits = centre - face / 2 >= clear.low && centre + face / 2 <= clear.high;
    if (!near && fits)
      all.push({ low: centre - face / 2, high: centre + face / 2, reasons: [`row ${row}`], lines: [] });
  }
  return all.sort((a, b) => a.low - b.low);
}

function add(band: Band, { z, reason }: Line): void {
  band.lines.push(z);
  if (!band.reasons.includes(reason)) band.reasons.push(reason);
}
