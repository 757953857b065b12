import { type RefObject, useLayoutEffect, useState } from 'react';

/** What a board has to work with, px: its width, and the widths of one digit and of the widest sign between digits in its lettering. */
export interface Room {
  readonly width: number;
  readonly digit: number;
  readonly sign: number;
}

/** The room inside an element, kept up to date; null until it has been measured. */
export function useRoom(element: RefObject<HTMLElement | null>): Room | null {
  const [room, setRoom] = useState<Room | null>(null);
  useLayoutEffect(() => {
    const target = element.current;
    if (!target) return;
    const measure = (): void => setRoom({ width: target.clientWidth, ...lettering(target) });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, [element]);
  return room;
}

/** Widest digit and sign in an element's own lettering; two thirds of its size, which few faces exceed, where it can't be measured. */
function lettering(element: HTMLElement): Pick<Room, 'digit' | 'sign'> {
  // Put together piece by piece: the shorthand is empty where digits of one width are asked for.
  const { fontStyle, fontWeight, fontSize, fontFamily } = getComputedStyle(element);
  const pen = document.createElement('canvas').getContext('2d');
  const guess = (Number.parseFloat(fontSize) * 2) / 3;
  if (!pen) return { digit: guess, sign: guess };
  pen.font = `${fontStyle} ${fontWeight} ${fontSize} ${fontFamily}`;
  const widest = (letters: string): number => Math.max(...[...letters].map((one) => pen.measureText(one).width));
  return { digit: widest('0123456789'), sign: widest(' ./"-') };
}
