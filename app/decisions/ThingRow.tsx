import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { Finding } from '../../src/vocabulary/finding';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import { sameThing, type Thing } from '../store/view';
import { Refusals } from './Refusals';
import { RemoveButton } from './RemoveButton';

interface Props {
  readonly thing: Thing;
  /** The run that it is on, for the rod to show. */
  readonly run: string | undefined;
  readonly name: string;
  /** It all in a line, while it is folded. */
  readonly told: string;
  readonly found: readonly Finding[];
  readonly remove: string;
  readonly onRemove: () => void;
  readonly children: ReactNode;
}

/**
 * The row of one thing in a list of such: folded to a line until it is taken in hand, here or on the rod. What the checks refuse or warn of
 * always shows.
 */
export function ThingRow({ thing, run, name, told, found, remove, onRemove, children }: Props) {
  const row = useRef<HTMLDivElement>(null);
  const inHand = useApp((state) => sameThing(state.view.thing, thing));
  const [open, setOpen] = useState(false);
  const { take } = app.getState();
  useEffect(() => {
    if (inHand) setOpen(true);
  }, [inHand]);
  // Taken in hand on the rod it is brought into view; the cursor stays where it is.
  useEffect(() => {
    const here = row.current;
    if (!inHand || !open || !here || here.contains(document.activeElement)) return;
    here.closest('details')?.setAttribute('open', '');
    here.scrollIntoView({ block: 'nearest' });
  }, [inHand, open]);
  return (
    <div className={inHand ? 'thing in-hand' : 'thing'} ref={row}>
      <details className="row" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <b>{name}</b> {open ? null : <span>{told}</span>}
        </summary>
        <fieldset onFocus={() => take(thing, run)}>
          <legend className="unseen">{name}</legend>
          {children}
          <RemoveButton
            name={remove}
            onRemove={() => {
              take(null);
              onRemove();
            }}
          />
        </fieldset>
      </details>
      {/* Folded, only what has to be seen to. */}
      <Refusals found={open ? found : found.filter(({ severity }) => severity !== 'note')} />
    </div>
  );
}
