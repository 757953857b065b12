import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useRef } from 'react';
import { goToDecision } from '../shell/go-to';
import { app } from '../store/app';
import type { Thing } from '../store/view';
import { movedTo, nudged, pathOf, stepOf, toStep } from './things';

/** A press that wanders less than this, px, was no drag. */
const STILL = 3;

/** With Shift a key moves a thing this many steps. */
const FAR = 10;

interface Props {
  readonly thing: Thing;
  readonly run: string;
  readonly name: string;
  /** In words: where it is, and what the checks say. */
  readonly told: string;
  readonly x: number;
  /** Height, where it can be moved up and down too. */
  readonly z?: number;
  readonly length: number;
  readonly scale: number;
  readonly className: string;
  /** Where a place that it is drawn to leads; keys go where they go. */
  readonly snap?: (x: number) => number;
  readonly onRemove: () => void;
  readonly children: ReactNode;
}

/**
 * Something on the rod that is drawn along by the pointer or nudged with the arrow keys: live, and one step to undo once it is let
 * go of. Escape lets it spring back while it is drawn.
 */
export function Movable({ thing, run, name, told, x, z, length, scale, className, snap, onRemove, children }: Props) {
  const held = useRef<{ readonly from: number; readonly x: number; moved: boolean; frame: number } | null>(null);
  const { edit, endGesture, cancelGesture, take } = app.getState();
  const gesture = `move ${JSON.stringify(thing)}`;
  const move = (toX: number, toZ?: number) => edit(`Move ${name}`, (job) => movedTo(job, thing, toX, toZ), gesture);
  // Taken down in the middle of a gesture: what was moved stays moved.
  useEffect(() => () => app.getState().endGesture(), []);

  const drawnTo = (hold: { readonly from: number; readonly x: number }, clientX: number): number => {
    const to = toStep(hold.x + (clientX - hold.from) / scale, stepOf(app.getState().document.units));
    return snap?.(to) ?? to;
  };

  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    held.current = { from: event.clientX, x, moved: false, frame: 0 };
  };
  const onPointerMove = ({ clientX }: PointerEvent) => {
    const hold = held.current;
    if (!hold || (!hold.moved && Math.abs(clientX - hold.from) < STILL)) return;
    hold.moved = true;
    cancelAnimationFrame(hold.frame);
    const to = drawnTo(hold, clientX);
    hold.frame = requestAnimationFrame(() => held.current === hold && move(to));
  };
  const letGo = ({ clientX }: PointerEvent) => {
    const hold = held.current;
    held.current = null;
    if (!hold?.moved) return;
    cancelAnimationFrame(hold.frame);
    move(drawnTo(hold, clientX));
    endGesture();
  };
  const springBack = () => {
    const hold = held.current;
    held.current = null;
    if (!hold?.moved) return;
    cancelAnimationFrame(hold.frame);
    cancelGesture();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const { key } = event;
    const to = nudged(key, x, z, stepOf(app.getState().document.units) * (event.shiftKey ? FAR : 1));
    const ours =
      to !== null || key === 'Enter' || key === 'Delete' || (key === 'Escape' && held.current?.moved === true);
    // The board's own arrow keys go from mark to mark; here they move what is in hand.
    if (ours || key.startsWith('Arrow')) event.stopPropagation();
    if (!ours) return;
    event.preventDefault();
    if (to) move(to.x, to.z);
    if (key === 'Enter') goToDecision(pathOf(thing, app.getState().document) ?? '');
    if (key === 'Delete') onRemove();
    if (key === 'Escape') springBack();
  };
  return (
    <g
      className={className}
      role="slider"
      tabIndex={0}
      aria-label={name}
      aria-orientation="horizontal"
      aria-valuemin={0}
      aria-valuemax={Math.round(length)}
      aria-valuenow={Math.round(x)}
      aria-valuetext={told}
      onFocus={() => take(thing, run)}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={letGo}
      onPointerCancel={springBack}
      onKeyDown={onKeyDown}
      onKeyUp={(event) => event.key.startsWith('Arrow') && endGesture()}
      onBlur={() => endGesture()}
    >
      <title>{`${name}: ${told}`}</title>
      {children}
    </g>
  );
}
