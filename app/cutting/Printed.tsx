import { type ReactNode, useEffect, useState } from 'react';
import { createPortal } from 'react-dom';

interface Props {
  readonly label: string;
  /** Stands at the head of the page. */
  readonly title: string;
  readonly children: ReactNode;
}

/** A button that prints its content, and nothing else of the screen. */
export function Printed({ label, title, children }: Props) {
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
              {children}
            </div>,
            document.body,
          )
        : null}
    </>
  );
}
