import { type ReactNode, useEffect, useId, useRef } from 'react';

interface Props {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A window over the board; Escape or its button closes it, and the cursor goes back to where it came from. */
export function Dialog({ title, onClose, children }: Props) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    // No closing when it is taken down: the browser does that, and a late close event would shut one just opened.
    if (!dialog.current?.open) dialog.current?.showModal();
  }, []);
  return (
    <dialog ref={dialog} aria-labelledby={id} onClose={onClose}>
      <div className="dialog-head">
        <h2 id={id}>{title}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <div className="dialog-body">{children}</div>
    </dialog>
  );
}
