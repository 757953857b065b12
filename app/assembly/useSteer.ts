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
