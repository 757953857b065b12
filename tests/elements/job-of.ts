import { newJob } from '../../src/flow';
import type { StockItem } from '../../src/vocabulary/book';
import type { Design } from '../../src/vocabulary/design';
import type { Decision } from '../../src/vocabulary/field';
import type { BayWish, Carry, EndCondition, Fit, Job, Joins, Opening, Run, Survey } from '../../src/vocabulary/job';
import type { Part } from '../../src/vocabulary/part';
import type { RodRun } from '../../src/vocabulary/rod';

/** What a test says of its job; the rest is as in a new one, between two walls. */
export interface Said {
  readonly runs?: readonly Partial<Run>[];
  readonly leftEnd?: EndCondition;
  readonly rightEnd?: EndCondition;
  readonly height?: number;
  readonly depth?: number;
  readonly elements?: Readonly<Record<string, Readonly<Record<string, Decision>>>>;
  readonly survey?: Partial<Survey>;
  readonly joins?: Joins;
  readonly openings?: readonly Opening[];
  readonly bays?: readonly BayWish[];
  readonly carry?: Partial<Carry>;
  /** Unless said, nothing is taken off or left on at walls. */
  readonly fit?: Partial<Fit>;
  /** Things to change in the stock book, by id. */
  readonly stock?: Readonly<Record<string, Partial<StockItem>>>;
}

/** The front by itself, unless a test says otherwise: nothing behind it. */
const BARE: Readonly<Record<string, Readonly<Record<string, Decision>>>> = { carcass: { build: false } };

/** A way in that takes anything, unless a test says otherwise. */
const ANYTHING: Carry = {
  shopDoorWidth: 6000,
  shopDoorHeight: 6000,
  vanLength: 40_000,
  vanWidth: 40_000,
  vanHeight: 4000,
  routeDoorWidth: 40_000,
  routeDoorHeight: 6000,
  corridorBefore: 0,
  corridorAfter: 0,
  people: 3,
  liftKg: 10_000,
};

export function jobOf(said: Said): Job {
  const start = newJob('test');
  const runs = (said.runs ?? [{}]).map((run) => ({
    length: 2400,
    over: 'frame',
    deflectionDeg: 0,
    through: 'this' as const,
    ...run,
  }));
  const decided = Object.entries(start.unit.elements).map(([kind, old]) => [
    kind,
    { ...old, ...BARE[kind], ...said.elements?.[kind] },
  ]);
  return {
    ...start,
    survey: { ...start.survey, ...said.survey },
    carry: { ...start.carry, ...ANYTHING, ...said.carry },
    fit: { ...start.fit, tolerance: 0, scribe: 0, ...said.fit },
    stock: {
      ...start.stock,
      items: start.stock.items.map((item) => ({ ...item, ...said.stock?.[item.id] }) as StockItem),
    },
    unit: {
      ...start.unit,
      plan: { runs, leftEnd: said.leftEnd ?? { kind: 'wall' }, rightEnd: said.rightEnd ?? { kind: 'wall' } },
      height: said.height ?? start.unit.height,
      depth: said.depth ?? start.unit.depth,
      elements: Object.fromEntries(decided),
      joins: said.joins ?? { by: 'none' },
      ...(said.openings ? { openings: said.openings } : {}),
      ...(said.bays ? { bays: said.bays } : {}),
    },
  };
}

/** Parts of a run by their code, in the order in which they were made. */
export const partsOf = (made: Design, code: string, run = 'A'): readonly Part[] =>
  made.parts.filter((p) => p.code === code && p.run === run);

/** The only part of that code in a run. Throws when there are none, or more. */
export function partOf(made: Design, code: string, run = 'A'): Part {
  const found = partsOf(made, code, run);
  if (found.length !== 1) throw new Error(`${found.length} parts ${code} in run ${run}`);
  return found[0];
}

export function runOf(made: Design, id = 'A'): RodRun {
  const run = made.rod.runs.find((r) => r.id === id);
  if (!run) throw new Error(`no run ${id}`);
  return run;
}

/** Rules of the findings, worst first. */
export const rulesOf = (made: Design): readonly string[] => made.findings.map((f) => f.rule);

/** The finding of a rule. Throws when there is none. */
export function findingOf(made: Design, rule: string): Design['findings'][number] {
  const found = made.findings.find((f) => f.rule === rule);
  if (!found) throw new Error(`no finding ${rule}; there are ${rulesOf(made).join(', ') || 'none'}`);
  return found;
}
