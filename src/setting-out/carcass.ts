import { SAME_LENGTH } from '../base/tolerance';
import type { Carcass } from '../vocabulary/carcass';
import type { Finding } from '../vocabulary/finding';
import type { Demands, FrameTimber, RodRun } from '../vocabulary/rod';
import { backBaysOf, withoutSpace } from './back-bays';
import { noRoom, nothingUnder, railsRaised, tooShort } from './carcass-findings';
import { type Before, type LaidWorktop, LEAST_RAIL, underTop, worktopOf } from './carcass-worktop';
import { crossLinesOf, holdsTwo, LEAST_CLEAR, piecesOf } from './cross-lines';

/** A foot set in from the post stays this far from the front frame (common practice, no source). */
const LEAST_BEFORE_FOOT = 50;

export interface LaidCarcass {
  readonly carcass?: Carcass;
  readonly runs: readonly RodRun[];
  readonly findings: readonly Finding[];
}

/**
 * The setting-out of the frame behind the front: its planes, and in each of the job's runs the cross frames and the spaces between them.
 * Returns get none. What leaves no room for it is said, and then nothing stands behind.
 */
export function layCarcass(runs: readonly RodRun[], demands: readonly Demands[], before: Before): LaidCarcass {
  const asked = demands.find((d) => d.carcass)?.carcass;
  const wished = demands.find((d) => d.worktop)?.worktop;
  const none = (...findings: Finding[]): LaidCarcass => ({
    runs,
    findings: [...findings, ...(wished ? [nothingUnder(wished.high)] : []), ...withoutSpace(runs)],
  });
  if (!asked) return none();
  const { laid: worktop, findings } = worktopOf(asked, wished, before);
  const carcass = planesOf(asked, worktop, before);
  const beside = Math.max(LEAST_RAIL, carcass.toeDepth + LEAST_BEFORE_FOOT);
  const least = { reach: asked.depth + beside, height: 2 * asked.depth + LEAST_RAIL };
  const reach = carcass.front - carcass.back;
  const height = carcass.high - carcass.low;
  if (reach < least.reach - SAME_LENGTH) return none(noRoom('deep', reach, least.reach));
  if (height < least.height - SAME_LENGTH) return none(noRoom('high', height, least.height));
  // Then the front has no frame either, and says so.
  if (before.frameHeight - before.frameLow < 3 * before.timber.face) return none();
  const each = runs.map((run) => behind(run, asked.lines, carcass, before.timber));
  const stood = each.map((e) => e.run);
  return {
    carcass,
    runs: stood,
    findings: [
      ...findings,
      ...(carcass.low > asked.toeHeight + SAME_LENGTH ? [railsRaised(asked.toeHeight, carcass.low)] : []),
      ...each.flatMap((e) => e.findings),
      ...withoutSpace(stood),
    ],
  };
}

/** Its planes and heights. Where a worktop reaches further back than the top, the posts stop under it. */
function planesOf(asked: NonNullable<Demands['carcass']>, laid: LaidWorktop | undefined, before: Before): Carcass {
  return {
    stock: asked.stock,
    face: asked.face,
    depth: asked.depth,
    front: -before.timber.depth,
    back: laid ? laid.posts : underTop(asked, before),
    // Where the front frame stands on a plinth, a lower rail would find no timber there.
    low: Math.max(asked.toeHeight, before.frameLow),
    high: laid?.under ? laid.worktop.high - laid.worktop.thickness : before.frameHeight,
    toeDepth: asked.toeHeight > 0 ? asked.toeDepth : 0,
    rearRail: asked.rearRail,
    ...(laid ? { worktop: laid.worktop } : {}),
  };
}

/** How far back it reaches, with its worktop. */
export const backOf = ({ back, worktop }: Carcass): number => Math.min(back, worktop?.edge ?? back);

/** A run with its cross frames and the spaces between them. */
function behind(
  run: RodRun,
  lines: 'bays' | 'ends',
  carcass: Carcass,
  timber: FrameTimber,
): { readonly run: RodRun; readonly findings: readonly Finding[] } {
  if (run.jobIndex === null || !run.sound) return { run, findings: [] };
  // A worktop's rear edge may stand out behind the posts: it must keep to its own side of a corner too.
  const pieces = piecesOf(run, timber, { ...carcass, back: backOf(carcass) });
  const crossLines = pieces
    .filter((piece) => holdsTwo(piece, carcass))
    .flatMap((piece) => crossLinesOf(run, piece, lines, carcass, timber.datum));
  const short = pieces.filter((piece) => !holdsTwo(piece, carcass));
  return {
    run: { ...run, crossLines, backBays: backBaysOf(run, crossLines, carcass, timber.datum) },
    findings: short.map((piece) => tooShort(run.id, piece.to - piece.from, 2 * carcass.face + LEAST_CLEAR)),
  };
}
