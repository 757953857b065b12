import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { exportsOf, runExport } from '../effects/exports';
import { app } from '../store/app';
import { useDesign } from '../store/hooks';

function Choices({ onChosen }: { readonly onChosen: () => void }) {
  return exportsOf(useDesign()).map(({ id, label }) => (
    <button
      key={id}
      type="button"
      onClick={() => {
        onChosen();
        void runExport(app, id);
      }}
    >
      {label}
    </button>
  ));
}

/** What can be handed on to others. */
export function ExportMenu() {
  const [open, setOpen] = useState(false);
  const id = useId();
  const opener = useRef<HTMLButtonElement>(null);
  const close = () => {
    setOpen(false);
    opener.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || !open) return;
    event.preventDefault();
    event.stopPropagation();
    close();
  };
  return (
    <fieldset
      className="menu"
      aria-label="Export"
      onKeyDown={onKeyDown}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) setOpen(false);
      }}
    >
      <button ref={opener} type="button" aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
        Export
      </button>
      <div className="menu-list" id={id} hidden={!open}>
        {open ? <Choices onChosen={close} /> : null}
      </div>
    </fieldset>
  );
}
