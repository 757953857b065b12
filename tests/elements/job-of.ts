import { newJob } from '../../src/flow';
import type { StockItem } from '../../src/vocabulary/book';
import type { Design } from '../../src/vocabulary/design';
import type { Decision } from '../../src/vocabulary/field';
import type { EndCondition, Job, Run, Survey } from '../../src/vocabulary/job';
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
  /** Things to change in the stock book, by id. */
  readonly stock?: Readonly<Record<string, Partial<StockItem>>>;
}

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
    { ...old, ...said.elements?.[kind] },
  ]);
  return {
    ...start,
    survey: { ...start.survey, ...said.survey },
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
