import type { Room } from '../vocabulary/room';
import { appliance } from './appliance';
import { carcass } from './carcass';
import { cladding } from './cladding';
import { cover } from './cover';
import { door } from './door';
import { flap } from './flap';
import { footrail } from './footrail';
import { frame } from './frame';
import { panel } from './panel';
import { pillar } from './pillar';
import { plinth } from './plinth';
import { shelf } from './shelf';
import { skirting } from './skirting';
import { top } from './top';
import { undertop } from './undertop';
import { worktop } from './worktop';

/** Every kind of thing that is made, in the order in which it is put on: from the frame outward, then what is fitted behind. A layer lies on one named before it. */
export const rooms: readonly Room[] = [
  frame,
  carcass,
  cladding,
  plinth,
  pillar,
  skirting,
  undertop,
  panel,
  cover,
  footrail,
  top,
  flap,
  worktop,
  shelf,
  appliance,
  door,
];
