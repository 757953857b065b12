import type { Job } from '../../src/vocabulary/job';
import { chosen, expectedLayers, kicked, thick } from './expected';

/*
 * How far parts of each kind may reach, read from the decisions alone: none of the rooms' own working is used.
 */

/** Offsets from the frame's face, heights above the floor, and how far past an end of the frame line, mm (negative: short of it). */
export interface Reach {
  readonly front: number;
  readonly back: number;
  readonly low: number;
  readonly high: number;
  readonly past: { readonly wall: number; readonly free: number; readonly flap: number };
  /** Where a return stands at the corner, and this stops at its frame or goes on over it: how far past. Not said: to the mitre. */
  readonly pastReturn?: number;
  /** Cut square at corners, not mitred. */
  readonly square?: true;
}

/** A foot rail stops so far short of a free end, and a bracket has so much stuff in front of a rail that lies in it (common practice, no source). */
const RAIL_SHORT = 50;
const NOSE = 15;

/** What a part is called here: most go by their code; a pillar's return by what it returns. */
const keyOf = ({
  kind,
  code,
  name,
}: {
  readonly kind: string;
  readonly code: string;
  readonly name: string;
}): string =>
  code === 'PR' ? (name.includes('base') ? 'PR base' : 'PR cap') : kind === 'flap' && code !== 'LF' ? 'flap' : code;

/** The reach of each kind of part of a job. Undefined for a kind that this table does not know. */
export function expectedReach(
  job: Job,
): (part: { readonly kind: string; readonly code: string; readonly name: string }) => Reach | undefined {
  const { height, depth, elements } = job.unit;
  const mm = (kind: string, key: string): number => elements[kind][key] as number;
  const is = (kind: string, key: string): boolean => elements[kind][key] === true;
  const { faces, frameDepth, topThickness } = expectedLayers(job);
  const skin = faces.cladding;
  const under = height - topThickness;
  const frameLow = kicked(job) ? mm('plinth', 'height') : 0;
  const widest = Math.max(0, ...job.unit.plan.runs.map((r) => r.flap?.width ?? 0));
  const all = { low: 0, high: under, past: { wall: 0, free: 0, flap: 0 } };
  const on = (thickness: number): Reach => ({ ...all, back: skin, front: skin + thickness });
  const turning = (reach: Reach, by: number, atFlap: number): Reach => ({
    ...reach,
    past: { wall: 0, free: by, flap: atFlap },
  });

  const plinth = thick(chosen(job, 'plinth', 'sheet'));
  const plinthTurns = is('plinth', 'endReturn') && !kicked(job) ? plinth : 0;
  const board = turning(on(plinth), plinthTurns, plinthTurns);
  const piece = (kind: 'base' | 'cap', code: string): readonly (readonly [string, Reach])[] => {
    const thickness = thick(chosen(job, 'pillar', `${kind}Sheet`));
    const reach = turning(on(thickness), is('pillar', 'endReturn') ? thickness : 0, 0);
    return [
      [code, reach],
      [`PR ${kind}`, { ...reach, back: -frameDepth }],
    ];
  };

  const frame: Reach = {
    ...all,
    front: 0,
    back: -frameDepth,
    low: frameLow,
    past: { wall: -job.fit.tolerance, free: 0, flap: 0 },
    square: true,
  };
  const [topFront, topBack] = [faces.top, faces.top - depth];
  const top: Reach = {
    front: topFront,
    back: topBack,
    low: under,
    high: height,
    past: { wall: 0, free: mm('top', 'endOverhang'), flap: 0 },
    pastReturn: topFront,
  };

  // The frame behind: its posts stand in from the top's back edge; or from a worktop's rear edge, where that reaches further back.
  const edge = -frameDepth - mm('worktop', 'depth');
  const underTop = topBack + mm('carcass', 'setBack');
  const withWorktop = edge < topBack ? edge + mm('worktop', 'behind') : Math.min(underTop, edge);
  const posts = mm('worktop', 'height') > 0 ? Math.min(underTop, withWorktop) : underTop;
  const behind: Reach = { ...all, front: -frameDepth, back: posts, pastReturn: -frameDepth };
  const door = elements.door.lie === 'overlay' ? thick(chosen(job, 'door', 'sheet')) : 0;

  const outermost = Math.max(...Object.entries(faces).map(([layer, face]) => (layer === 'top' ? 0 : face)));
  const rail = thick(chosen(job, 'footrail', 'moulding')) / 2;
  const railAt = outermost + mm('footrail', 'out');
  const undertop = elements.undertop.moulding ? thick(chosen(job, 'undertop', 'moulding')) : 0;
  const gap = { ...all.past, flap: widest };

  const reaches = new Map<string, Reach>([
    ...['PL', 'ST', 'NG', 'FI'].map((code) => [code, frame] as const),
    ['CL', { ...all, back: 0, front: skin, low: Math.max(frameLow, mm('cladding', 'floorGap')) }],
    ['PI', on(faces.pillar - skin)],
    ...piece('base', 'PS'),
    ...piece('cap', 'PC'),
    ['BK', { ...board, high: mm('plinth', 'height') }],
    ['PB', { ...board, high: mm('plinth', 'height') }],
    ['BR', { ...board, back: -frameDepth, high: mm('plinth', 'height') }],
    ['KB', { ...all, front: faces.plinth, back: faces.plinth - plinth, high: frameLow }],
    ['SK', on(faces.skirting - skin)],
    ['PM', on(faces.panel - skin)],
    ['FL', on(thick(chosen(job, 'panel', 'railSheet')))],
    ['UM', on(undertop)],
    ['CV', on(thick(chosen(job, 'cover', 'sheet')))],
    [
      'FR',
      { ...all, front: railAt + rail, back: railAt - rail, past: { wall: 0, free: -RAIL_SHORT, flap: -RAIL_SHORT } },
    ],
    ['FB', { ...all, front: railAt + rail + NOSE, back: skin }],
    ['TP', top],
    ['LF', { ...top, past: gap }],
    ['flap', { ...all, front: skin, back: Math.min(posts, -frameDepth), past: gap }],
    ...['CR', 'RP', 'FP', 'RA', 'BE', 'SH', 'SB', 'LN', 'SR', 'DS'].map((code) => [code, behind] as const),
    ['WT', { ...behind, back: edge, high: mm('worktop', 'height') }],
    ...['DR', 'DF'].map((code) => [code, { ...behind, back: posts - door }] as const),
  ]);
  return (part) => reaches.get(keyOf(part));
}
