import type { Room } from '../vocabulary/room';
import { cladding } from './cladding';
import { frame } from './frame';
import { panel } from './panel';
import { pillar } from './pillar';
import { plinth } from './plinth';
import { skirting } from './skirting';
import { top } from './top';

/** Every kind of thing that is made, from the frame outward. A layer lies on one named before it. */
export const rooms: readonly Room[] = [frame, cladding, pillar, plinth, skirting, panel, top];
