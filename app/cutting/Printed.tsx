import { type ReactNode, useEffect, useState } from 'react';
import { createPortal } from 'react-dom';

interface Props {
  readonly label: string;
  /** Stands at the head of the page. */
  readonly title: string;
  /** What is said in a line under it, before the day of printing; absent: no such line. */
  readonly head?: readonly string[];
  readonly children: ReactNode;
}

/** The day by the clock of this machine, as its people write it. */
const today = (): string => new Date().toLocaleDateString(undefined, { dateStyle: 'long' });

/** A button that prints its content, and nothing else of the screen. */
export function Printed({ label, title, head, children }: Props) {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    if (!printing) return;
    const over = (): void => setPrinting(false);
    window.addEventListener('afterprint', over);
    window.print();
    return () => window.removeEventListener('afterprint', over);
  }, [printing]);
  return (
    <>
      <button type="button" onClick={() => setPrinting(true)}>
        {label}
      </button>
      {printing
        ? createPortal(
            <div className="print-page">
              <h1>{title}</h1>
              {head ? <p className="print-head">{[...head, `printed ${today()}`].join('; ')}</p> : null}
              {children}
            </div>,
            document.body,
          )
        : null}
    </>
  );
}
