import type { RunFraming } from './backing';
import type { Finding } from './finding';
import type { Job } from './job';
import type { PlacedOpening } from './opening';
import type { Part } from './part';
import type { Mark, Rod } from './rod';
import type { Join, Section } from './section';

/** A material and how much of it the parts hold: net, before cutting. */
export interface MaterialTotal {
  readonly material: string;
  readonly name: string;
  readonly unit: 'm' | 'm²';
  readonly amount: number;
  readonly parts: number;
  readonly weightKg: number;
}

export interface Totals {
  readonly weightKg: number;
  readonly parts: number;
  readonly materials: readonly MaterialTotal[];
  /** Bounding box of the whole unit, along the first run, across it, and up. */
  readonly overall: { readonly length: number; readonly depth: number; readonly height: number };
}

/** Everything worked out from a job. */
export interface Design {
  readonly job: Job;
  readonly rod: Rod;
  readonly openings: readonly PlacedOpening[];
  readonly framing: readonly RunFraming[];
  readonly parts: readonly Part[];
  readonly sections: readonly Section[];
  readonly joins: readonly Join[];
  readonly marks: Readonly<Record<string, readonly Mark[]>>;
  readonly findings: readonly Finding[];
  readonly totals: Totals;
}
