import { useEffect, useState } from 'react';

/** How long a step stands while the steps are played, ms (by eye: time to read a sentence). */
export const STANDS = 2500;

const CALM = '(prefers-reduced-motion: reduce)';

/** Whether the reader's machine asks for less motion. */
export function useCalm(): boolean {
  const [calm, setCalm] = useState(() => window.matchMedia(CALM).matches);
  useEffect(() => {
    const query = window.matchMedia(CALM);
    const onChange = () => setCalm(query.matches);
    query.addEventListener('change', onChange);
    return () => query.removeEventListener('change', onChange);
  }, []);
  return calm;
}

/** Places whose own arrow keys come first. */
const OWN_ARROWS = 'input, select, textarea, summary, [role=slider], [role=tablist], .rod, dialog, .menu';

/** The arrow keys go from step to step, wherever they mean nothing else. */
export function useArrows(go: (by: 1 | -1) => void): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.key !== 'ArrowRight' && event.key !== 'ArrowLeft') return;
      if (event.target instanceof Element && event.target.closest(OWN_ARROWS)) return;
      event.preventDefault();
      go(event.key === 'ArrowRight' ? 1 : -1);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [go]);
}
