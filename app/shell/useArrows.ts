import { useEffect } from 'react';

/** Places whose own arrow keys come first. */
const OWN_ARROWS =
  'input, select, textarea, summary, [role=slider], [role=tablist], [data-own-arrows], .rod, dialog, .menu';

/** The arrow keys go on and back – from step to step, from cut to cut –, wherever they mean nothing else. */
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
