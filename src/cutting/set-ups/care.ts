import type { SheetCut } from '../../vocabulary/set-up';

/** Cuts shorter than this, or the last so much of a longer one, are fed with a push stick, mm (HSE, WIS16; from memory). */
const PUSH_STICK_CUT = 300;
/** What lies between fence and blade is narrow for a hand below this, mm (common practice, no source). */
const NARROW = 120;
/** A piece shorter than this is held by a clamp at the mitre saw, not by hand, mm (common practice, no source). */
const SHORT = 150;

const PUSH = `Narrow or short: push stick, guard and riving knife on; nothing cut against fence and stop at once.`;
const HOLD = 'Short piece: clamp it, hands clear of the blade; let the blade stop before it is lifted.';
const LONG = 'Longer than the saw cuts: with a guided saw along a rail, or by another plan.';

/** The usual cautions that a plan of cuts comes with. They defer to local codes and licensed practice. */
export const CAUTIONS: readonly string[] = [
  'Usual cautions: guards and riving knife on, push sticks at hand, no gloves, extraction on; the saw stands still while it is set. Local codes come first.',
  'The first piece of each setting is measured before the others are cut.',
];

/** Where panels are sawn over size, by so much on each side, mm. */
export const oversizeCaution = (mm: number): string =>
  `Some panels are sawn ${mm} mm over on each side: trim them, and strips to be moulded, to the finished sizes of the parts list before edges are moulded, bevelled and grooved.`;

/** For the router, where something passes it. */
export const ROUTER_CAUTION =
  'Router: feed against the turn of the cutter, guard and hold-downs on; narrow strips are run long and cut to length afterwards.';

/** What a cut of a sheet asks for beyond the usual. */
export function careOfSheetCut({
  fence = Number.POSITIVE_INFINITY,
  length,
  tooLong,
}: Pick<SheetCut, 'fence' | 'length' | 'tooLong'>): readonly string[] {
  return [...(fence < NARROW || length < PUSH_STICK_CUT ? [PUSH] : []), ...(tooLong ? [LONG] : [])];
}

/** What set-ups ask for, each caution once, with the numbers (from 1) of the set-ups that it is for. */
export function caresOf(
  setUps: readonly { readonly care: readonly string[] }[],
): readonly (readonly [string, number[]])[] {
  const all = new Map<string, number[]>();
  for (const [i, { care }] of setUps.entries())
    for (const words of care) all.set(words, [...(all.get(words) ?? []), i + 1]);
  return [...all];
}

/** What a piece cut off a bar asks for. */
export const careOfPiece = (length: number | undefined): readonly string[] =>
  length !== undefined && length < SHORT ? [HOLD] : [];

/** What is cut off a strip. */
export const careOfBlock = careOfPiece;

/** What an edge of so long a strip or part asks for at the router. */
export const careAtRouter = (length: number): readonly string[] =>
  length < PUSH_STICK_CUT ? [`Short: push blocks or a carrier; hands clear of the cutter.`] : [];
