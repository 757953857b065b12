import { type RefObject, useEffect, useRef } from 'react';
import { useApp } from '../store/hooks';
import { sameThing, type Thing } from '../store/view';

/** Whether a thing is in hand on the rod; its row, then, is unfolded and brought into view. The cursor stays where it is. */
export function useInHand(thing: Thing): {
  readonly row: RefObject<HTMLFieldSetElement | null>;
  readonly inHand: boolean;
} {
  const row = useRef<HTMLFieldSetElement>(null);
  const inHand = useApp((state) => sameThing(state.view.thing, thing));
  useEffect(() => {
    const here = row.current;
    if (!inHand || !here || here.contains(document.activeElement)) return;
    here.closest('details')?.setAttribute('open', '');
    here.scrollIntoView({ block: 'nearest' });
  }, [inHand]);
  return { row, inHand };
}
