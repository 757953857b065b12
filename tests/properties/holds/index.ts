import type { Property } from '../sample';
import { backed } from './backed';
import { cornerRule } from './corner-rule';
import { bays, timber } from './division';
import { mirrored } from './mirrored';
import { repeated, untouched } from './repeated';
import { finite, plan, positive, within } from './within';

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
  'the mirrored job gives the mirrored unit': mirrored,
  'the same job gives the same design': repeated,
  'a run that is not touched stays as it was': untouched,
};
