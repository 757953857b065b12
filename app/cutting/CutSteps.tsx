import { useEffect, useRef } from 'react';
import type { Told } from './steps';
import { number } from './words';

interface Props {
  readonly told: readonly Told[];
  /** How many have been made, the one in hand with them; 0: none is in hand. */
  readonly made: number;
  readonly onMade: (made: number) => void;
}

/** The cuts of a sheet or bar, one after the other, with the setting of the fence. */
export function CutSteps({ told, made, onMade }: Props) {
  const now = told[made - 1];
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    if (made > 0) list.current?.children[made - 1]?.scrollIntoView({ block: 'nearest' });
  }, [made]);
  return (
    <section className="cut-steps" aria-label="Cuts in order">
      <div className="cut-now">
        <fieldset className="group" aria-label="Cuts">
          <button type="button" disabled={made === 0} onClick={() => onMade(made - 1)}>
            Previous
          </button>
          <button type="button" disabled={made >= told.length} onClick={() => onMade(made + 1)}>
            Next
          </button>
        </fieldset>
        <div aria-live="polite">
          {now ? (
            <>
              <p>
                <b>
                  Cut {made} <span className="count">of {told.length}</span>
                </b>{' '}
                {now.what}
              </p>
              {now.off ? <p className="off">Free: {now.off}.</p> : null}
            </>
          ) : (
            <p className="aside">
              {told.length === 0 ? 'No cut is needed.' : `${number(told.length, 'cut')}. Next shows the first.`}
            </p>
          )}
        </div>
      </div>
      <ol className="cut-list" ref={list} aria-label="All cuts">
        {told.map((cut, i) => (
          <li key={cut.number}>
            <button type="button" aria-current={i === made - 1 ? 'step' : undefined} onClick={() => onMade(i + 1)}>
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
