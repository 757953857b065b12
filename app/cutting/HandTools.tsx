import { type KeyboardEvent, useEffect, useRef } from 'react';
import { laidOf } from './copies';
import { called, type Hand, heldOver, over, type PutDown } from './hand';
import type { Shown } from './held';
import type { Say } from './words';

/** How far an arrow key moves a piece, mm; with Shift ten times as far. It snaps to its neighbours when it is put down. */
const STEP = 10;

interface Props {
  readonly shown: Shown;
  readonly hand: Hand;
  readonly outcome: PutDown;
  readonly say: Say;
  readonly onHand: (hand: Hand) => void;
  readonly onPut: () => void;
  readonly onGiveUp: () => void;
}

/** A piece in hand: where it is held, whether it can lie there, and the keys that move it. */
export function HandTools({ shown, hand, outcome, say, onHand, onPut, onGiveUp }: Props) {
  const own = useRef<HTMLFieldSetElement>(null);
  useEffect(() => own.current?.focus(), []);
  const thing = hand.kind === 'sheets' ? 'sheet' : 'bar';
  const count = laidOf(shown.plan).length;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.target instanceof HTMLSelectElement) return;
    const next = moved(shown, hand, event.key, event.shiftKey ? 10 * STEP : STEP);
    if (next) onHand(next);
    else if (event.key === 'Escape') onGiveUp();
    else if (event.key === 'Enter' && event.target === own.current) onPut();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <fieldset
      className="hand"
      data-own-arrows
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes the arrow keys that move the piece
      tabIndex={0}
      ref={own}
      aria-label={`${called(shown, hand)} in hand: arrow keys move it${hand.kind === 'sheets' ? ', T turns it' : ''}, Enter puts it down, Escape gives it up`}
      onKeyDown={onKeyDown}
    >
      <b>{called(shown, hand)} in hand</b>
      <label>
        over {thing}{' '}
        <select value={heldOver(hand)} onChange={(event) => onHand(over(shown, hand, Number(event.target.value)))}>
          {Array.from({ length: count }, (_, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a sheet is known by its place in the plan
            <option key={i} value={i}>
              {i + 1}
            </option>
          ))}
          <option value={count}>a new one</option>
        </select>
      </label>
      {hand.kind === 'sheets' ? (
        <button type="button" onClick={() => onHand({ ...hand, to: { ...hand.to, turned: !hand.to.turned } })}>
          Turn
        </button>
      ) : null}
      <button type="button" disabled={'words' in outcome} onClick={onPut}>
        Put down
      </button>
      <button type="button" onClick={onGiveUp}>
        Give up
      </button>
      <span className={'words' in outcome ? 'no' : 'yes'} role="status">
        {placeWords(hand, say)}: {'words' in outcome ? outcome.words : 'it can lie there'}
      </span>
    </fieldset>
  );
}

const placeWords = (hand: Hand, say: Say): string =>
  hand.kind === 'sheets'
    ? `at ${say(hand.to.x)}; ${say(hand.to.y)} of sheet ${hand.to.sheet + 1}${hand.to.turned ? ', turned' : ''}`
    : `as no. ${hand.to.index + 1} of bar ${hand.to.bar + 1}`;

/** Where a key takes the piece; null for a key that does not move it. */
export function moved(shown: Shown, hand: Hand, key: string, step: number): Hand | null {
  const dx = key === 'ArrowRight' ? 1 : key === 'ArrowLeft' ? -1 : 0;
  const dy = key === 'ArrowDown' ? 1 : key === 'ArrowUp' ? -1 : 0;
  if (hand.kind === 'sheets') {
    if (key.toLowerCase() === 't') return { ...hand, to: { ...hand.to, turned: !hand.to.turned } };
    if (dx === 0 && dy === 0) return null;
    const { x, y } = hand.to;
    return { ...hand, to: { ...hand.to, x: Math.max(0, x + dx * step), y: Math.max(0, y + dy * step) } };
  }
  if (dy !== 0) {
    const bar = Math.max(0, Math.min(laidOf(shown.plan).length, hand.to.bar + dy));
    return bar === hand.to.bar ? hand : over(shown, hand, bar);
  }
  if (dx === 0) return null;
  const there = laidOf(shown.plan)[hand.to.bar]?.pieces.length ?? 0;
  const most = hand.to.bar === hand.from.bar ? there - 1 : there;
  return { ...hand, to: { ...hand.to, index: Math.max(0, Math.min(most, hand.to.index + dx)) } };
}
