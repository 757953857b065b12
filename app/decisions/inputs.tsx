import { useId } from 'react';
import { formatLength } from '../../src/base/lengths';
import type { CountField, LengthField, LengthsField, NumberField } from '../../src/vocabulary/field';
import { useApp } from '../store/hooks';
import { type Entry, readCount, readLength, readLengths, readNumber, showNumber } from './entry';
import { TypedInput } from './TypedInput';

interface Of<F, T> {
  readonly field: F;
  readonly value: T;
  readonly onValue: (value: T) => void;
  readonly path?: string;
  /** Instead of the field's own label, where several of the kind stand together. */
  readonly label?: string;
  /** Told what is typed as it is typed. */
  readonly onTyping?: (value: T | undefined) => void;
}

const unitSign: Readonly<Record<NumberField['unit'], string>> = {
  deg: '°',
  'kg/m³': 'kg/m³',
  pence: 'p',
  ratio: '',
  kg: 'kg',
};

/** A length, typed and shown in the job's units. */
export function LengthInput({
  field,
  value,
  onValue,
  path,
  label,
  onTyping,
}: Of<Pick<LengthField, 'min' | 'max' | 'label' | 'help'>, number>) {
  const units = useApp((state) => state.document.units);
  return (
    <TypedInput
      label={label ?? field.label}
      help={field.help}
      shown={formatLength(value, units)}
      read={(text) => readLength(text, field, units)}
      onValue={onValue}
      path={path}
      unit={units === 'mm' ? 'mm' : 'in'}
      onTyping={onTyping}
    />
  );
}

/** Several rising lengths, semicolons between them. */
export function LengthsInput({
  field,
  value,
  onValue,
  path,
}: Of<Omit<LengthsField, 'kind' | 'default'>, readonly number[]>) {
  const units = useApp((state) => state.document.units);
  return (
    <TypedInput
      label={field.label}
      help={field.help}
      shown={value.map((mm) => formatLength(mm, units)).join('; ')}
      read={(text) => readLengths(text, field, units)}
      onValue={onValue}
      path={path}
      words
    />
  );
}

export function NumberInput({
  field,
  value,
  onValue,
  path,
  label,
  readout,
}: Of<NumberField, number> & { readonly readout?: (value: number) => string }) {
  return (
    <TypedInput
      label={label ?? field.label}
      help={field.help}
      shown={showNumber(value)}
      read={(text) => readNumber(text, field)}
      onValue={onValue}
      path={path}
      unit={unitSign[field.unit]}
      readout={readout}
    />
  );
}

export function CountInput({ field, value, onValue, path, onTyping }: Of<CountField, number>) {
  return (
    <TypedInput
      label={field.label}
      help={field.help}
      shown={showNumber(value)}
      read={(text) => readCount(text, field)}
      onValue={onValue}
      path={path}
      onTyping={onTyping}
    />
  );
}

interface Choices<T extends string> {
  readonly label: string;
  readonly help?: string;
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly onValue: (value: T) => void;
  readonly path?: string;
}

/** Letters that a choice beside its label has room for; longer ones stand under it, on the whole width. */
const ROOM_BESIDE = 12;

/** One of a few words. A value that is not among them is shown as it stands, not hidden. */
export function ChoiceInput<T extends string>({ label, help, value, options, onValue, path }: Choices<T>) {
  const id = useId();
  const known = options.some((option) => option.value === value);
  const words = [...(known ? [] : [value]), ...options.map((option) => option.label)].some(
    ({ length }) => length > ROOM_BESIDE,
  );
  return (
    <div className={words ? 'field words' : 'field'}>
      <label htmlFor={id}>{label}</label>
      <span className="entry">
        <select
          id={id}
          value={value}
          data-path={path}
          aria-describedby={help ? `${id}-help` : undefined}
          onChange={(event) => onValue(event.target.value as T)}
        >
          {known ? null : <option value={value}>{value}</option>}
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      </span>
      {help ? (
        <p className="help" id={`${id}-help`}>
          {help}
        </p>
      ) : null}
    </div>
  );
}

export function SwitchInput({
  label,
  help,
  value,
  onValue,
  path,
}: Omit<Choices<string>, 'value' | 'options' | 'onValue'> & {
  readonly value: boolean;
  readonly onValue: (value: boolean) => void;
}) {
  const id = useId();
  return (
    <div className="field tick">
      <input
        id={id}
        type="checkbox"
        checked={value}
        data-path={path}
        aria-describedby={help ? `${id}-help` : undefined}
        onChange={(event) => onValue(event.target.checked)}
      />
      <label htmlFor={id}>{label}</label>
      {help ? (
        <p className="help" id={`${id}-help`}>
          {help}
        </p>
      ) : null}
    </div>
  );
}

interface Words {
  readonly label: string;
  readonly value: string;
  readonly onValue: (value: string) => void;
  /** Greatest number of characters. */
  readonly most: number;
  readonly rows?: number;
  /** Where not every text will do. */
  readonly read?: (text: string) => Entry<string>;
}

const anyWords = (text: string): Entry<string> => ({ ok: true, value: text.trim() });

/** Words of one's own. */
export function TextInput({ label, value, onValue, most, rows, read = anyWords }: Words) {
  return <TypedInput label={label} shown={value} read={read} onValue={onValue} maxLength={most} rows={rows} words />;
}
