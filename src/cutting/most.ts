/* How large a problem may be: far above any job, low enough that an answer comes while one waits. */

/** Pieces in all, different pieces, and kinds of stock. */
export const MOST = { pieces: 5000, different: 1000, stocks: 200 } as const;
