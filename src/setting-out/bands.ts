import { tenth } from '../base/tenth';
import { SAME_LENGTH } from '../base/tolerance';
import type { Finding } from '../vocabulary/finding';
import type { KeepOut } from './keep-outs';

/** A line of fixings must lie at least this far in from the edge of the timber (common practice, no source). */
export const LEAST_EDGE = 6;

/** A row that only stiffens is left out where a noggin lies within this many faces of it (common practice, no source). */
const NEAR_ROW_FACES = 3;

/** Whether a noggin lies so near to the middle of a row that it stiffens in its place. */
export const nearRow = ({ low, high }: Span, centre: number, face: number): boolean =>
  Math.abs((low + high) / 2 - centre) < NEAR_ROW_FACES * face;

/** From one height to another above the floor, mm. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

/** A noggin in one gap: its heights, why it is there, and the heights of fixings that it carries. */
export interface Band extends Span {
  readonly reasons: string[];
  readonly lines: number[];
}

/** A keep-out in one gap. */
export interface Hole extends Span {
  readonly of: KeepOut;
  readonly trimmed: boolean;
}

/** A noggin that would have crossed a hole: where its lower face was to be, and is; undefined: left out. */
export interface Moved {
  readonly of: KeepOut;
  readonly reasons: readonly string[];
  readonly was: number;
  readonly low?: number;
  /** A line of fixings that it no longer carries. */
  readonly bare: boolean;
}

const meets = (a: Span, b: Span): boolean => a.low < b.high - SAME_LENGTH && a.high > b.low + SAME_LENGTH;

const within = (a: Span, b: Span): boolean => a.low >= b.low - SAME_LENGTH && a.high <= b.high + SAME_LENGTH;

/** Trimming noggins under and over each hole that is trimmed, where the plates and the other holes leave room. */
export function trimmers(holes: readonly Hole[], face: number, clear: Span): readonly Band[] {
  const laid: Band[] = [];
  for (const hole of [...holes].sort((a, b) => a.low - b.low || a.high - b.high)) {
    if (!hole.trimmed) continue;
    for (const low of [hole.low - face, hole.high]) {
      const span = { low, high: low + face };
      if (within(span, clear) && ![...holes, ...laid].some((other) => meets(span, other)))
        laid.push({ ...span, reasons: ['trimmer'], lines: [] });
    }
  }
  return laid;
}

/**
 * Lays bands among those that lie already. One that would cross a hole, or one of those, is moved up or down by the least distance, or
 * left out where another carries all that it would, or where there is no room.
 */
export function settle(
  bands: readonly Band[],
  fixed: readonly Band[],
  holes: readonly Hole[],
  face: number,
  clear: Span,
): { readonly bands: readonly Band[]; readonly moved: readonly Moved[] } {
  const free = (span: Span, others: readonly Span[]): boolean =>
    within(span, clear) && ![...holes, ...others].some((other) => meets(span, other));
  const laid = [...fixed, ...bands.filter((band) => free(band, fixed))];
  const moved: Moved[] = [];
  for (const band of bands.filter((b) => !laid.includes(b))) {
    const carriers = band.lines.map((z) => laid.find((other) => carries(other, z)));
    const hole = holes.find((h) => meets(band, h)) ?? holes[0];
    if (band.lines.length > 0 && carriers.every((c) => c !== undefined)) {
      for (const carrier of new Set(carriers)) takeOver(carrier as Band, band);
      continue;
    }
    const places = [...holes, ...laid]
      .flatMap((other) => [other.low - face, other.high])
      .filter((low) => free({ low, high: low + face }, laid))
      .sort((a, b) => Math.abs(a - band.low) - Math.abs(b - band.low) || a - b);
    const low = places[0];
    // A row only stiffens: the noggin that it would then lie beside does that.
    if (band.lines.length === 0 && low !== undefined && laid.some((other) => nearRow(other, low + face / 2, face)))
      continue;
    const now = low === undefined ? undefined : { ...band, low, high: low + face };
    const bare = band.lines.some((z) => ![...laid, ...(now ? [now] : [])].some((other) => carries(other, z)));
    if (now) laid.push(now);
    moved.push({ of: hole.of, reasons: band.reasons, was: band.low, ...(now ? { low } : {}), bare });
  }
  return { bands: laid.sort((a, b) => a.low - b.low), moved };
}

/** Whether a line of fixings at a height lies far enough in from the edges of a noggin. */
const carries = ({ low, high }: Span, z: number): boolean => {
  const edge = Math.min(LEAST_EDGE, (high - low) / 2);
  return z >= low + edge - SAME_LENGTH && z <= high - edge + SAME_LENGTH;
};

function takeOver(carrier: Band, from: Band): void {
  carrier.lines.push(...from.lines);
  for (const reason of from.reasons) if (!carrier.reasons.includes(reason)) carrier.reasons.push(reason);
}

/** What is said of the noggins that an opening has moved, once for each noggin's reason and height. */
export function movedFindings(run: string, moved: readonly Moved[]): readonly Finding[] {
  const said = new Set<string>();
  return moved.flatMap((m): readonly Finding[] => {
    const what = `The noggin for ${m.reasons.join(', ')} at ${tenth(m.was)} mm in run ${run}`;
    const message =
      m.low === undefined
        ? `${what} would cross ${m.of.reason}, and there is no room above or below: it is left out there.`
        : `${what} would cross ${m.of.reason}: it is moved ${tenth(Math.abs(m.low - m.was))} mm ${m.low > m.was ? 'up' : 'down'}, to ${tenth(m.low)} mm.`;
    if (said.has(message)) return [];
    said.add(message);
    return [
      {
        severity: 'note',
        rule: m.low === undefined ? 'noggin-left-out' : 'noggin-moved',
        subject: { run, ...(m.of.opening === undefined ? {} : { path: `/unit/openings/${m.of.opening}` }) },
        value: m.was,
        ...(m.low === undefined ? {} : { limit: m.low }),
        message,
        source: 'geometry of the frame',
        remedy: m.bare
          ? 'Between those two studs no timber lies behind that line: glue there, or move the opening.'
          : 'Nothing to do.',
      },
    ];
  });
}
