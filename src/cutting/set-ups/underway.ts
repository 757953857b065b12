import type { Needs, Work } from './work';

/** Tasks that need the same. */
export interface Setting {
  readonly number: number;
  readonly needs: Needs;
  /** Of those that may be done now, in the order in which they became so. */
  readonly ready: Set<number>;
  /** Not done yet, ready or not. */
  left: number;
}

/** Work that is being done. */
export interface Underway {
  readonly settings: readonly Setting[];
  /** Tasks in the order in which they were done. */
  readonly order: readonly number[];
  /** How many tasks of a setting could be done at it, those with that only it sets free. */
  reach(setting: Setting): number;
  /** Does all that can be done at a setting. */
  work(setting: Setting): void;
}

/** Begins some work: what may be done at first is ready. */
export function begun({ tasks, lines, start }: Work): Underway {
  const settings: Setting[] = [];
  const keys = new Map<string, Setting>();
  const of = tasks.map(({ needs }) => {
    const key = needs.join();
    let known = keys.get(key);
    if (!known) {
      known = { number: settings.length, needs, ready: new Set(), left: 0 };
      settings.push(known);
      keys.set(key, known);
    }
    known.left++;
    return known;
  });
  const lineOf = new Int32Array(tasks.length);
  lines.forEach((line, l) => {
    for (const task of line.tasks) lineOf[task] = l;
  });
  const done = new Uint8Array(tasks.length);
  const place = lines.map(() => 0);
  const order: number[] = [];

  /** Tasks of a line that may be done in its present place: the one that stands there, or any that is like it. */
  const candidates = (l: number): readonly number[] => {
    const own = lines[l].tasks;
    const here = own[place[l]];
    const { like } = tasks[here];
    return like === undefined ? [here] : own.filter((task) => !done[task] && tasks[task].like === like);
  };
  const open = (opened: readonly number[]): void => {
    for (const l of opened) {
      if (lines[l].tasks.length === 0) open(lines[l].opens);
      else for (const task of candidates(l)) of[task].ready.add(task);
    }
  };
  const perform = (task: number): void => {
    const l = lineOf[task];
    const { like } = tasks[task];
    done[task] = 1;
    order.push(task);
    of[task].ready.delete(task);
    of[task].left--;
    place[l]++;
    const next = lines[l].tasks[place[l]];
    if (next === undefined) open(lines[l].opens);
    else if (like === undefined || tasks[next].like !== like) {
      if (like !== undefined) for (const other of lines[l].tasks) of[other].ready.delete(other);
      for (const other of candidates(l)) of[other].ready.add(other);
    }
    open(tasks[task].opens);
  };
  /** How many tasks of a setting could be done at it, those with that only it sets free. */
  const reach = (setting: Setting): number => {
    let count = 0;
    const reached = (task: number): void => {
      count++;
      for (const l of tasks[task].opens) follow(l, 0);
    };
    /** From a place of a line on, as far as it goes at this setting. */
    const follow = (l: number, from: number): void => {
      const own = lines[l].tasks;
      const like = own.length > from ? tasks[own[from]].like : undefined;
      if (like !== undefined) {
        for (const task of own) if (of[task] === setting && tasks[task].like === like) reached(task);
        return;
      }
      let i = from;
      for (; i < own.length && of[own[i]] === setting; i++) reached(own[i]);
      if (i === own.length) for (const opened of lines[l].opens) follow(opened, 0);
    };
    for (const task of setting.ready)
      if (tasks[task].like === undefined) follow(lineOf[task], place[lineOf[task]]);
      else reached(task);
    return count;
  };

  open(start);
  return {
    settings,
    order,
    reach,
    work({ ready }) {
      for (let [task] = ready; task !== undefined; [task] = ready) perform(task);
    },
  };
}
