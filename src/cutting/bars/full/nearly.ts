/** A part of a piece or of a bar that is nothing but the solver's rounding. */
export const NEARLY = 1e-6;
