import type { Design } from '../vocabulary/design';
import type { Making } from '../vocabulary/making';
import { contactsOf } from './contacts';
import { fixingsOf } from './fixings';
import { mapsOf } from './map';
import { siteOf } from './site';
import { spacersOf } from './spacers';
import { stepsOf } from './steps';
import { touchingOf } from './touching';

/** Everything about the making of a design: what touches, steps, fixings, spacers, fixing maps, what waits on site. */
export function makingOf(made: Design): Making {
  const contacts = contactsOf(made.parts);
  const touching = touchingOf(contacts);
  return {
    contacts,
    steps: stepsOf(made, touching),
    fixings: fixingsOf(made, touching),
    spacers: spacersOf(made.framing, made.rod, made.job.tools.roundingStep),
    maps: mapsOf(made),
    site: siteOf(made, touching),
  };
}
