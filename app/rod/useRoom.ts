import { type RefObject, useLayoutEffect, useState } from 'react';

/** What a board has to work with, px: its width, and the width of one digit in its lettering. */
export interface Room {
  readonly width: number;
  readonly digit: number;
}

/** The room inside an element, kept up to date; null until it has been measured. */
export function useRoom(element: RefObject<HTMLElement | null>): Room | null {
  const [room, setRoom] = useState<Room | null>(null);
  useLayoutEffect(() => {
    const target = element.current;
    if (!target) return;
    const measure = (): void => setRoom({ width: target.clientWidth, digit: digitWidth(target) });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, [element]);
  return room;
}

/** Widest digit in an element's own lettering; two thirds of its size, which few faces exceed, where it can't be measured. */
function digitWidth(element: HTMLElement): number {
  const { font, fontSize } = getComputedStyle(element);
  const pen = document.createElement('canvas').getContext('2d');
  if (!pen) return (Number.parseFloat(fontSize) * 2) / 3;
  pen.font = font;
  return Math.max(...[...'0123456789'].map((digit) => pen.measureText(digit).width));
}
