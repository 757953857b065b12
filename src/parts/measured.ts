import type { Part } from '../vocabulary/part';

/**
 * What a rule and a bevel find on a piece, mm and degrees. `size.length` is from long point to long point; `shortPoint` the
 * least length along any line of a stick, or along the long edges of a board. Ends: at the start, then at the end.
 */
export type Measure = Pick<Part, 'size' | 'shortPoint' | 'ends'>;
