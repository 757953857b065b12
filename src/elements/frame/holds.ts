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

/** Bottom plates are fixed down and top plates up into what lies on them; the studs' screws are the studs' own. */
export const plateHolds = (thickness: number): readonly Hold[] => [
  {
    by: 'screw',
    through: thickness,
    where: { at: 'length', centres: PLATE_CENTRES },
    rule: `plate to what it stands on or carries, at ${PLATE_CENTRES} centres (common practice, no source); into a floor, with what suits that floor`,
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
