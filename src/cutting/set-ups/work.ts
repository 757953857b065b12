import type { Dial } from '../../vocabulary/set-up';

/** In the order in which `Needs` lists them. */
export const DIALS: readonly Dial[] = ['rip fence', 'cross-cut stop', 'mitre', 'tilt', 'length stop'];

/**
 * What a cut asks of each dial, in hundredths of a mm or degree; undefined: it doesn't matter. Shop lengths are read no finer, so settings
 * that agree so far are one.
 */
export type Needs = readonly (number | undefined)[];

const HUNDREDTHS = 100;

export const needsOf = (at: Readonly<Partial<Record<Dial, number | undefined>>>): Needs =>
  DIALS.map((dial) => {
    const value = at[dial];
    return value === undefined ? undefined : Math.round(value * HUNDREDTHS) + 0;
  });

/** What is set for the cuts of a sheet that run this way. */
export const dialOf = (way: 'along' | 'across'): Dial => (way === 'across' ? 'cross-cut stop' : 'rip fence');

/** The dials that are named, in mm and degrees. */
export function settingOf(needs: Needs): Partial<Record<Dial, number>> {
  const at: Partial<Record<Dial, number>> = {};
  needs.forEach((value, i) => {
    if (value !== undefined) at[DIALS[i]] = value / HUNDREDTHS;
  });
  return at;
}

export interface Task {
  readonly needs: Needs;
  /** Lines that may begin when it is done. */
  readonly opens: readonly number[];
  /** Tasks of a line with the same number may be exchanged with one another. Absent: it is done in its own place. */
  readonly like?: number;
}

/** Tasks that are done one after the other: the cuts off one panel or one bar. */
export interface Line {
  readonly tasks: readonly number[];
  /** Lines that may begin when all is done. */
  readonly opens: readonly number[];
}

export interface Work {
  readonly tasks: readonly Task[];
  readonly lines: readonly Line[];
  /** Lines that may begin at once. */
  readonly start: readonly number[];
}

/** Several pieces of work side by side; tasks are numbered through. */
export function together(works: readonly Work[]): Work {
  const tasks: Task[] = [];
  const lines: Line[] = [];
  const start: number[] = [];
  for (const work of works) {
    const firstTask = tasks.length;
    const firstLine = lines.length;
    const moved = (opens: readonly number[]): number[] => opens.map((line) => line + firstLine);
    for (const task of work.tasks) tasks.push({ needs: task.needs, opens: moved(task.opens), like: task.like });
    for (const line of work.lines)
      lines.push({ tasks: line.tasks.map((task) => task + firstTask), opens: moved(line.opens) });
    start.push(...moved(work.start));
  }
  return { tasks, lines, start };
}

/** Which dials must be moved for what is needed, from where they stand. */
export const moved = (needs: Needs, standing: Needs): number[] =>
  DIALS.flatMap((_, i) => (needs[i] !== undefined && needs[i] !== standing[i] ? [i] : []));

/** How many dials that are. */
export function movesFor(needs: Needs, standing: Needs): number {
  let moves = 0;
  for (let i = 0; i < needs.length; i++) if (needs[i] !== undefined && needs[i] !== standing[i]) moves++;
  return moves;
}

/** Where the dials stand after it. */
export const after = (needs: Needs, standing: Needs): Needs =>
  movesFor(needs, standing) === 0 ? standing : standing.map((value, i) => needs[i] ?? value);

/** Nothing is set yet. */
export const UNSET: Needs = DIALS.map(() => undefined);

/** How often a dial is moved when tasks are done in this order, beginning with a saw on which nothing is set. */
export function movesOf({ tasks }: Pick<Work, 'tasks'>, order: readonly number[]): number {
  let standing = UNSET;
  let moves = 0;
  for (const task of order) {
    const { needs } = tasks[task];
    moves += movesFor(needs, standing);
    standing = after(needs, standing);
  }
  return moves;
}
