import type { Hold } from '../../vocabulary/part';

/** Two screws through the plate into each end of a stud, glued. `plate`: its thickness, mm. */
export const studHolds = (plate: number): readonly Hold[] => [
  {
    by: 'screw',
    through: plate,
    where: { at: 'ends', each: 2 },
    endGrain: true,
    glue: 'pva',
    rule: 'stud through plate, butt joint: 2 screws 5.0 × 100 for plates of 38–45 (trade practice; from memory)',
  },
];

/** A bottom plate is fixed down along its length; a top plate by the studs' screws, which are the studs' own, and by what lies on it. */
export const plateHolds = (where: 'bottom' | 'top', thickness: number): readonly Hold[] => [
  where === 'bottom'
    ? {
        by: 'screw',
        through: thickness,
        where: { at: 'length', centres: PLATE_CENTRES },
        rule: `bottom plate to what it stands on, at ${PLATE_CENTRES} centres; into a floor, with what suits that floor (common practice, no source)`,
      }
    : {
        by: 'screw',
        through: thickness,
        where: { at: 'all', each: 0 },
        endGrain: true,
        rule: 'top plate: by the screws through it into the studs, counted with those',
      },
];

/** Fixing a plate along its length, mm (common practice, no source). */
const PLATE_CENTRES = 600;

/** How far a screw driven askew goes through the noggin before it reaches the stud, mm (from memory). */
const SKEW = 30;

/** A screw driven askew from each side at each end. */
export const nogginHolds: readonly Hold[] = [
  {
    by: 'screw',
    through: SKEW,
    where: { at: 'ends', each: 2 },
    rule: 'noggin, driven askew: 1 screw 5.0 × 65–75 each side at each end (trade practice; from memory)',
  },
];

/** A corner fillet is glued and screwed through its thickness to the stud beside it. */
export const filletHolds = (thickness: number): readonly Hold[] => [
  {
    by: 'screw',
    through: thickness,
    where: { at: 'length', centres: FILLET_CENTRES },
    glue: 'pva',
    rule: `corner fillet to the end stud, at ${FILLET_CENTRES} centres (common practice, no source)`,
  },
];

const FILLET_CENTRES = 300;
