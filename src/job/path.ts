import { stepsOf } from './words';

/** A place in a job: a JSON pointer as in findings and issues (`/unit/plan/runs/0/length`), or its steps. */
export type Path = string | readonly (string | number)[];

const listOf = (path: Path): readonly (string | number)[] => (typeof path === 'string' ? stepsOf(path) : path);

/** What stands at a path; undefined where nothing does. */
export function getAt(root: unknown, path: Path): unknown {
  let at = root;
  for (const step of listOf(path)) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, step)) return undefined;
    at = (at as Record<string | number, unknown>)[step];
  }
  return at;
}

/**
 * A copy with one value replaced; all that the path does not pass through is shared. The value itself may be new, but all before
 * it must be there: a path that leads nowhere throws, and so does a place beyond the end of a list. `undefined` takes a value
 * out of a group (never out of a list). The root itself comes back when nothing changes.
 */
export function setIn<T>(root: T, path: Path, value: unknown): T {
  const steps = listOf(path);
  if (steps.length === 0) throw new Error('an empty path names the whole, which is not set');
  return set(root, steps, value, `/${steps.join('/')}`) as T;
}

function set(at: unknown, steps: readonly (string | number)[], value: unknown, whole: string): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (step === '__proto__') throw new Error(`nothing in a job is named '__proto__' (${whole})`);
  if (typeof at !== 'object' || at === null)
    throw new Error(`'${whole}' leads nowhere: there is no place for '${step}'`);
  if (Array.isArray(at)) return setInList(at, step, rest, value, whole);
  const old = Object.hasOwn(at, step) ? (at as Record<string, unknown>)[step] : undefined;
  if (old === undefined && rest.length > 0) throw new Error(`'${whole}' leads nowhere: there is no '${step}'`);
  const next = set(old, rest, value, whole);
  if (Object.is(old, next)) return at;
  if (next !== undefined) return { ...at, [step]: next };
  return Object.fromEntries(Object.entries(at).filter(([key]) => key !== String(step)));
}

function setInList(
  list: readonly unknown[],
  step: string | number,
  rest: readonly (string | number)[],
  value: unknown,
  whole: string,
) {
  const place = Number(step);
  if (!Number.isInteger(place) || place < 0 || place >= list.length) {
    throw new Error(`'${whole}' leads nowhere: '${step}' is no place in a list of ${list.length}`);
  }
  const next = set(list[place], rest, value, whole);
  if (next === undefined) throw new Error(`'${whole}': a list has no empty place`);
  return Object.is(list[place], next) ? list : list.map((item, i) => (i === place ? next : item));
}
