import { type FormEvent, useId, useState } from 'react';
import { formatLength } from '../../src/base/lengths';
import type { Offcut } from '../../src/vocabulary/cut-plan';
import { readLength } from '../decisions/entry';
import { useApp } from '../store/hooks';
import { rack, useCutting } from './board';
import { stuffName, stuffsOf } from './stuff';

/** Sizes that a problem takes, mm. */
const SIZE = { min: 0.1, max: 20_000 };
/** Letters that a label and a list have room for. */
const MOST_MARK = 12;
const MOST_NOTE = 120;

interface Props {
  /** Null: a new one. */
  readonly offcut: Offcut | null;
  readonly onDone: () => void;
}

/** One offcut, put in by hand or changed. */
export function OffcutForm({ offcut, onDone }: Props) {
  const { stock, units } = useApp((state) => state.document);
  const marks = useCutting((state) => state.rack).map(({ mark }) => mark);
  const stuffs = stuffsOf(stock.items);
  const show = (mm: number | undefined) => (mm === undefined ? '' : formatLength(mm, units));
  const [mark, setMark] = useState(offcut?.mark ?? '');
  const [material, setMaterial] = useState(offcut?.material ?? stuffs[0]?.id ?? '');
  const [length, setLength] = useState(show(offcut?.length));
  const [width, setWidth] = useState(show(offcut?.width));
  const [note, setNote] = useState(offcut?.note ?? '');
  const [problem, setProblem] = useState('');
  const known = stuffs.find(({ id }) => id === material);
  // Of a stuff that this job's book doesn't have, what the offcut had is kept.
  const wide = known ? known.wide : offcut?.width !== undefined;

  const submit = (event: FormEvent) => {
    event.preventDefault();
    const named = mark.trim();
    if (named !== offcut?.mark && marks.includes(named)) return setProblem(`There is a ${named} in the rack already.`);
    const long = readLength(length, SIZE, units);
    if (!long.ok) return setProblem(`Length: ${long.message}`);
    const across = wide ? readLength(width, SIZE, units) : undefined;
    if (across && !across.ok) return setProblem(`Width: ${across.message}`);
    const said = note.trim();
    const entry = {
      ...(named === '' ? {} : { mark: named }),
      material,
      length: long.value,
      ...(across?.ok ? { width: across.value } : {}),
      ...(said === '' ? {} : { note: said }),
    };
    const label = offcut ? `Change ${offcut.mark}` : 'Add an offcut';
    void rack.change(label, { out: offcut ? [offcut.mark] : [], in: [entry] });
    onDone();
  };
  return (
    <form className="offcut-form" onSubmit={submit}>
      <Line label="Stuff">
        {(id) => (
          <select id={id} value={material} onChange={(event) => setMaterial(event.target.value)}>
            {known ? null : <option value={material}>{stuffName(material, stock.items)}</option>}
            {stuffs.map((stuff) => (
              <option key={stuff.id} value={stuff.id}>
                {stuff.name}
              </option>
            ))}
          </select>
        )}
      </Line>
      <Line label={units === 'mm' ? 'Length, mm' : 'Length, inches'}>
        {(id) => (
          <input
            id={id}
            type="text"
            autoComplete="off"
            value={length}
            onChange={(event) => setLength(event.target.value)}
          />
        )}
      </Line>
      {wide ? (
        <Line label={units === 'mm' ? 'Width, mm' : 'Width, inches'}>
          {(id) => (
            <input
              id={id}
              type="text"
              autoComplete="off"
              value={width}
              onChange={(event) => setWidth(event.target.value)}
            />
          )}
        </Line>
      ) : null}
      <Line label={offcut ? 'Mark' : 'Mark (empty: the next free one)'}>
        {(id) => (
          <input
            id={id}
            type="text"
            autoComplete="off"
            maxLength={MOST_MARK}
            required={offcut !== null}
            value={mark}
            onChange={(event) => setMark(event.target.value)}
          />
        )}
      </Line>
      <Line label="Note">
        {(id) => (
          <input
            id={id}
            type="text"
            autoComplete="off"
            maxLength={MOST_NOTE}
            value={note}
            onChange={(event) => setNote(event.target.value)}
          />
        )}
      </Line>
      {problem ? (
        <p className="problem" role="alert">
          {problem}
        </p>
      ) : null}
      <button type="submit">{offcut ? 'Change it' : 'Put it in'}</button>
    </form>
  );
}

function Line({ label, children }: { readonly label: string; readonly children: (id: string) => React.ReactNode }) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="entry">{children(id)}</span>
    </div>
  );
}
