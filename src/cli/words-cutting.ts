import { formatLength } from '../base/lengths';
import { anglesOf, isSlip, stagesWords, type Total } from '../cut';
import type { CutBar, CutSheet, CutTree } from '../vocabulary/cut-plan';
import type { CutProblem, Slant } from '../vocabulary/cut-problem';
import type { CutDone } from './cut-json';
import { dealer, type Marks } from './marks';

/** What a joiner calls the next copy of a piece that comes to hand: its marks, or its name. */
export type Namer = (piece: number) => string;

/** Pieces by the names in the problem, or by their place in its list, counted from 1. */
export const byName =
  ({ pieces }: CutProblem): Namer =>
  (piece) =>
    pieces[piece]?.name ?? `piece ${piece + 1}`;

/** Copies by the marks of the parts in them, one after the other. */
export function byMarks(marks: Marks): Namer {
  const next = dealer(marks);
  return (piece) => (next(piece) ?? []).join('+');
}

const mm = (length: number): string => formatLength(length, 'mm');
/** How a price is told. */
export type Money = (price: number) => string;

/** Of a problem in a file: in whatever money it is. */
export const plainMoney: Money = (price) => price.toFixed(2);

/** Of a job, whose stock book is in pence. */
export const pounds: Money = (pence) => `£${(pence / 100).toFixed(2)}`;

const size = (one: { readonly length: number; readonly width?: number }): string =>
  one.width === undefined ? mm(one.length) : `${mm(one.length)} × ${mm(one.width)}`;

/** A plan to be read at the saw: what it costs and how good that is, what to fetch, each bar and sheet, what is not placed. Lengths in mm. */
export function cutText({ problem, plan, seed, steps, warnings }: CutDone, name: Namer, money: Money): string {
  const lines = [
    `${plan.cost === 0 && plan.unplaced.length > 0 ? 'nothing can be cut' : `cost ${money(plan.cost)}, ${howGood(plan, money)}`} (seed ${seed}, ${steps} ${steps === 1 ? 'step' : 'steps'})`,
    ...warnings.map(({ path, message }) => `note: ${path}: ${message}`),
    ...plan.used.map((one) => fetched(problem, one, money)),
    ...(plan.kind === 'bars' ? barLines(problem, plan.bars, name) : sheetLines(problem, plan.sheets, name)),
    ...plan.unplaced.map(({ piece, quantity, why }) => {
      const { [piece]: it } = problem.pieces;
      return `not placed: ${quantity} × ${byName(problem)(piece)}${it ? `, ${size(it)}` : ''}: ${why}`;
    }),
  ];
  return lines.map((line) => `${line}\n`).join('');
}

/** What all stuffs of a job cost together. */
export const totalText = (total: Total): string =>
  `all stuffs: cost ${pounds(total.cost)}, ${howGood(total, pounds)}\n`;

/** Noise of a share of the cost, which is rounded up. */
const NOISE = 1e-9;

function howGood({ cost, bound, proven }: Pick<CutDone['plan'], 'cost' | 'bound' | 'proven'>, money: Money): string {
  if (proven) return 'proven best';
  if (bound <= 0) return 'no bound known';
  return `nothing costs less than ${money(bound)}: at most ${Math.ceil(1000 * (cost / bound - 1) - NOISE) / 10} % above, and longer (--seconds) may find better`;
}

function fetched(
  { stock }: CutProblem,
  used: { readonly stock: number; readonly count: number },
  money: Money,
): string {
  const one = stock[used.stock]!;
  // Names in a stock book often say the size themselves.
  const named = one.name?.includes(mm(one.length)) ? one.name : [one.name ?? '', size(one)].join(' ').trim();
  return `fetch ${used.count} × ${one.offcut ? `offcut ${named} from the rack` : `${named} at ${money(one.price)}`}`;
}

/** Lines of things that are cut alike stand once, with their number. */
function alike(all: readonly (readonly string[])[], one: string): readonly string[] {
  const lots = new Map<string, { readonly lines: readonly string[]; numbers: number[] }>();
  all.forEach((lines, i) => {
    const key = lines.join('\n');
    const lot = lots.get(key) ?? { lines, numbers: [] };
    lot.numbers.push(i + 1);
    lots.set(key, lot);
  });
  return [...lots.values()].flatMap(({ lines: [first, ...rest], numbers }) => [
    '',
    `${one} ${numbers.join(', ')}: ${numbers.length > 1 ? `${numbers.length} × ` : ''}${first}`,
    ...rest,
  ]);
}

function barLines(problem: CutProblem, bars: readonly CutBar[], name: Namer): readonly string[] {
  const told = bars.map(({ stock, pieces, offcut }) => [
    size(problem.stock[stock]!),
    ...pieces.map(({ piece, at, length, turn }) => {
      const ends = endsWords(problem.kind === 'bars' ? problem.pieces[piece]?.ends : undefined);
      return [`  at ${mm(at)}  ${mm(length)}  ${name(piece)}`, ends, turn].filter(Boolean).join(', ');
    }),
    ...(offcut ? [`  at ${mm(offcut.at)}  ${mm(offcut.length)}  into the rack`] : []),
  ]);
  return alike(told, 'bar');
}

/** What the saw is set to for both ends of a piece as it lies unturned on its back, the left one first; '' where they are square. */
function endsWords(ends: readonly [Slant, Slant] | undefined): string {
  if (!ends) return '';
  const deg = (angle: number): string => `${Number(Math.abs(angle).toFixed(2))}°`;
  const words = ends.map((slant) => {
    const { mitreDeg, tiltDeg } = anglesOf(slant);
    return [mitreDeg === 0 ? '' : `turned ${deg(mitreDeg)}`, tiltDeg === 0 ? '' : `tilted ${deg(tiltDeg)}`]
      .filter(Boolean)
      .join(' and ');
  });
  return `left end ${words[0] || 'square'}, right end ${words[1] || 'square'}`;
}

function sheetLines(problem: CutProblem, sheets: readonly CutSheet[], name: Namer): readonly string[] {
  const trimsFree = problem.kind === 'sheets' && problem.trimsFree;
  const told = sheets.map((sheet) => [
    `${size(problem.stock[sheet.stock]!)}, ${stagesWords(sheet, trimsFree)}`,
    ...treeLines(sheet.tree, name, '  '),
  ]);
  return alike(told, 'sheet');
}

/** The cuts of a tree as nested lines: rips along the length, cross-cuts across it, each with the size that it sets. */
function treeLines(tree: CutTree, name: Namer, indent: string): readonly string[] {
  if (tree.kind !== 'cut') return [`${indent}${leaf(tree, name)}`];
  return tree.parts.flatMap((part) => {
    if (part.kind === 'left' && isSlip(part)) return [];
    const set = tree.way === 'along' ? `rip ${mm(part.width)}` : `cross-cut ${mm(part.length)}`;
    if (part.kind === 'cut') return [`${indent}${set}`, ...treeLines(part, name, `${indent}  `)];
    return [`${indent}${set}: ${leaf(part, name)}`];
  });
}

function leaf(tree: Exclude<CutTree, { readonly kind: 'cut' }>, name: Namer): string {
  const sides = `${mm(tree.length)} × ${mm(tree.width)}`;
  if (tree.kind === 'left') return `left over ${sides}${tree.reusable ? ', into the rack' : ''}`;
  return `${name(tree.piece)} ${sides}${tree.turned ? ', turned' : ''}`;
}
