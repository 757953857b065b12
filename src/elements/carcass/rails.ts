import { meetsBehind } from '../../base/meets-behind';
import { lying } from '../../base/stuff';
import type { RunFraming } from '../../vocabulary/backing';
import type { Carcass } from '../../vocabulary/carcass';
import type { Outline } from '../../vocabulary/geometry';
import type { Hold, PartDraft } from '../../vocabulary/part';
import type { Rod, RodRun } from '../../vocabulary/rod';
import { type Draft, worktopRail } from './cross-frames';
import { throughPost, toStuds } from './holds';

/** A bearer beyond the last cross frame shorter than this is left out: the worktop spans it (common practice, no source). */
const LEAST_BEARER = 60;

interface Length {
  readonly from: number;
  readonly to: number;
}

/**
 * Rails along the run at the back, from cross frame to cross frame: under the top; along the bottom where the space has something behind
 * doors or nothing yet; under the rear edge of a worktop.
 */
export function rearRails(draft: Draft, section: Outline, run: RodRun, carcass: Carcass): readonly PartDraft[] {
  if (!carcass.rearRail) return [];
  const { back, low, high, depth, worktop } = carcass;
  const under = worktopRail(carcass);
  return run.backBays.flatMap((bay) => {
    const rail = (z: number, d: number, where: string): PartDraft =>
      draft(
        run,
        {
          code: 'RA',
          name: 'rear rail',
          where: `space ${bay.index + 1}, ${where}`,
          holds: [throughPost(carcass.face)],
        },
        lying(run, section, { from: bay.from, to: bay.to, d, z }),
      );
    return [
      // The setting-out gives a space its clear height from the bottom rail, where it has one.
      ...(bay.low > 0 ? [rail(low, back, 'bottom')] : []),
      ...(under !== undefined && worktop ? [rail(under, worktop.edge, 'under the worktop')] : []),
      rail(high - depth, back, 'top'),
    ];
  });
}

/** Bearers under the front edge of a worktop, on the back of the front frame; beyond the last cross frame they run into the corner. */
export function frontBearers(
  draft: Draft,
  section: Outline,
  rod: Pick<Rod, 'runs'>,
  run: RodRun,
  framing: RunFraming | undefined,
  carcass: Carcass,
): readonly PartDraft[] {
  const { worktop, front, face, depth } = carcass;
  if (!worktop || run.crossLines.length === 0) return [];
  const z = worktop.high - worktop.thickness - depth;
  const d = front - face;
  const studs = ({ from, to }: Length): number =>
    (framing?.studs ?? []).filter((s) => s.to > from && s.from < to).length;
  // Between studs that stand behind the cross frames themselves it hangs from their rails.
  const hold = (length: Length): Hold => {
    const behind = studs(length);
    return behind > 0 ? toStuds(face, 2 * behind) : throughPost(face);
  };
  return [...run.backBays, ...intoCorners(rod, run, d)].map((length, i) =>
    draft(
      run,
      { code: 'BE', name: 'bearer', where: `worktop, front, ${i + 1}`, holds: [hold(length)] },
      lying(run, section, { from: length.from, to: length.to, d, z }),
    ),
  );
}

/** What lies between the outermost cross frames and an outside corner, at offset d. */
function intoCorners(rod: Pick<Rod, 'runs'>, run: RodRun, d: number): readonly Length[] {
  const first = run.crossLines[0];
  const last = run.crossLines[run.crossLines.length - 1];
  // A bearer ends on a join.
  const from = Math.max(
    run.left.frameAt,
    -d * run.left.grows,
    ...run.joins.map((j) => j.x).filter((x) => x <= first.from),
  );
  const to = Math.min(
    run.right.frameAt,
    run.length + d * run.right.grows,
    ...run.joins.map((j) => j.x).filter((x) => x >= last.to),
  );
  return [
    ...(meetsBehind(rod, run.left, 'left') && first.why === 'end' ? [{ from, to: first.from }] : []),
    ...(meetsBehind(rod, run.right, 'right') && last.why === 'end' ? [{ from: last.to, to }] : []),
  ].filter((length) => length.to - length.from >= LEAST_BEARER);
}
