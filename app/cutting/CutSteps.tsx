import { useEffect, useMemo, useRef } from 'react';
import { Pages } from '../shell/Pages';
import type { Told } from './steps';
import { usePage } from './usePage';
import { number } from './words';

/** Cuts on a page: a browser draws this many without delay. */
const ON_PAGE = 60;

interface Props {
  /** How many there are; undefined while they are put in order. */
  readonly count: number | undefined;
  /** Cuts in words, from one place on to before another. */
  readonly tell: (from: number, to: number) => readonly Told[];
  /** How many have been made, the one in hand with them; 0: none is in hand. */
  readonly made: number;
  readonly onMade: (made: number) => void;
}

/** The cuts of a sheet or bar, one after the other, with the setting of the fence. */
export function CutSteps({ count: known, tell, made, onMade }: Props) {
  const count = known ?? 0;
  const { page, pages, setPage, from } = usePage(Math.max(0, made - 1), count, ON_PAGE);
  const told = useMemo(() => tell(from, from + ON_PAGE), [tell, from]);
  const now = useMemo(() => (made > 0 ? tell(made - 1, made)[0] : undefined), [tell, made]);
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    if (made > 0) list.current?.children[(made - 1) % ON_PAGE]?.scrollIntoView({ block: 'nearest' });
  }, [made]);
  return (
    <section className="cut-steps" aria-label="Cuts in order">
      <div className="cut-now">
        <fieldset className="group" aria-label="Cuts">
          <button type="button" disabled={made === 0} onClick={() => onMade(made - 1)}>
            Previous
          </button>
          <button type="button" disabled={made >= count} onClick={() => onMade(made + 1)}>
            Next
          </button>
        </fieldset>
        <div aria-live="polite">
          {now ? (
            <>
              <p>
                <b>
                  Cut {made} <span className="count">of {count}</span>
                </b>{' '}
                {now.what}
              </p>
              {now.off ? <p className="off">Free: {now.off}.</p> : null}
            </>
          ) : (
            <p className="aside">
              {known === undefined
                ? 'The cuts are being put in order…'
                : count === 0
                  ? 'No cut is needed.'
                  : `${number(count, 'cut')}. Next shows the first.`}
            </p>
          )}
        </div>
      </div>
      <Pages label="Pages of cuts" page={page} pages={pages} onPage={setPage} />
      <ol className="cut-list" ref={list} aria-label="All cuts" start={from + 1}>
        {told.map((cut, i) => (
          <li key={cut.number}>
            <button
              type="button"
              aria-current={from + i === made - 1 ? 'step' : undefined}
              onClick={() => onMade(from + i + 1)}
            >
              <span className="n">{cut.number}</span>
              <span>
                {cut.what}
                {cut.off ? <small>{cut.off}</small> : null}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
