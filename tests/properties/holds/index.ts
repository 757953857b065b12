import type { Property } from '../sample';
import { backed } from './backed';
import { cornerRule } from './corner-rule';
import { bays } from './division';
import { held } from './held';
import { joinsNotMinded } from './joins-minded';
import { mirrored } from './mirrored';
import { finite, positive } from './numbers';
import { openings } from './openings';
import { plan } from './plan';
import { repeated, untouched } from './repeated';
import { parted } from './sections';
import { timber } from './timber';
import { within } from './within';

/** What holds for every design, in words. */
export const HOLDS: Readonly<Record<string, Property>> = {
  'runs lie end to end, turned as asked': plan,
  'every layer keeps the corner rule, and a length is found on the layer it was taken over': cornerRule,
  'pillars and bays add up to the face, the bays equal': bays,
  'studs and gaps add up to the frame, within the centres; noggins fit': timber,
  'every number is finite': finite,
  'every part has a size and a weight': positive,
  'every part lies in the unit': within,
  'every edge of the skin has timber behind it': backed,
  'every part is in one section or fitted on site, and none fitted in the workshop crosses a join': parted,
  'every opening is cut where it is wished, and no frame part meets its hole': openings,
  'what joins are nothing to is the same in one piece and parted': joinsNotMinded,
  'every part says how it is held': held,
  'the mirrored job gives the mirrored unit': mirrored,
  'the same job gives the same design': repeated,
  'a run that is not touched stays as it was': untouched,
};
