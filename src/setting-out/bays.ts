import { tenth } from '../base/tenth';
import { SAME_LENGTH } from '../base/tolerance';
import type { Finding } from '../vocabulary/finding';
import type { Rhythm } from '../vocabulary/job';
import type { Bay, PillarMark, RunEnd, SaidOfBay } from '../vocabulary/rod';

/** The face of a run on which pillars and bays are set out. */
export interface Front {
  readonly run: string;
  readonly path: string;
  readonly from: number;
  readonly to: number;
  readonly left: RunEnd;
  readonly right: RunEnd;
  readonly width: number;
  readonly cornerWidth: number;
  readonly footOverhang: number;
  readonly rhythm: Rhythm;
  readonly atCorners: boolean;
  /** Where the skin's face begins and ends: a bay that runs into a corner without a pillar goes so far. */
  readonly bareFrom: number;
  readonly bareTo: number;
  /** What the job says of single bays of this run. */
  readonly wishes: readonly SaidOfBay[];
}

export interface Division {
  readonly pillars: readonly PillarMark[];
  readonly bays: readonly Bay[];
  readonly findings: readonly Finding[];
}

/** Float noise must not make 800.0000001 need another bay. */
const NOISE = 1e-6;

/** Centres of the pillars between the end ones: clear length from `from` to `to`, equal bays (opening p = (W − n·s)/(n + 1)). */
function equalCentres(from: number, to: number, width: number, bays: number): number[] {
  const step = (to - from + width) / bays;
  return Array.from({ length: bays - 1 }, (_, i) => from - width / 2 + step * (i + 1));
}

/** Number of bays that the rhythm asks for; marks say their own. */
function bayCount(rhythm: Rhythm, clear: number, width: number): number {
  if (rhythm.by === 'count') return rhythm.count;
  if (rhythm.by === 'pitch') return Math.max(1, Math.ceil((clear + width) / rhythm.pitch - NOISE));
  return rhythm.marks.length + 1;
}

/** Sets out pillars and equal bays between the two end pillars. What does not fit is left out and said. */
export function divide(front: Front): Division {
  const { from, to, width, run, path } = front;
  const leftTo = bare(front, 'left')
    ? front.bareFrom
    : from + (front.left.kind === 'corner' ? front.cornerWidth : width);
  const rightFrom = bare(front, 'right')
    ? front.bareTo
    : to - (front.right.kind === 'corner' ? front.cornerWidth : width);
  const clear = rightFrom - leftTo;
  if (clear <= SAME_LENGTH) {
    const need = leftTo - from + (to - rightFrom);
    return {
      pillars: [],
      bays: [],
      findings: [
        stop(
          run,
          path,
          'pillars-wider-than-run',
          `The end pillars of run ${run} need ${tenth(need)} mm of face; it has ${tenth(to - from)} mm.`,
          to - from,
          need,
          'Lengthen the run or make the pillars narrower. Its front is left without pillars.',
        ),
      ],
    };
  }
  const wanted = bayCount(front.rhythm, clear, width);
  const marks = front.rhythm.by === 'marks' ? [...front.rhythm.marks] : equalCentres(leftTo, rightFrom, width, wanted);
  const edges = [leftTo, ...marks.flatMap((c) => [c - width / 2, c + width / 2]), rightFrom];
  const narrowest = Math.min(...edges.flatMap((x, i) => (i % 2 === 0 ? [edges[i + 1] - x] : [])));
  const fits = narrowest > 0;
  const off = marks.find((c) => c < leftTo || c > rightFrom);
  const findings = fits
    ? []
    : [
        stop(
          run,
          path,
          'bays-too-narrow',
          off === undefined
            ? `${wanted} bays in run ${run} leave nothing between pillars of ${tenth(width)} mm: they would ${narrowest < 0 ? `overlap by ${tenth(-narrowest)} mm` : 'touch'}.`
            : `A pillar is wanted on ${tenth(off)} mm in run ${run}; between its end pillars there is ${tenth(leftTo)} to ${tenth(rightFrom)} mm.`,
          narrowest,
          0,
          'Ask for fewer bays, narrower pillars or other marks. The pillars between are left out.',
        ),
      ];
  return { ...pillarsAndBays(front, leftTo, rightFrom, fits ? marks : []), findings };
}

/** A corner without a pillar. */
const bare = (front: Front, side: 'left' | 'right'): boolean => front[side].kind === 'corner' && !front.atCorners;

function pillarsAndBays(
  front: Front,
  leftTo: number,
  rightFrom: number,
  centres: readonly number[],
): Pick<Division, 'pillars' | 'bays'> {
  const half = front.width / 2;
  const foot = front.footOverhang;
  const end = (where: 'left' | 'right', from: number, to: number) =>
    bare(front, where) ? [] : [{ from, to, where, mitred: front[where].kind === 'corner' }];
  const all = [
    ...end('left', front.from, leftTo),
    ...centres.map((c) => ({ from: c - half, to: c + half, where: 'between' as const, mitred: false })),
    ...end('right', rightFrom, front.to),
  ];
  const pillars = all.map(
    ({ from, to, where, mitred }, index): PillarMark => ({
      index,
      from,
      to,
      centre: (from + to) / 2,
      where,
      mitred,
      footFrom: where === 'left' ? from : from - foot,
      footTo: where === 'right' ? to : to + foot,
    }),
  );
  const starts = [
    ...(bare(front, 'left') ? [{ to: leftTo, footTo: leftTo, mitred: true }] : []),
    ...pillars.filter((p) => p.where !== 'right').map((p) => ({ to: p.to, footTo: p.footTo, mitred: false })),
  ];
  const stops = [
    ...pillars.filter((p) => p.where !== 'left').map((p) => ({ from: p.from, footFrom: p.footFrom, mitred: false })),
    ...(bare(front, 'right') ? [{ from: rightFrom, footFrom: rightFrom, mitred: true }] : []),
  ];
  const bays = starts.map((start, index): Bay => {
    const stop = stops[index];
    const wish = front.wishes.find((w) => w.bay === index + 1);
    return {
      index,
      from: start.to,
      to: stop.from,
      footFrom: start.footTo,
      footTo: stop.footFrom,
      mitredLeft: start.mitred,
      mitredRight: stop.mitred,
      panels: wish?.panels ?? true,
      ...(wish ? { wish } : {}),
    };
  });
  return { pillars, bays };
}

const stop = (
  run: string,
  path: string,
  rule: string,
  message: string,
  value: number,
  limit: number,
  remedy: string,
): Finding => ({
  severity: 'stop',
  rule,
  subject: { run, path },
  message,
  value,
  limit,
  source: 'geometry of the setting-out',
  remedy,
});
