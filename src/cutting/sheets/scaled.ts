import type { SheetPiece, SheetProblem, SheetStock } from '../../vocabulary/cut-problem';
import { leastSides } from '../least-offcut';
import { liesOn } from './lies-on';

/** What of a kind or a sheet stands where in the problem's lists. */
export interface Member {
  /** Place in the problem's list of pieces or stock. */
  readonly index: number;
  readonly count: number;
}

export interface KindMember extends Member {
  /** The piece's width is the kind's length: it is listed the other way round. */
  readonly swapped: boolean;
}

/** Pieces that are alike for cutting. Sides are scaled, a kerf included. Of a kind that turns, the length is the longer side. */
export interface Kind {
  readonly length: number;
  readonly width: number;
  readonly turns: boolean;
  readonly quantity: number;
  /** Number of the set that must come from one sheet; −1: none. */
  readonly set: number;
  readonly members: readonly KindMember[];
}

/** Sheets that are alike for cutting: what is usable of them within the trimmed edges, scaled, and a kerf. */
export interface Sheet {
  readonly length: number;
  readonly width: number;
  readonly price: number;
  /** Never more than there are pieces. */
  readonly count: number;
  readonly members: readonly Member[];
}

/**
 * A sheet problem in whole numbers and with the kerf gone: a kerf is added to both sides of every piece and of every usable sheet, so that what
 * is cut without a loss in here is cut with one kerf between neighbours on the saw. Kinds and sheets stand in an order that does not depend
 * on the order of the problem's lists.
 */
export interface Scaled {
  readonly problem: SheetProblem;
  /** Units in a mm. */
  readonly scale: number;
  readonly kerf: number;
  readonly kinds: readonly Kind[];
  readonly sheets: readonly Sheet[];
  /** Kinds of each set. */
  readonly sets: readonly (readonly number[])[];
  /** Infinity: as many as one likes. */
  readonly stages: number;
  readonly trimsFree: boolean;
  /** A cell (kerf included) may be cut over a side as long as this; Infinity: any. */
  readonly longestCut: number;
  /** Sides from which on a leftover cell (kerf included) is reusable, either way round; the first is the longer. */
  readonly leastOffcut: readonly [number, number];
  /** Pieces that lie on no sheet by themselves, as places in the problem's list; they are in no kind. */
  readonly tooLarge: readonly number[];
}

/** Whether sheets may be cut in any number of stages, and over any length. */
export const isFree = ({ stages, longestCut }: Pick<Scaled, 'stages' | 'longestCut'>): boolean =>
  stages === Number.POSITIVE_INFINITY && longestCut === Number.POSITIVE_INFINITY;

/** Units in a mm that are tried: tenths and so on, and such that a 64th of an inch (25.4 mm / 64) is a whole number. */
const SCALES = [1, 10, 100, 1000, 2560];
/** Where nothing is exact, pieces are rounded up to a thousandth of a mm, and sheets down. */
const FALLBACK = 1000;
/** Floating noise, in units. */
const NOISE = 1e-6;

/** The problem in whole numbers. Pieces that fit on no sheet are left out. */
export function scaled(problem: SheetProblem): Scaled {
  const scale = scaleOf(problem);
  const up = (mm: number): number => Math.ceil(mm * scale - NOISE);
  const down = (mm: number): number => Math.floor(mm * scale + NOISE);
  const kerf = up(problem.kerf);
  const [longer, shorter] = leastSides(problem);
  const total = problem.pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  const sheets = merged(
    problem.stock.map((stock, index) => {
      const trim = 2 * (stock.trim ?? problem.trim);
      const sides = [down(stock.length - trim) + kerf, down(stock.width - trim) + kerf];
      return { key: [...sides, stock.price], index, count: Math.min(stock.count ?? total, total) };
    }),
  )
    .filter(({ key: [l, w] }) => l > kerf && w > kerf)
    .map(({ key: [l, w, price], members }) => ({
      length: l,
      width: w,
      price,
      count: Math.min(total, sum(members)),
      members: members.map(({ index, count }) => ({ index, count })),
    }));
  const limits = {
    stages: problem.stages ?? Number.POSITIVE_INFINITY,
    trimsFree: problem.trimsFree ?? false,
    longestCut: problem.longestCut === undefined ? Number.POSITIVE_INFINITY : down(problem.longestCut) + kerf,
  };
  const words = [
    ...new Set(problem.pieces.flatMap(({ together }) => (together === undefined ? [] : [together]))),
  ].sort();
  const all = merged(
    problem.pieces.map((piece, index) => {
      const l = up(piece.length) + kerf;
      const w = up(piece.width) + kerf;
      const swapped = piece.turnable === true && l < w;
      const set = piece.together === undefined ? -1 : words.indexOf(piece.together);
      const turns = piece.turnable === true && l !== w ? 1 : 0;
      return { key: swapped ? [w, l, turns, set] : [l, w, turns, set], index, count: piece.quantity, swapped };
    }),
  ).map(({ key: [l, w, turns, set], members }) => {
    return { length: l, width: w, turns: turns === 1, quantity: sum(members), set, members };
  });
  const fits = all.map((kind) => sheets.some((sheet) => sheet.count > 0 && liesOn(kind, sheet, limits)));
  const kinds = all.filter((_, k) => fits[k]);
  return {
    problem,
    scale,
    kerf,
    kinds,
    sheets,
    sets: words.map((_, set) => kinds.flatMap((kind, k) => (kind.set === set ? [k] : []))),
    ...limits,
    leastOffcut: [up(longer) + kerf, up(shorter) + kerf],
    tooLarge: all.flatMap(({ members }, k) => (fits[k] ? [] : members.map(({ index }) => index))).sort((a, b) => a - b),
  };
}

/** The first scale at which every length is a whole number. */
function scaleOf({ kerf, trim, stock, pieces, longestCut }: SheetProblem): number {
  const lengths = [kerf, trim, longestCut ?? 0];
  for (const { length, width } of [...stock, ...pieces] as readonly (SheetStock | SheetPiece)[])
    lengths.push(length, width);
  for (const one of stock) if (one.trim !== undefined) lengths.push(one.trim);
  const whole = (mm: number, scale: number): boolean => Math.abs(mm * scale - Math.round(mm * scale)) <= NOISE;
  return SCALES.find((scale) => lengths.every((mm) => whole(mm, scale))) ?? FALLBACK;
}

interface Keyed extends Member {
  readonly key: readonly number[];
}

/** What has the same key together, the greatest first. */
function merged<T extends Keyed>(all: readonly T[]): { key: readonly number[]; members: T[] }[] {
  const groups = new Map<string, { key: readonly number[]; members: T[] }>();
  for (const one of all) {
    const name = one.key.join();
    const group = groups.get(name);
    if (group) group.members.push(one);
    else groups.set(name, { key: one.key, members: [one] });
  }
  return [...groups.values()].sort((a, b) => b.key[0] * b.key[1] - a.key[0] * a.key[1] || compared(b.key, a.key));
}

function compared(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i] - b[i];
  return 0;
}

const sum = (members: readonly Member[]): number => members.reduce((all, { count }) => all + count, 0);
