import { useId, useMemo, useRef, useState } from 'react';
import type { LengthUnits } from '../../src/base/lengths';
import { Choice } from '../shell/Choice';
import { useApp } from '../store/hooks';
import { cutters, cutting, useCutting } from './board';
import { PlanView } from './PlanView';
import { NO_STOCK, readTyped, type TypedList, type TypedRead, type TypedStock } from './typed';
import { costOf, type Say } from './words';

const KINDS = [
  { value: 'sheets', label: 'Sheets' },
  { value: 'bars', label: 'Bars' },
] as const;

const edit = (change: Partial<TypedList>): void =>
  cutting.setState((state) => ({ typed: { ...state.typed, ...change } }));

/** A worker that has not answered by then is deep in a search, ms: nobody should wait for it. */
const PATIENCE = 250;

/** Read by the worker: a thousand lines would hold the page up. */
async function readAway(list: TypedList, units: LengthUnits): Promise<TypedRead> {
  const late = new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), PATIENCE));
  const reply = await Promise.race([cutters.ask({ what: 'list', list, units }), late]).catch(() => undefined);
  return reply?.what === 'list' ? reply.read : readTyped(list, units);
}

/** A list pasted or typed without a job, and how it is cut. */
export function TypedView({ say }: { readonly say: Say }) {
  const laid = useCutting((state) => state.order.typed.length > 0);
  const { kind, stock } = useCutting((state) => state.typed);
  const warnings = useCutting((state) => state.typedWarnings);
  const [typing, setTyping] = useState(!laid);
  const priced = stock.some(({ price }) => price.trim() !== '');
  const costs = useMemo(() => costOf(kind, priced), [kind, priced]);
  if (typing || !laid) return <TypedForm onLaid={() => setTyping(false)} />;
  return (
    <>
      <div className="typed-again">
        <button type="button" onClick={() => setTyping(true)}>
          Change the list
        </button>
        {warnings.length > 0 ? <p className="aside">{warnings.join('; ')}</p> : null}
      </div>
      <PlanView source="typed" say={say} costs={costs} none="Nothing to cut." />
    </>
  );
}

function TypedForm({ onLaid }: { readonly onLaid: () => void }) {
  const list = useCutting((state) => state.typed);
  const units = useApp((state) => state.document.units);
  const [wrong, setWrong] = useState<readonly string[]>([]);
  const sheets = list.kind === 'sheets';
  const reading = useRef(false);
  const layOut = async () => {
    if (reading.current) return;
    reading.current = true;
    const read = await readAway(list, units).finally(() => {
      reading.current = false;
    });
    if (!read.ok) return setWrong(read.lines);
    setWrong([]);
    cutting.take('typed', [read.batch]);
    cutting.lookAt('typed', read.batch.id);
    cutting.setState({ typedWarnings: read.warnings });
    onLaid();
  };
  return (
    <form
      className="typed"
      onSubmit={(event) => {
        event.preventDefault();
        void layOut();
      }}
    >
      <h2>A list without a job</h2>
      <p className="aside">
        Pieces and stock as they are: nothing here touches the job on the board. Lengths in{' '}
        {units === 'mm' ? 'mm' : 'inches'} unless a unit is written.
      </p>
      <Choice
        legend="Cut from"
        name="typed-kind"
        value={list.kind}
        options={KINDS}
        onValue={(kind) => edit({ kind })}
      />
      <div className="typed-row">
        <Text label="Saw kerf" value={list.kerf} onValue={(kerf) => edit({ kerf })} />
        <Text
          label={sheets ? 'Trim off each edge' : 'Trim off each end'}
          value={list.trim}
          onValue={(trim) => edit({ trim })}
        />
        {sheets ? (
          <>
            <label className="typed-field">
              <span>Stages</span>
              <select value={list.stages} onChange={(event) => edit({ stages: event.target.value })}>
                <option value="">any</option>
                <option value="2">2</option>
                <option value="3">3</option>
              </select>
            </label>
            <label className="tick-inline">
              <input
                type="checkbox"
                checked={list.turnable}
                onChange={(event) => edit({ turnable: event.target.checked })}
              />
              <span>Pieces may be turned (no grain)</span>
            </label>
          </>
        ) : null}
      </div>
      <fieldset className="typed-stock">
        <legend>Stock; no price: the least stuff; no number: as many as it takes</legend>
        {list.stock.map((one, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is known by its place
          <StockRow key={i} one={one} i={i} sheets={sheets} stock={list.stock} />
        ))}
        <button type="button" onClick={() => edit({ stock: [...list.stock, NO_STOCK] })}>
          Add stock
        </button>
      </fieldset>
      <Pieces list={list} />
      {wrong.length > 0 ? (
        <div role="alert">
          <ul className="unplaced">
            {wrong.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      ) : null}
      <button type="submit" className="main">
        Lay it out
      </button>
    </form>
  );
}

function Pieces({ list }: { readonly list: TypedList }) {
  const id = useId();
  return (
    <div className="typed-pieces">
      <label htmlFor={id}>Pieces, one a line</label>
      <textarea
        id={id}
        rows={10}
        spellCheck={false}
        aria-describedby={`${id}-help`}
        value={list.pieces}
        onChange={(event) => edit({ pieces: event.target.value })}
      />
      <p className="aside" id={`${id}-help`}>
        {list.kind === 'sheets'
          ? 'Name, length, width, quantity – parted by commas, semicolons or tabs; or 6 x 782 x 732 shelf.'
          : 'Name, length, quantity – parted by commas, semicolons or tabs; or 6 x 782 rail.'}
      </p>
    </div>
  );
}

interface TextProps {
  readonly label: string;
  readonly value: string;
  readonly onValue: (value: string) => void;
}

const Text = ({ label, value, onValue }: TextProps) => (
  <label className="typed-field">
    <span>{label}</span>
    <input type="text" autoComplete="off" value={value} onChange={(event) => onValue(event.target.value)} />
  </label>
);

interface StockRowProps {
  readonly one: TypedStock;
  readonly i: number;
  readonly sheets: boolean;
  readonly stock: readonly TypedStock[];
}

function StockRow({ one, i, sheets, stock }: StockRowProps) {
  const set = (change: Partial<TypedStock>) =>
    edit({ stock: stock.map((each, k) => (k === i ? { ...each, ...change } : each)) });
  return (
    <fieldset className="typed-row" aria-label={`Stock ${i + 1}`}>
      <Text label="Length" value={one.length} onValue={(length) => set({ length })} />
      {sheets ? <Text label="Width" value={one.width} onValue={(width) => set({ width })} /> : null}
      <Text label="Price" value={one.price} onValue={(price) => set({ price })} />
      <Text label="Number" value={one.count} onValue={(count) => set({ count })} />
      {stock.length > 1 ? (
        <button type="button" className="quiet" onClick={() => edit({ stock: stock.filter((_, k) => k !== i) })}>
          Remove
        </button>
      ) : null}
    </fieldset>
  );
}
