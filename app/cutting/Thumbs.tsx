import { memo } from 'react';
import type { SheetPlan } from '../../src/vocabulary/cut-plan';
import type { SheetProblem } from '../../src/vocabulary/cut-problem';
import { Pages } from '../shell/Pages';
import { outlines } from './lay';
import { usePage } from './usePage';

/** How high the tallest sheet comes out in small, px. */
const SMALL = 34;

/** Sheets in small on a page: a browser draws this many without delay. */
const ON_PAGE = 40;

interface Props {
  readonly plan: SheetPlan;
  readonly problem: SheetProblem;
  readonly chosen: number;
  readonly locked: readonly number[];
  readonly onChoose: (sheet: number) => void;
}

/** All sheets of a plan in small, to choose one. */
export const Thumbs = memo(function Thumbs({ plan, problem, chosen, locked, onChoose }: Props) {
  const tallest = Math.max(1, ...plan.sheets.map(({ stock }) => problem.stock[stock]?.width ?? 0));
  const scale = SMALL / tallest;
  const { page, pages, setPage, from } = usePage(chosen, plan.sheets.length, ON_PAGE);
  return (
    <>
      <Pages label="Pages of sheets" page={page} pages={pages} onPage={setPage} />
      <ol className="thumbs" aria-label="Sheets">
        {plan.sheets.slice(from, from + ON_PAGE).map(({ stock, pieces }, place) => {
          const i = from + place;
          const { length = 0, width = 0 } = problem.stock[stock] ?? {};
          const cut = locked.includes(i);
          return (
            <li key={i}>
              <button
                type="button"
                data-sheet={i}
                aria-current={i === chosen ? 'true' : undefined}
                aria-label={`Sheet ${i + 1}${cut ? ', cut already' : ''}`}
                onClick={() => onChoose(i)}
              >
                <svg width={length * scale + 2} height={SMALL + 2} aria-hidden="true">
                  <rect className="board-edge" x="1" y="1" width={length * scale} height={width * scale} />
                  <path transform="translate(1 1)" d={outlines(pieces, scale)} />
                </svg>
                <span>
                  {i + 1}
                  {cut ? ' ✓' : ''}
                </span>
              </button>
            </li>
          );
        })}
      </ol>
    </>
  );
});
