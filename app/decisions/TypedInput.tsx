import { type ChangeEvent, type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { Entry } from './entry';

interface Props<T> {
  readonly label: string;
  readonly help?: string;
  /** The value in the job, as text. */
  readonly shown: string;
  readonly read: (text: string) => Entry<T>;
  readonly onValue: (value: T) => void;
  /** Path of the decision in the job, so that a finding can lead to it. */
  readonly path?: string;
  readonly unit?: string;
  readonly maxLength?: number;
  /** Several lines: then Enter begins a new one, and only leaving the field commits. */
  readonly rows?: number;
  /** Words want more room than figures. */
  readonly words?: boolean;
  /** What the value comes to, in words: said of what is typed, as it is typed, once it can be read. */
  readonly readout?: (value: T) => string;
  /** Told what is typed as it is typed, once it can be read; undefined where it can't, and when the typing is over. */
  readonly onTyping?: (value: T | undefined) => void;
}

/**
 * A field that is read on Enter and on leaving it. What can't be read stays in the field with a message beside it, and the job
 * keeps its old value; Escape brings that back.
 */
export function TypedInput<T>(props: Props<T>) {
  const { label, help, shown, read, onValue, path, unit, maxLength, rows, words, readout, onTyping } = props;
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [seen, setSeen] = useState(shown);
  // The job changed under the field (an undo, another edit): what was half typed is no longer about it.
  if (seen !== shown) {
    setSeen(shown);
    setDraft(null);
    setProblem(null);
  }

  const revert = () => {
    setDraft(null);
    setProblem(null);
    onTyping?.(undefined);
  };
  const type = (text: string) => {
    setDraft(text);
    if (!onTyping) return;
    const entry = read(text);
    onTyping(entry.ok ? entry.value : undefined);
  };
  const commit = () => {
    // An untouched text is not read again: it may be rounded, and the job holds the exact value.
    if (draft === null || draft.trim() === shown) return revert();
    const entry = read(draft);
    if (!entry.ok) return setProblem(entry.message);
    revert();
    onValue(entry.value);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && rows === undefined) commit();
    if (event.key === 'Escape') {
      revert();
      event.stopPropagation();
    }
  };

  const message = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (problem) message.current?.scrollIntoView({ block: 'nearest' });
  }, [problem]);

  const typed = readout && problem === null ? read(draft ?? shown) : null;
  const described = [help && 'help', typed?.ok && 'readout', problem && 'problem']
    .flatMap((part) => (part ? [`${id}-${part}`] : []))
    .join(' ');
  const common = {
    id,
    autoComplete: 'off',
    spellCheck: false,
    value: draft ?? shown,
    'data-path': path,
    'data-pending': draft === null ? undefined : true,
    maxLength,
    'aria-invalid': problem !== null,
    'aria-describedby': described || undefined,
    onChange: (event: ChangeEvent<HTMLInputElement | HTMLTextAreaElement>) => type(event.target.value),
    onBlur: commit,
    onKeyDown,
  };
  return (
    <div className={words ? 'field words' : 'field'}>
      <label htmlFor={id}>{label}</label>
      <span className="entry">
        {rows === undefined ? <input {...common} type="text" /> : <textarea {...common} rows={rows} />}
        {unit ? <span className="unit">{unit}</span> : null}
      </span>
      {help ? (
        <p className="help" id={`${id}-help`}>
          {help}
        </p>
      ) : null}
      {typed?.ok ? (
        <output className="readout" id={`${id}-readout`} htmlFor={id}>
          {readout?.(typed.value)}
        </output>
      ) : null}
      {problem ? (
        <p className="problem" ref={message} id={`${id}-problem`} role="alert">
          {problem}
        </p>
      ) : null}
    </div>
  );
}
