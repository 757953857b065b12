/** Lengths nearer than this are the same: a hundredth of what the finest shop rule shows (1/64 in = 0.4 mm, so 0.004). */
export const SAME_LENGTH = 0.004;

/** Chord error when an arc is drawn as straight pieces, mm: below what a coat of paint fills (about 0.05 mm; from memory). */
export const CHORD_ERROR = 0.03;

/** Angles nearer than this are the same, degrees: a mitre saw's scale is read to a quarter of a degree at best (common practice, no source). */
export const SAME_ANGLE_DEG = 0.005;

/** Timber keeps this far from the edge of a hole in what covers it, mm: a jigsaw wanders (common practice, no source). */
export const CLEAR_OF_HOLE = 5;

/** A hole through the top keeps this far from its edges, joints and mitres, mm: less splits (common practice, no source). */
export const LEAST_TO_EDGE = 50;

/** Between two openings at least this much stays of the stuff, or it breaks out, mm (common practice, no source). */
export const LEAST_BETWEEN = 20;
