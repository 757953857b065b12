import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Space } from './lay';

/** The room inside an element, kept up to date; null until it has been measured. */
export function useSpace(element: RefObject<HTMLElement | null>): Space | null {
  const [space, setSpace] = useState<Space | null>(null);
  useLayoutEffect(() => {
    const target = element.current;
    if (!target) return;
    const measure = (): void =>
      setSpace((was) =>
        was && was.width === target.clientWidth && was.height === target.clientHeight
          ? was
          : { width: target.clientWidth, height: target.clientHeight },
      );
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, [element]);
  return space;
}
