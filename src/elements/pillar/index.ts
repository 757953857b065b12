import { alongFace } from '../../base/place';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
import type { Part } from '../../vocabulary/part';
import type { Mark, PillarMark, RodRun } from '../../vocabulary/rod';
import type { Room } from '../../vocabulary/room';
import { fields } from './fields';
import { obstacles } from './obstacles';
import { parts } from './parts';
import { LEAST_PIECE } from './pieces';

/** Pillar boards on the cladding, plain or fluted. They divide the front into bays. */
export const pillar: Room<typeof fields> = {
  kind: 'pillar',
  label: 'Pillars',
  group: 'front',
  layer: 'pillar',
  fields,
  demands: ({ sheet, width, cornerWidth, atCorners, rhythm, pitch, bays, ...decided }, book) => ({
    layer: { name: 'pillar', on: 'cladding', thickness: book.item('sheet', sheet).thickness },
    pillars: {
      layer: 'pillar',
      width,
      cornerWidth,
      atCorners,
      rhythm: rhythm === 'pitch' ? { by: 'pitch', pitch } : { by: 'count', count: bays },
    },
    // How high bases and caps are, and how far they stand into a bay on each side: for what lies beside the pillars there.
    heights: {
      ...(decided.baseHeight >= LEAST_PIECE
        ? { baseHeight: decided.baseHeight, baseOverhang: decided.baseOverhang }
        : {}),
      ...(decided.capHeight >= LEAST_PIECE ? { capHeight: decided.capHeight, capOverhang: decided.capOverhang } : {}),
    },
  }),
  obstacles,
  /** They stand where they divide the front; joins are made behind them. */
  mindsJoins: () => false,
  backing: (_, { rod }) => rod.runs.flatMap((run) => run.pillars.flatMap((p) => behind(run, p, rod.timber.face))),
  parts,
  marks: (run, made) => made.filter((p) => p.code === 'PI').flatMap((p) => marksOf(run, p)),
};

/**
 * A board that reaches further than this many faces past the stud at the end of the frame gets one more there; at a corner sooner,
 * for both boards must hold the mitre shut (common practice, no source).
 */
const REACH_FACES = { end: 2, corner: 1 };

/** A stud behind the middle of a pillar between; an end pillar has the frame's end stud, and one near its inner edge if it is wide. */
function behind(run: RodRun, pillar: PillarMark, face: number): readonly Backing[] {
  const stud = (x: number): Backing => ({ kind: 'stud', run: run.id, x, centred: false, reason: 'pillar' });
  if (pillar.where === 'between') return [stud(pillar.centre)];
  const past = pillar.where === 'left' ? pillar.to - (run.left.frameAt + face) : run.right.frameAt - face - pillar.from;
  if (past <= REACH_FACES[pillar.mitred ? 'corner' : 'end'] * face) return [];
  return [stud(pillar.where === 'left' ? pillar.to - face / 2 : pillar.from + face / 2)];
}

/** Both edges of a pillar's face, and its centre. */
function marksOf(run: RodRun, { mark, name, place }: Part): readonly Mark[] {
  const right = alongFace(run, place.origin);
  const pillar = run.pillars.find((q) => Math.abs(q.to - right) < SAME_LENGTH);
  if (!pillar) return [];
  const at = (x: number, what: string): Mark => ({
    id: `${mark}-${what}`,
    x,
    lane: 'front',
    reason: `${name}, ${what}`,
    part: mark,
  });
  return [at(pillar.from, 'left edge'), at(pillar.centre, 'centre'), at(pillar.to, 'right edge')];
}
