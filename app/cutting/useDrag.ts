import { type PointerEvent, useEffect, useRef } from 'react';

/** A press that wanders less than this, px, was no drag. */
const STILL = 4;

export interface Drag {
  /** A press on a piece that was no drag. */
  readonly onClick: (place: number) => void;
  /** It begins to be drawn along; false: it may not be. */
  readonly onBegin: (place: number) => boolean;
  /** The pointer, on the page; true: it wanders on by itself, as where a list is scrolled under it. */
  readonly onMove: (clientX: number, clientY: number) => boolean | undefined;
  readonly onDrop: () => void;
  readonly onCancel: () => void;
}

/** Pointer handlers for a drawing whose pieces bear `data-place`. What is drawn along follows at the browser's own pace; Escape lets it spring back. */
export function useDrag(drag: Drag) {
  const now = useRef(drag);
  now.current = drag;
  const press = useRef<{
    readonly place: number;
    readonly x: number;
    readonly y: number;
    moved: boolean;
    frame: number;
  } | null>(null);
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      const { current } = press;
      if (event.key !== 'Escape' || !current?.moved) return;
      cancelAnimationFrame(current.frame);
      press.current = null;
      event.preventDefault();
      event.stopPropagation();
      now.current.onCancel();
    };
    window.addEventListener('keydown', onKeyDown, true);
    return () => window.removeEventListener('keydown', onKeyDown, true);
  }, []);
  return {
    onPointerDown(event: PointerEvent<Element>) {
      const place = (event.target as Element).closest<SVGElement>('[data-place]')?.dataset.place;
      if (event.button !== 0 || place === undefined) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      press.current = { place: Number(place), x: event.clientX, y: event.clientY, moved: false, frame: 0 };
    },
    onPointerMove({ clientX, clientY }: PointerEvent) {
      const { current } = press;
      if (!current) return;
      if (!current.moved) {
        if (Math.hypot(clientX - current.x, clientY - current.y) < STILL) return;
        current.moved = true;
        if (!now.current.onBegin(current.place)) {
          press.current = null;
          return;
        }
      }
      cancelAnimationFrame(current.frame);
      const follow = (): void => {
        if (press.current === current && now.current.onMove(clientX, clientY))
          current.frame = requestAnimationFrame(follow);
      };
      current.frame = requestAnimationFrame(follow);
    },
    onPointerUp({ clientX, clientY }: PointerEvent) {
      const { current } = press;
      press.current = null;
      if (!current) return;
      if (!current.moved) return now.current.onClick(current.place);
      cancelAnimationFrame(current.frame);
      now.current.onMove(clientX, clientY);
      // What the last movement has changed is on the screen before it is put down.
      requestAnimationFrame(() => now.current.onDrop());
    },
    onPointerCancel() {
      const { current } = press;
      press.current = null;
      if (current?.moved) now.current.onCancel();
    },
  };
}
