interface Props {
  readonly name: string;
  readonly disabled?: boolean;
  readonly onRemove: () => void;
}

/** Takes a row away. The button goes with its row, so the focus is handed to the head of the list. */
export function RemoveButton({ name, disabled, onRemove }: Props) {
  return (
    <button
      type="button"
      className="quiet"
      disabled={disabled}
      onClick={(event) => {
        const head = event.currentTarget.closest('.section')?.querySelector('summary');
        onRemove();
        head?.focus({ preventScroll: true });
      }}
    >
      {name}
    </button>
  );
}
