import { rectangle } from '../../base/outline';
import { level, onFace, placeOf } from '../../base/place';
import { SQUARE_START, type Stuff, squareCut, standing } from '../../base/stuff';
import type { Carcass, CrossLine } from '../../vocabulary/carcass';
import type { Outline } from '../../vocabulary/geometry';
import type { PartDraft } from '../../vocabulary/part';
import type { RodRun } from '../../vocabulary/rod';
import type { Stick } from '../../vocabulary/shape';
import { bolted, skewed } from './holds';

/** What every piece of the carcass has in common. */
export type Draft = (
  run: RodRun,
  said: Pick<PartDraft, 'code' | 'name' | 'where' | 'holds'>,
  stuff: Stuff,
) => PartDraft;

/** The two sections that all its pieces are cut from: a rail's (u up, v along the run) and a post's (u along the run, v outward). */
export interface Sections {
  readonly rail: Outline;
  readonly post: Outline;
}

export const sectionsOf = ({ face, depth }: Carcass): Sections => ({
  rail: rectangle(depth, face),
  post: rectangle(face, depth),
});

/** A rail from back to front: d of its two ends, its underside, its name. */
interface Rail {
  readonly from: number;
  readonly z: number;
  readonly where: string;
}

/**
 * Underside of the rail under a worktop that lies lower than the carcass' own top; undefined where there is none, or it lies on the top
 * rails.
 */
export function worktopRail({ worktop, high, depth }: Carcass): number | undefined {
  const under = worktop ? worktop.high - worktop.thickness : high;
  return under < high ? under - depth : undefined;
}

/** Underside of a rail halfway between the bottom rail and the next above; undefined where less than a rail would stay clear on either side. */
export function middleRail(carcass: Carcass): number | undefined {
  const { low, high, depth } = carcass;
  const from = low + depth;
  const to = worktopRail(carcass) ?? high - depth;
  return to - from >= 3 * depth ? (from + to - depth) / 2 : undefined;
}

/** One cross frame: the rear post, rails from it to the front frame, and with a recess for toes a foot under the bottom rail, further in. */
export function crossFrame(
  draft: Draft,
  sections: Sections,
  run: RodRun,
  line: CrossLine,
  carcass: Carcass,
  said: { readonly where: string; readonly midRail: boolean; readonly boltTo: boolean },
): readonly PartDraft[] {
  const { back, depth, low, high, toeDepth } = carcass;
  const recessed = toeDepth > 0;
  const inside = back + depth;
  const under = worktopRail(carcass);
  const middle = said.midRail ? middleRail(carcass) : undefined;
  const rails: readonly Rail[] = [
    // With a recess the post stands on the rail.
    { from: recessed ? back : inside, z: low, where: 'bottom' },
    ...(middle === undefined ? [] : [{ from: inside, z: middle, where: 'middle' }]),
    ...(under === undefined ? [] : [{ from: inside, z: under, where: 'under the worktop' }]),
    { from: inside, z: high - depth, where: 'top' },
  ];
  const post = (at: { readonly d: number; readonly low: number; readonly high: number }): Stuff =>
    standing(run, sections.post, { x: line.to, ...at });
  return [
    ...rails.map((rail) =>
      draft(
        run,
        { code: 'CR', name: 'cross rail', where: `${said.where}, ${rail.where}`, holds: [skewed('ends')] },
        fore(run, sections.rail, line, { from: rail.from, to: carcass.front, z: rail.z }),
      ),
    ),
    draft(
      run,
      {
        code: 'RP',
        name: 'rear post',
        where: said.where,
        holds: [skewed(recessed ? 'foot' : 'rails'), ...(said.boltTo ? [bolted(carcass.face)] : [])],
      },
      post({ d: back, low: recessed ? low + depth : 0, high }),
    ),
    ...(recessed
      ? [
          draft(
            run,
            { code: 'FP', name: 'foot', where: said.where, holds: [skewed('foot')] },
            post({ d: back + toeDepth, low: 0, high: low }),
          ),
        ]
      : []),
  ];
}

/** A stick lying from back to front behind a run, its section's v from the right-hand side of the cross frame to the left. */
function fore(
  run: RodRun,
  section: Outline,
  line: CrossLine,
  at: { readonly from: number; readonly to: number; readonly z: number },
): Stuff<Stick> {
  return {
    shape: { kind: 'stick', section, start: SQUARE_START, end: squareCut(at.to - at.from) },
    place: placeOf(onFace(run, line.to, at.from, at.z), level(run.front), level([-run.along[0], -run.along[1]])),
  };
}
