import { useEffect, useState } from 'react';

/** Narrower than this the columns lie over the view, and only one is open at a time. */
const NARROW = '(max-width: 1099px)';

export interface Panels {
  readonly narrow: boolean;
  readonly left: boolean;
  readonly right: boolean;
  toggle(side: 'left' | 'right'): void;
}

/** Which of the two columns are open. Wide windows begin with both, narrow ones with none. */
export function usePanels(): Panels {
  const [narrow, setNarrow] = useState(() => window.matchMedia(NARROW).matches);
  const [open, setOpen] = useState({ left: !narrow, right: !narrow });
  useEffect(() => {
    const query = window.matchMedia(NARROW);
    const onChange = () => {
      setNarrow(query.matches);
      setOpen({ left: !query.matches, right: !query.matches });
    };
    query.addEventListener('change', onChange);
    return () => query.removeEventListener('change', onChange);
  }, []);
  const toggle = (side: 'left' | 'right') =>
    setOpen((was) => {
      const next = { ...was, [side]: !was[side] };
      if (narrow && next[side]) next[side === 'left' ? 'right' : 'left'] = false;
      return next;
    });
  return { narrow, ...open, toggle };
}
