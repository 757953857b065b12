import type { Design } from '../vocabulary/design';

/** What an elevation is drawn from. */
export type Drawable = Pick<Design, 'job' | 'rod' | 'framing' | 'openings' | 'parts'>;
