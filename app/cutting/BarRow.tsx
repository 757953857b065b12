import { memo } from 'react';
import type { CutBar } from '../../src/vocabulary/cut-plan';
import type { BarProblem } from '../../src/vocabulary/cut-problem';
import type { BarCut } from '../../src/vocabulary/set-up';
import { endsAbove } from './bar-ends';
import { lettered, MARGIN, marksBrief, worded } from './lay';
import { Words } from './Sheet';
import type { Say } from './words';

/** How high a bar is drawn, px: its section has no say in it. */
export const BAR = 30;

interface Props {
  readonly bar: CutBar;
  readonly problem: BarProblem;
  readonly scale: number;
  readonly marks: readonly (readonly string[])[];
  readonly cuts: readonly BarCut[];
  readonly made: number;
  readonly picked: number | null;
  readonly inHand: number | null;
  readonly say: Say;
}

/** One bar to scale in its length, as seen from above with its back edge near: pieces with their mitres, and what is left. */
export const BarRow = memo(function BarRow({ bar, problem, scale, marks, cuts, made, picked, inHand, say }: Props) {
  const stock = problem.stock[bar.stock];
  const length = stock?.length ?? 0;
  const trim = stock?.trim ?? problem.trim;
  const px = (mm: number): number => mm * scale;
  return (
    <g transform={`translate(${MARGIN} ${MARGIN})`}>
      <rect className="board-edge" width={px(length)} height={BAR} />
      <rect className="board waste" x={px(trim)} width={Math.max(0, px(length - 2 * trim))} height={BAR} />
      {bar.offcut ? <Left {...bar.offcut} scale={scale} say={say} /> : null}
      {bar.pieces.map((placed, place) => {
        const { piece, at, length: long } = placed;
        const [left, right] = endsAbove(problem, placed);
        // Near edge below: a bar is looked at as the sawyer sees it.
        const corners = [
          [px(left.far), 0],
          [px(right.far), 0],
          [px(right.near), BAR],
          [px(left.near), BAR],
        ];
        const box = { x: px(at), y: 0, width: px(long), height: BAR };
        const words = marks[place] ?? [];
        const size = say(problem.pieces[piece]?.length ?? long);
        const room = lettered(box.width, BAR, marksBrief(words), size);
        const state = place === inHand ? 'in-hand' : place === picked ? 'picked' : '';
        return (
          <g key={`${piece} ${at}`} className={`laid ${state}`} data-place={place}>
            <title>{[words.join(', '), size].filter(Boolean).join(': ')}</title>
            <polygon points={corners.map((corner) => corner.map((n) => n.toFixed(2)).join()).join(' ')} />
            {room ? <Words room={room} box={box} /> : null}
          </g>
        );
      })}
      {cuts.map((cut, i) => (
        <line
          key={cut.number}
          className={`saw-line ${i < made - 1 ? 'made' : i === made - 1 ? 'now' : 'to-come'}`}
          x1={px(cut.edge.above[1])}
          y1={-1}
          x2={px(cut.edge.above[0])}
          y2={BAR + 1}
        />
      ))}
    </g>
  );
});

function Left(props: { readonly at: number; readonly length: number; readonly scale: number; readonly say: Say }) {
  const { at, length, scale, say } = props;
  const box = { x: at * scale, y: 0, width: length * scale, height: BAR };
  const room = worded(box.width, BAR, [['for the rack', say(length)], [say(length)]]);
  return (
    <g className="leftover reusable">
      <title>{`Left over for the rack: ${say(length)}`}</title>
      <rect className="ground" {...box} />
      <rect className="hatched" {...box} />
      {room ? <Words room={room} box={box} /> : null}
    </g>
  );
}
