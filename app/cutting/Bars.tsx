import { type PointerEvent, type RefObject, useEffect, useMemo, useRef } from 'react';
import type { BarPlan, CutBar } from '../../src/vocabulary/cut-plan';
import type { BarProblem } from '../../src/vocabulary/cut-problem';
import type { BarCut } from '../../src/vocabulary/set-up';
import { Pages } from '../shell/Pages';
import { BAR, BarRow } from './BarRow';
import { calledOn } from './copies';
import { type Hand, heldOver } from './hand';
import { MARGIN } from './lay';
import { Hatchings } from './Sheet';
import type { BoardProps } from './Sheets';
import { useDrag } from './useDrag';
import { usePage } from './usePage';
import { useSpace } from './useSpace';

/** Bars on a page: a browser draws this many without delay. */
const ON_PAGE = 24;

interface Props extends BoardProps {
  readonly plan: BarPlan;
  readonly cuts: readonly BarCut[];
}

/** The bars of a plan one under the other, to one scale; pieces can be drawn to another place or bar. */
export function Bars(props: Props) {
  const { held, shown, plan, index, cuts, made, picked, hand, fits, say, onChoose } = props;
  const room = useRef<HTMLDivElement>(null);
  const space = useSpace('bars', room);
  const problem = shown.batch.problem as BarProblem;
  const longest = useMemo(
    () => Math.max(1, ...plan.bars.map(({ stock }) => problem.stock[stock]?.length ?? 0)),
    [plan, problem],
  );
  const { page, pages, setPage, from } = usePage(hand ? heldOver(hand) : index, plan.bars.length, ON_PAGE);
  const scale = space ? Math.max(0, (space.width - NUMBER - 2 * MARGIN) / longest) : 0;
  const drag = useBarDrag(props, scale, room);
  const to = hand?.kind === 'bars' ? hand.to : undefined;
  useInSight(room, to?.bar ?? index);
  const last = plan.bars.length;
  return (
    <>
      <Pages label="Pages of bars" page={page} pages={pages} onPage={setPage} />
      <div className="bar-room" ref={room}>
        <svg className="defs" width="0" height="0" aria-hidden="true">
          <Hatchings on="hatch" />
        </svg>
        <ol aria-label="Bars" {...drag}>
          {plan.bars.slice(from, from + ON_PAGE).map((bar, i) => {
            const n = from + i;
            const chosen = n === index;
            const marks = calledOn(shown.batch, plan, shown.copies, n);
            const taken = hand?.kind === 'bars' && hand.from.bar === n ? hand.from.index : null;
            return (
              <li key={n} className={chosen ? 'chosen' : undefined} data-bar={n}>
                <button
                  type="button"
                  aria-current={chosen ? 'true' : undefined}
                  aria-label={`Bar ${n + 1}${held.locked.includes(n) ? ', cut already' : ''}`}
                  onClick={() => onChoose(n)}
                >
                  {n + 1}
                  {held.locked.includes(n) ? ' ✓' : ''}
                </button>
                {space ? (
                  <svg
                    role="img"
                    aria-label={`Bar ${n + 1} to scale, ${bar.pieces.length} pieces`}
                    width={longest * scale + 2 * MARGIN}
                    height={BAR + 2 * MARGIN}
                  >
                    <BarRow
                      bar={bar}
                      problem={problem}
                      scale={scale}
                      marks={marks}
                      cuts={chosen && !hand ? cuts : NONE}
                      made={made}
                      picked={chosen ? picked : null}
                      inHand={taken}
                      say={say}
                    />
                    {to?.bar === n ? <Between x={betweenAt(bar, taken, to.index) * scale} fits={fits} /> : null}
                  </svg>
                ) : null}
              </li>
            );
          })}
          {to && page === pages - 1 ? (
            <li data-bar={last} className={to.bar === last ? 'chosen new' : 'new'}>
              a new bar
            </li>
          ) : null}
        </ol>
      </div>
    </>
  );
}

/** Where a piece comes between the others of a bar, mm from its left end. */
function betweenAt({ pieces }: CutBar, taken: number | null, index: number): number {
  const others = pieces.filter((_, place) => place !== taken);
  const before = others[index - 1];
  return others[index]?.at ?? (before ? before.at + before.length : 0);
}

/** The place where a piece in hand would go in. */
const Between = ({ x, fits }: { readonly x: number; readonly fits: boolean }) => (
  <path
    className={fits ? 'ghost fits' : 'ghost'}
    d={`M${x + MARGIN - 4} 0h8l-4 5zM${x + MARGIN} 0V${BAR + 2 * MARGIN}`}
  />
);

/** The bar in hand is kept in sight when it is another. */
function useInSight(room: RefObject<HTMLElement | null>, bar: number): void {
  const last = useRef(0);
  useEffect(() => {
    if (last.current !== bar) room.current?.querySelector(`[data-bar="${bar}"]`)?.scrollIntoView({ block: 'nearest' });
    last.current = bar;
  }, [room, bar]);
}

/** Scrolls a list whose edge the pointer is at; whether it could. */
function scrolledAtEdge(list: HTMLElement, clientY: number): boolean {
  const { top, bottom } = list.getBoundingClientRect();
  const was = list.scrollTop;
  if (clientY > bottom - EDGE) list.scrollTop += STEP;
  else if (clientY < top + EDGE) list.scrollTop -= STEP;
  return list.scrollTop !== was;
}

/** Drawing a piece along, over bars and between the pieces of one. */
function useBarDrag(props: Props, scale: number, room: RefObject<HTMLElement | null>) {
  const { plan, index, hand } = props;
  const pressed = useRef(0);
  const now = useRef<Hand | null>(null);
  now.current = hand;
  const drag = useDrag({
    onClick: (place) => props.onPick(place, pressed.current),
    onBegin(place) {
      now.current = props.onTakeUp(place, pressed.current);
      return now.current !== null;
    },
    onMove(clientX, clientY) {
      const { current } = now;
      if (current?.kind !== 'bars') return false;
      const scrolled = room.current !== null && scrolledAtEdge(room.current, clientY);
      const row = document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>('[data-bar]');
      const bar = row ? Number(row.dataset.bar) : current.to.bar;
      const left = row?.querySelector('svg')?.getBoundingClientRect().left ?? 0;
      const x = (clientX - left - MARGIN) / scale;
      const others = (plan.bars[bar]?.pieces ?? []).filter(
        (_, i) => bar !== current.from.bar || i !== current.from.index,
      );
      const at = others.filter((one) => one.at + one.length / 2 < x).length;
      const stock = plan.bars[current.from.bar]?.stock;
      props.onHand({ ...current, to: { ...current.to, bar, index: at, ...(stock === undefined ? {} : { stock }) } });
      return scrolled;
    },
    onDrop: props.onPut,
    onCancel: props.onGiveUp,
  });
  return {
    ...drag,
    onPointerDown(event: PointerEvent<Element>) {
      pressed.current = Number((event.target as Element).closest<HTMLElement>('[data-bar]')?.dataset.bar ?? index);
      drag.onPointerDown(event);
    },
  };
}

/** Room for a bar's number, px. */
const NUMBER = 50;
/** How near to the edge of the list a piece drawn along scrolls it, and by how much in a frame, px. */
const EDGE = 20;
const STEP = 6;
const NONE: readonly BarCut[] = [];
