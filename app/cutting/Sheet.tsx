import { memo, useCallback, useState } from 'react';
import type { CutSheet, Leftover, PlacedOnSheet, Rect } from '../../src/vocabulary/cut-plan';
import type { SheetProblem, SheetStock } from '../../src/vocabulary/cut-problem';
import type { SheetCut } from '../../src/vocabulary/set-up';
import { type Lettering, LINE, lettered, MARGIN, marksBrief, worded } from './lay';
import { leftoversOf } from './left-over';
import { pieceSize } from './PieceList';
import type { Say } from './words';

interface Props {
  /** Absent: a new one, nothing lies on it yet. */
  readonly sheet: CutSheet | undefined;
  readonly stock: SheetStock;
  /** Trimmed off each edge. */
  readonly trim: number;
  readonly scale: number;
  readonly cuts: readonly SheetCut[];
  /** How many of them have been made. */
  readonly made: number;
  readonly marks: readonly (readonly string[])[];
  readonly problem: SheetProblem;
  readonly picked: number | null;
  readonly inHand: number | null;
  readonly say: Say;
}

/** One sheet to scale, lying as it does on the saw: pieces, the blade's ways between them, edges trimmed off and what is left. */
export const Sheet = memo(function Sheet(props: Props) {
  const { sheet, stock, trim, scale, cuts, made, marks, problem, picked, inHand, say } = props;
  const px = (mm: number): number => mm * scale;
  const [width, height] = [px(stock.length), px(stock.width)];
  const now = cuts[made - 1];
  return (
    <g transform={`translate(${MARGIN} ${MARGIN})`}>
      <rect className="board-edge" width={width} height={height} />
      <rect
        className="board"
        x={px(trim)}
        y={px(trim)}
        width={Math.max(0, px(stock.length - 2 * trim))}
        height={Math.max(0, px(stock.width - 2 * trim))}
      />
      {(sheet ? leftoversOf(sheet.tree) : []).map((left) => (
        <Left key={`${left.x} ${left.y}`} left={left} scale={scale} say={say} />
      ))}
      {sheet?.pieces.map((piece, place) => (
        <Piece
          key={`${piece.piece} ${piece.x} ${piece.y}`}
          piece={piece}
          place={place}
          scale={scale}
          words={marks[place] ?? []}
          size={pieceSize(problem, piece.piece, say)}
          grained={problem.pieces[piece.piece]?.turnable !== true}
          state={place === inHand ? 'in-hand' : place === picked ? 'picked' : ''}
        />
      ))}
      <Ways cuts={cuts.slice(0, Math.max(0, made - 1))} scale={scale} state="made" />
      <Ways cuts={cuts.slice(made)} scale={scale} state="to-come" />
      {now ? <rect className="saw-cut under-saw" {...box(now.panel, scale)} /> : null}
      <Ways cuts={now ? [now] : []} scale={scale} state="now" />
    </g>
  );
});

/** What the pointer has been over has its words to show; the others need none yet. */
function usePointed(): readonly [boolean, () => void] {
  const [pointed, setPointed] = useState(false);
  return [pointed, useCallback(() => setPointed(true), [])];
}

/** A rectangle on the page. */
const box = ({ x, y, length, width }: Rect, scale: number) => ({
  x: x * scale,
  y: y * scale,
  width: length * scale,
  height: width * scale,
});

interface PieceProps {
  readonly piece: PlacedOnSheet;
  readonly place: number;
  readonly scale: number;
  readonly words: readonly string[];
  readonly size: string;
  readonly grained: boolean;
  readonly state: '' | 'picked' | 'in-hand';
}

const Piece = memo(function Piece({ piece, place, scale, words, size, grained, state }: PieceProps) {
  const [pointed, point] = usePointed();
  const at = box(piece, scale);
  const room = lettered(at.width, at.height - (grained ? 6 : 0), marksBrief(words), size);
  const title = pointed ? <title>{[words.join(', '), size].filter(Boolean).join(': ')}</title> : null;
  // Small pieces come by the thousand.
  if (!room && !grained)
    return (
      <rect {...at} className={`laid ${state}`} data-place={place} onPointerEnter={point}>
        {title}
      </rect>
    );
  return (
    <g className={`laid ${state}`} data-place={place} onPointerEnter={point}>
      {title}
      <rect {...at} />
      {room ? <Words room={room} box={at} /> : null}
      {grained ? <Grain piece={piece} box={at} /> : null}
    </g>
  );
});

interface BoxOnPage {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Lettering in the middle of a box; the first line is the mark's. */
export function Words({ room, box: at }: { readonly room: Lettering; readonly box: BoxOnPage }) {
  const { lines, turned, marked, small = false } = room;
  const [x, y] = [at.x + at.width / 2, at.y + at.height / 2];
  return (
    <text
      className={small ? 'lettering small' : 'lettering'}
      transform={`translate(${x} ${y})${turned ? ' rotate(-90)' : ''}`}
    >
      {lines.map((line, i) => (
        <tspan
          key={line}
          className={marked && i === 0 ? 'mark' : undefined}
          x={0}
          y={(i - (lines.length - 1) / 2) * LINE + LINE * (small ? 0.22 : 0.3)}
        >
          {line}
        </tspan>
      ))}
    </text>
  );
}

/** Which way the grain runs in a piece that may not be turned: a double arrow along its lower edge. */
function Grain({ piece, box: at }: { readonly piece: PlacedOnSheet; readonly box: BoxOnPage }) {
  const half = Math.min(22, (piece.turned ? at.height : at.width) / 2 - 4);
  if (half < 5 || Math.min(at.width, at.height) < 9) return null;
  const turn = piece.turned
    ? `translate(${at.x + 5} ${at.y + at.height / 2}) rotate(90)`
    : `translate(${at.x + at.width / 2} ${at.y + at.height - 5})`;
  return (
    <path
      className="grain"
      transform={turn}
      d={`M${-half} 0H${half}M${-half + 4} -2.5L${-half} 0L${-half + 4} 2.5M${half - 4} -2.5L${half} 0L${half - 4} 2.5`}
    />
  );
}

function Left({ left, scale, say }: { readonly left: Leftover; readonly scale: number; readonly say: Say }) {
  const [pointed, point] = usePointed();
  const at = box(left, scale);
  const size = `${say(left.length)} × ${say(left.width)}`;
  const room = left.reusable
    ? worded(at.width, at.height, [['for the rack', size], [`rack: ${size}`], [size], ['rack']])
    : null;
  return (
    <g className={left.reusable ? 'leftover reusable' : 'leftover'} onPointerEnter={point}>
      {pointed ? <title>{left.reusable ? `Left over for the rack: ${size}` : `Waste: ${size}`}</title> : null}
      <rect className="hatched" {...at} />
      {room ? <Words room={room} box={at} /> : null}
    </g>
  );
}

interface WaysProps {
  readonly cuts: readonly SheetCut[];
  readonly scale: number;
  readonly state: 'made' | 'now' | 'to-come';
}

/** The blade's ways in one stroke: of a thousand pieces there are thousands. */
function Ways({ cuts, scale, state }: WaysProps) {
  if (cuts.length === 0) return null;
  const px = (mm: number): string => (mm * scale).toFixed(2);
  const ways = cuts.map(({ line: { x1, y1, x2, y2 } }) => `M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}`);
  return <path className={`saw-cut ${state}`} d={ways.join('')} />;
}

/** Hatchings with a pencil: close for waste, wide for what is kept. Once on a page; `on`: the screen, or paper. */
export function Hatchings({ on }: { readonly on: 'hatch' | 'print' }) {
  return (
    <defs>
      <pattern id={`${on}-waste`} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line className="hatch" x1="0" y1="0" x2="0" y2="5" />
      </pattern>
      <pattern id={`${on}-rack`} width="12" height="12" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line className="hatch rack" x1="0" y1="0" x2="0" y2="12" />
      </pattern>
    </defs>
  );
}
