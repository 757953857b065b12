import { useRef } from 'react';

interface Props {
  readonly label: string;
  /** What the file is, for who doesn't see the button beside it. */
  readonly of: string;
  readonly onFile: (file: File) => void;
}

/** A button that asks for a JSON file. */
export function FileButton({ label, of, onFile }: Props) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        {label}
      </button>
      <input
        ref={input}
        className="unseen"
        type="file"
        accept=".json,application/json"
        aria-label={of}
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file may be chosen again after it was mended.
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
    </>
  );
}
