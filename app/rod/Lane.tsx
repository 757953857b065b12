import type { BoardProps } from './board-props';
import type { LaneBox, Layout } from './layout';
import type { Stroke } from './strips';
import { Unread } from './Unread';
import type { Width } from './widths';

/** Widest strip beside a mark that still counts as hitting it, px. */
const REACH = 9;

/** One lane: what is there, squeezed to the lane's height, its widths, and the marks across it. */
export function Lane({ lane, ...board }: BoardProps & { readonly lane: LaneBox }) {
  const { layout, selected, onPick } = board;
  const { strip, top, height } = lane;
  const foot = top + height;
  return (
    <g className={`rod-lane rod-lane-${strip.lane}`}>
      <rect className="rod-bed" x={0} y={top} width={layout.width} height={height} />
      <Unread>
        {strip.blocks.map((block) => {
          const x = layout.at(block.from);
          const low = foot - layout.rise(block.low, lane);
          const high = foot - layout.rise(block.high, lane);
          return (
            // biome-ignore lint/a11y/noStaticElementInteractions: a shortcut for the pointer; the marks serve the keyboard
            <rect
              key={block.mark}
              className={block.mark === selected ? 'rod-block rod-block-picked' : 'rod-block'}
              x={x}
              y={high}
              width={Math.max(1, layout.at(block.to) - x)}
              height={Math.max(2, low - high)}
              onClick={() => onPick(block.mark)}
            >
              <title>{`${block.mark}  ${block.name}`}</title>
            </rect>
          );
        })}
      </Unread>
      {strip.strokes.map((stroke, i) => (
        <Pin
          key={stroke.id}
          stroke={stroke}
          top={top}
          foot={foot}
          reach={reachOf(layout, strip.strokes, i)}
          {...board}
        />
      ))}
      <Unread>
        {strip.widths.map((width) => (
          <Dimension key={width.from} width={width} y={lane.widthsAt} layout={layout} format={board.format} />
        ))}
      </Unread>
    </g>
  );
}

interface DimensionProps {
  readonly width: Width;
  readonly y: number;
  readonly layout: Layout;
  readonly format: BoardProps['format'];
}

/** A width over its lane, from stroke to stroke, where there is room to write it: the line is broken for the figure. */
function Dimension({ width, y, layout, format }: DimensionProps) {
  const measure = format(width.to - width.from);
  const text = width.of === undefined ? measure : `${width.of} ${measure}`;
  const from = layout.at(width.from);
  const to = layout.at(width.to);
  const wide = layout.widthOf(text);
  if (wide + 4 > to - from) return null;
  const middle = (from + to) / 2;
  const line = `M${from} ${y}H${middle - wide / 2}M${middle + wide / 2} ${y}H${to}`;
  return (
    <>
      <path className="rod-dimension" d={`${line}M${from} ${y - 4}v8M${to} ${y - 4}v8`} />
      <text className="rod-width" x={middle} y={y + 4}>
        {text}
      </text>
    </>
  );
}

/** How far to either side the pointer may miss a mark: not nearer to its neighbour than to it. */
function reachOf(layout: Layout, strokes: readonly Stroke[], i: number): number {
  const x = layout.at(strokes[i]!.x);
  const gaps = [strokes[i - 1], strokes[i + 1]].map((other) => (other ? Math.abs(layout.at(other.x) - x) : 2 * REACH));
  return Math.max(1, Math.min(REACH, ...gaps.map((gap) => gap / 2)));
}

interface PinProps extends BoardProps {
  readonly stroke: Stroke;
  readonly top: number;
  readonly foot: number;
  readonly reach: number;
}

/** One mark: a pencil stroke across the lane with a tick at its foot, which one can take hold of. */
function Pin({ stroke, top, foot, reach, layout, full, current, selected, onHold, onPoint, onPick }: PinProps) {
  const x = layout.at(stroke.x);
  const name = `${full(stroke.x)} ${stroke.reasons.join('; ')}`;
  const pick = (): void => {
    onHold(stroke.id);
    if (stroke.part !== null) onPick(stroke.part);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing has no button element
    <g
      className={stroke.part !== null && stroke.part === selected ? 'rod-mark rod-mark-picked' : 'rod-mark'}
      role="button"
      tabIndex={stroke.id === current ? 0 : -1}
      aria-label={name}
      aria-pressed={stroke.part === null ? undefined : stroke.part === selected}
      data-stroke={stroke.id}
      onClick={pick}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        pick();
      }}
      onFocus={() => onHold(stroke.id)}
      onPointerEnter={() => onPoint(stroke.id)}
      onPointerLeave={() => onPoint(null)}
    >
      <title>{name}</title>
      <rect className="rod-reach" x={x - reach} y={top} width={2 * reach} height={foot - top} />
      <path className="rod-pencil" d={`M${x} ${top}V${foot}M${x - 3.5} ${foot}L${x} ${foot - 7}L${x + 3.5} ${foot}`} />
      <rect className="rod-ring" x={x - 6} y={top - 2} width={12} height={foot - top + 4} rx={3} />
    </g>
  );
}
