import type { Part } from '../../vocabulary/part';
import type { BevelSetUp, ProfileSetUp, WorkSetUp } from '../../vocabulary/set-up';
import { hundredth, leftOn } from '../take-off/sawn';
import { careAtRouter } from './care';
import type { Strip } from './pieces-made';

/** Gathers by a key, in the order of the first of each. */
function gathered<T>(all: readonly T[], keyOf: (one: T) => string): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const one of all) {
    const known = groups.get(keyOf(one));
    if (known) known.push(one);
    else groups.set(keyOf(one), [one]);
  }
  return [...groups.values()];
}

/** Profiles by cutter and edge: strips before blocks are cut off them, and the parts that are moulded by themselves. */
export function profileSetUps(strips: readonly Strip[], parts: readonly Part[]): readonly ProfileSetUp[] {
  const inStrips = new Set(strips.flatMap(({ marks }) => marks));
  const alone = parts
    .filter(({ mark }) => !inStrips.has(mark))
    .map(
      (part): Strip => ({ marks: [part.mark], length: hundredth(part.size.length + leftOn(part).length), first: part }),
    );
  const passes = [...strips, ...alone].flatMap(({ marks, length, first }) =>
    first.edges
      .filter(({ work }) => work === 'moulded')
      .map(({ edge, cutter = '' }) => ({ cutter, edge, pass: { marks, length } })),
  );
  return gathered(passes, ({ cutter, edge }) => JSON.stringify([cutter, edge])).map((own) => ({
    kind: 'profile',
    cutter: own[0].cutter,
    edge: own[0].edge,
    passes: own.map(({ pass }) => pass),
    care: careAtRouter(Math.min(...own.map(({ pass }) => pass.length))),
  }));
}

/** Bevels along edges, and ends that were cut square so far, by the angles of the saw; the greatest fence first. A mark stands once for each edge or end. */
export function bevelSetUps(parts: readonly Part[], uncutEnds: readonly Part[]): readonly BevelSetUp[] {
  const edges = parts.flatMap((part) =>
    part.edges
      .filter(({ work }) => work === 'bevelled')
      .map(({ angleDeg = 0 }) => ({
        of: 'edge' as const,
        tiltDeg: hundredth(angleDeg),
        mitreDeg: 0,
        fence: hundredth(part.size.width + leftOn(part).width),
        mark: part.mark,
      })),
  );
  const ends = uncutEnds.flatMap((part) =>
    part.ends
      .filter(({ kind }) => kind !== 'square')
      .map(({ tiltDeg, sawDeg }) => ({
        of: 'end' as const,
        tiltDeg: hundredth(tiltDeg),
        mitreDeg: hundredth(sawDeg),
        fence: hundredth(part.size.length + leftOn(part).length),
        mark: part.mark,
      })),
  );
  return gathered([...edges, ...ends], ({ of, tiltDeg, mitreDeg }) => `${of} ${tiltDeg} ${mitreDeg}`).map((own) => {
    const [{ of, tiltDeg, mitreDeg }] = own;
    const passes = gathered(own, ({ fence }) => `${fence}`)
      .map((some) => ({ fence: some[0].fence, marks: some.map(({ mark }) => mark) }))
      .sort((a, b) => b.fence - a.fence);
    return { kind: 'bevel', of, tiltDeg, mitreDeg, passes };
  });
}

/** Other work, in the words of the parts. */
export const workSetUps = (parts: readonly Part[]): readonly WorkSetUp[] =>
  gathered(
    parts.flatMap(({ mark, work = [] }) => work.map((what) => ({ what, mark }))),
    ({ what }) => what,
  ).map((own) => ({ kind: 'work', what: own[0].what, marks: own.map(({ mark }) => mark) }));
