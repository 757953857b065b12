import { Fragment } from 'react';
import type { CutProblem } from '../../src/vocabulary/cut-problem';
import type { Heading } from '../sheets/columns';
import { markRanges } from '../sheets/mark-ranges';
import { Table } from '../sheets/Table';
import { Pages } from '../shell/Pages';
import { callOf, laidOf } from './copies';
import type { Shown } from './held';
import { usePage } from './usePage';
import type { Say } from './words';

/** Pieces on a page: a browser draws this many without delay. */
const ON_PAGE = 60;

interface Props {
  readonly shown: Shown;
  readonly index: number;
  readonly picked: number | null;
  readonly say: Say;
  readonly onPick: (place: number) => void;
}

const HEADINGS: readonly Heading[] = [
  { title: 'Mark' },
  { title: 'Piece' },
  { title: 'Size', number: true },
  { title: 'From', full: 'From the left end or corner of what it is cut from', number: true },
];

/** Marks break between one another only. */
const Marks = ({ marks }: { readonly marks: readonly string[] }) =>
  markRanges(marks).map((range, i) => (
    <Fragment key={range}>
      {i > 0 ? ', ' : ''}
      <span>{range}</span>
    </Fragment>
  ));

/** Length and width of a piece, or its length alone. */
export const pieceSize = (problem: CutProblem, piece: number, say: Say): string =>
  problem.kind === 'sheets'
    ? [problem.pieces[piece]?.length ?? 0, problem.pieces[piece]?.width ?? 0].map(say).join(' × ')
    : say(problem.pieces[piece]?.length ?? 0);

/** The pieces of a sheet or bar as a list: by its marks each part is picked out. */
export function PieceList({ shown, index, picked, say, onPick }: Props) {
  const { batch, plan, copies } = shown;
  const { problem } = batch;
  const pieces = laidOf(plan)[index]?.pieces ?? [];
  const { page, pages, setPage, from: first } = usePage(picked ?? 0, pieces.length, ON_PAGE);
  return (
    <>
      <Pages label="Pages of pieces" page={page} pages={pages} onPage={setPage} />
      <Table headings={HEADINGS} label={`Pieces of ${plan.kind === 'sheets' ? 'sheet' : 'bar'} ${index + 1}`}>
        {pieces.slice(first, first + ON_PAGE).map((placed, i) => {
          const place = first + i;
          const marks = callOf(batch, placed.piece, copies[index]?.[place]);
          const from = 'kind' in placed ? `${say(placed.x)}; ${say(placed.y)}` : say(placed.at);
          const turned = 'kind' in placed ? (placed.turned ? 'turned' : undefined) : placed.turn;
          const { name } = problem.pieces[placed.piece] ?? {};
          const named = marks[0] === name ? undefined : name;
          return (
            <tr
              key={`${placed.piece} ${from}`}
              className={place === picked ? 'picked' : undefined}
              onClick={() => onPick(place)}
            >
              <th scope="row">
                <button
                  type="button"
                  aria-pressed={place === picked}
                  onClick={(event) => {
                    event.stopPropagation();
                    onPick(place);
                  }}
                >
                  {marks.length > 0 ? <Marks marks={marks} /> : `No. ${place + 1}`}
                </button>
              </th>
              <td>
                {named}
                {named && turned ? ', ' : ''}
                {turned ? <small>{turned}</small> : null}
              </td>
              <td className="number">{pieceSize(problem, placed.piece, say)}</td>
              <td className="number">{from}</td>
            </tr>
          );
        })}
      </Table>
    </>
  );
}
