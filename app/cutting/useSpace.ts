import { type RefObject, useEffect, useState } from 'react';
import type { Space } from './lay';

/** What was measured last of each kind of element: the next one is likely to be as large. */
const last = new Map<string, Space>();

/**
 * The room inside an element of a kind, kept up to date; null until the first of its kind has been measured. It is measured when the page is
 * laid out anyway: to ask before would have it laid out twice.
 */
export function useSpace(kind: string, element: RefObject<HTMLElement | null>): Space | null {
  const [space, setSpace] = useState<Space | null>(() => last.get(kind) ?? null);
  useEffect(() => {
    const target = element.current;
    if (!target) return;
    const observer = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = target;
      const was = last.get(kind);
      const now = was?.width === width && was.height === height ? was : { width, height };
      last.set(kind, now);
      setSpace(now);
    });
    observer.observe(target);
    return () => observer.disconnect();
  }, [kind, element]);
  return space;
}
