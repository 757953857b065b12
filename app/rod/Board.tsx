import { memo } from 'react';
import type { BoardProps } from './board-props';
import { Lane } from './Lane';
import { ROW_HEIGHT } from './layout';
import { Unread } from './Unread';

/** The board itself: lanes, the extent of what is picked out through all of them, and the figures underneath. */
export const Board = memo(function Board(props: BoardProps) {
  const { layout, name, picked, onSteer, children } = props;
  const { width, height, lanes, ruler, at, ticks, figures } = layout;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset can't hold a drawing's marks
    <svg className="rod-svg" width={width} height={height} role="group" aria-label={name} onKeyDown={onSteer}>
      {lanes.map((lane) => (
        <Lane key={lane.strip.lane} lane={lane} {...props} />
      ))}
      {children}
      {picked && (
        <g className="rod-extent">
          <rect x={at(picked.from)} y={0} width={Math.max(1, at(picked.to) - at(picked.from))} height={ruler} />
          <path d={`M${at(picked.from)} 0V${ruler + 8}M${at(picked.to)} 0V${ruler + 8}`} />
        </g>
      )}
      <Unread className="rod-ruler">
        <path
          className="rod-line"
          d={`M0 ${ruler}H${width}${ticks.map((x) => `M${x.toFixed(1)} ${ruler}v6`).join('')}`}
        />
        {figures.map(({ id, x, middle, row, text }) => {
          const top = ruler + 9 + row * ROW_HEIGHT;
          return (
            <g key={id}>
              <path className="rod-line rod-leader" d={`M${x.toFixed(1)} ${ruler}V${top}`} />
              <text x={middle} y={top + 10}>
                {text}
              </text>
            </g>
          );
        })}
      </Unread>
    </svg>
  );
});
