import { movePiece, type OnBar, type OnSheet, type ToBar, type ToSheet } from '../../src/cut';
import type { AnyCutPlan } from '../../src/vocabulary/cut-plan';
import type { AppStore } from '../store/store';
import { deed } from './acts';
import { type CutFrom, laidOf, marksOf, movedCopies } from './copies';
import type { Held, Shown } from './held';
import { leftoversOf } from './left-over';
import type { Cutting } from './store';

/** A piece taken in hand, and where it is held at the moment. */
export type Hand =
  | { readonly kind: 'sheets'; readonly from: OnSheet; readonly to: ToSheet }
  | { readonly kind: 'bars'; readonly from: OnBar; readonly to: ToBar };

/** What comes of putting it down there: a plan, or why it can't lie there, in words. */
export type PutDown = { readonly plan: AnyCutPlan } | { readonly words: string };

/** Takes up a placed piece where it lies. */
export function takeUp({ plan }: Shown, index: number, place: number): Hand | null {
  if (plan.kind === 'bars') {
    const bar = plan.bars[index];
    return bar?.pieces[place]
      ? { kind: 'bars', from: { bar: index, index: place }, to: { bar: index, index: place } }
      : null;
  }
  const placed = plan.sheets[index]?.pieces[place];
  if (!placed) return null;
  const { x, y, turned } = placed;
  return { kind: 'sheets', from: { sheet: index, index: place }, to: { sheet: index, x, y, turned } };
}

/** Where the piece in hand is held: the sheet or bar. */
export const heldOver = ({ to }: Hand): number => ('sheet' in to ? to.sheet : to.bar);

/** Tries it: nothing is changed. */
export function tried({ batch: { problem }, plan }: Shown, hand: Hand, locked: readonly number[]): PutDown {
  const answer =
    hand.kind === 'sheets' && problem.kind === 'sheets' && plan.kind === 'sheets'
      ? movePiece(problem, plan, hand.from, hand.to, { locked })
      : hand.kind === 'bars' && problem.kind === 'bars' && plan.kind === 'bars'
        ? movePiece(problem, plan, hand.from, hand.to, { locked })
        : undefined;
  if (!answer) return { words: 'the plan has changed meanwhile' };
  return answer.plan ? { plan: answer.plan } : { words: answer.refused.words };
}

/** The same piece over another sheet or bar: where it fits into what is left there, else at the corner or end. */
export function over(shown: Shown, hand: Hand, index: number): Hand {
  const { plan, batch } = shown;
  if (hand.kind === 'bars')
    return {
      ...hand,
      to: {
        ...hand.to,
        bar: index,
        index: plan.kind === 'bars' ? (plan.bars[index]?.pieces.length ?? 0) : 0,
        stock: stockOf(plan, hand.from.bar),
      },
    };
  if (plan.kind !== 'sheets' || batch.problem.kind !== 'sheets') return hand;
  const piece = plan.sheets[hand.from.sheet]?.pieces[hand.from.index];
  const stock = plan.sheets[index]?.stock ?? stockOf(plan, hand.from.sheet);
  const trim = batch.problem.stock[stock]?.trim ?? batch.problem.trim;
  const sheet = plan.sheets[index];
  const place =
    piece && sheet
      ? leftoversOf(sheet.tree).find(({ length, width }) => length >= piece.length && width >= piece.width)
      : undefined;
  return { ...hand, to: { sheet: index, x: place?.x ?? trim, y: place?.y ?? trim, turned: hand.to.turned, stock } };
}

const stockOf = (plan: AnyCutPlan, index: number): number => laidOf(plan)[index]?.stock ?? 0;

/** Which sheet or bar of the plan before one of the plan after is: an emptied one is put back, and those after it move up. */
function indexBefore(before: AnyCutPlan, after: AnyCutPlan, hand: Hand): (index: number) => number {
  const expected = Math.max(laidOf(before).length, heldOver(hand) + 1);
  const emptied = expected - laidOf(after).length;
  const from = hand.kind === 'sheets' ? hand.from.sheet : hand.from.bar;
  return (index) => (emptied > 0 && index >= from ? index + emptied : index);
}

/** Where the piece in hand lay, and where it has come to lie: it may have snapped to its neighbours. */
function movedTo(
  before: AnyCutPlan,
  after: AnyCutPlan,
  hand: Hand,
  was: (index: number) => number,
): { readonly from: CutFrom; readonly to: CutFrom } {
  const over = laidOf(after).findIndex((_, index) => was(index) === heldOver(hand));
  if (hand.kind === 'bars')
    return { from: { sheet: hand.from.bar, place: hand.from.index }, to: { sheet: over, place: hand.to.index } };
  const { from, to } = hand;
  const { piece } = laidOf(before)[from.sheet]?.pieces[from.index] ?? {};
  const [nearest] = (after.kind === 'sheets' ? (after.sheets[over]?.pieces ?? []) : [])
    .map((placed, place) => ({ placed, place }))
    .filter(({ placed }) => placed.piece === piece && placed.turned === to.turned)
    .sort(
      (a, b) => Math.hypot(a.placed.x - to.x, a.placed.y - to.y) - Math.hypot(b.placed.x - to.x, b.placed.y - to.y),
    );
  return { from: { sheet: from.sheet, place: from.index }, to: { sheet: over, place: nearest?.place ?? -1 } };
}

/** Puts the piece in hand down, as a step to undo, and turns to where it lies now. Where it can't lie nothing is done, and the answer says why. */
export function putDown(app: AppStore, cutting: Cutting, id: string, hand: Hand): string | null {
  const held = cutting.getState().held[id];
  const { shown } = held ?? {};
  if (!held || !shown) return 'there is no plan';
  const answer = tried(shown, hand, held.locked);
  if ('words' in answer) return answer.words;
  const was = indexBefore(shown.plan, answer.plan, hand);
  const moved = movedTo(shown.plan, answer.plan, hand, was);
  const copies = movedCopies(shown.plan, shown.copies, answer.plan, { ...moved, was });
  const locked = laidOf(answer.plan).flatMap((_, index) => (held.locked.includes(was(index)) ? [index] : []));
  deed(app, cutting, `Move ${called(shown, hand)}`, () =>
    cutting.put(id, {
      ...held,
      before: shown,
      shown: { ...shown, plan: answer.plan, copies },
      stand: 'by hand',
      locked,
    }),
  );
  cutting.setState({ sheet: moved.to.sheet, cut: 0 });
  return null;
}

/** What the piece in hand is called. */
export function called({ batch, plan, copies }: Shown, hand: Hand): string {
  const [index, place] = hand.kind === 'sheets' ? [hand.from.sheet, hand.from.index] : [hand.from.bar, hand.from.index];
  const piece = laidOf(plan)[index]?.pieces[place]?.piece ?? 0;
  const marks = marksOf(batch, piece, copies[index]?.[place]);
  return marks[0] ?? batch.problem.pieces[piece]?.name ?? `piece ${piece + 1}`;
}

/** Whether a piece may be taken up: not from what is cut already. */
export const canTakeUp = ({ locked, done }: Held, index: number): boolean => !done && !locked.includes(index);
