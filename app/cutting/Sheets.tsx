import { useMemo, useRef } from 'react';
import type { SheetPlan } from '../../src/vocabulary/cut-plan';
import type { SheetProblem } from '../../src/vocabulary/cut-problem';
import type { SheetCut } from '../../src/vocabulary/set-up';
import { calledOn } from './copies';
import type { Hand } from './hand';
import type { Held, Shown } from './held';
import { MARGIN, scaleOf } from './lay';
import { Hatchings, Sheet } from './Sheet';
import { Thumbs } from './Thumbs';
import { useDrag } from './useDrag';
import { useSpace } from './useSpace';
import type { Say } from './words';

export interface BoardProps {
  readonly held: Held;
  readonly shown: Shown;
  readonly index: number;
  readonly made: number;
  readonly picked: number | null;
  readonly hand: Hand | null;
  /** What is in hand can lie where it is held. */
  readonly fits: boolean;
  readonly say: Say;
  readonly onChoose: (index: number) => void;
  /** Picks out a piece of the sheet or bar in hand, or of another. */
  readonly onPick: (place: number, index?: number) => void;
  /** Takes a piece up; null where it may not be. */
  readonly onTakeUp: (place: number, index?: number) => Hand | null;
  readonly onHand: (hand: Hand) => void;
  readonly onPut: () => void;
  readonly onGiveUp: () => void;
}

interface Props extends BoardProps {
  readonly plan: SheetPlan;
  readonly cuts: readonly SheetCut[];
}

/** The sheets of a plan: all in small, and one to scale, whose pieces can be drawn to another place or over another sheet. */
export function Sheets(props: Props) {
  const { held, shown, plan, index, cuts, made, picked, hand, fits, say } = props;
  const room = useRef<HTMLDivElement>(null);
  const drawing = useRef<SVGSVGElement>(null);
  const space = useSpace('sheet', room);
  const problem = shown.batch.problem as SheetProblem;
  const sheet = plan.sheets[index];
  // A piece held over a new sheet is drawn over an empty one of that stock.
  const over = hand?.kind === 'sheets' ? hand.to.sheet : index;
  const stock =
    problem.stock[
      plan.sheets[over]?.stock ?? (hand?.kind === 'sheets' ? hand.to.stock : undefined) ?? sheet?.stock ?? 0
    ];
  const scale = space && stock ? scaleOf(stock, space) : 0;
  const { batch, copies } = shown;
  const marks = useMemo(() => calledOn(batch, plan, copies, over), [batch, plan, copies, over]);
  const grab = useRef({ x: 0, y: 0 });
  const handNow = useRef<Hand | null>(null);
  handNow.current = hand;

  const mm = (clientX: number, clientY: number) => {
    const { left = 0, top = 0 } = drawing.current?.getBoundingClientRect() ?? {};
    return { x: (clientX - left - MARGIN) / scale, y: (clientY - top - MARGIN) / scale };
  };
  const press = useRef({ x: 0, y: 0 });
  const drag = useDrag({
    onClick: (place) => props.onPick(place),
    onBegin(place) {
      const taken = props.onTakeUp(place);
      if (taken?.kind !== 'sheets') return false;
      const { x, y } = mm(press.current.x, press.current.y);
      grab.current = { x: x - taken.to.x, y: y - taken.to.y };
      handNow.current = taken;
      return true;
    },
    onMove(clientX, clientY) {
      const now = handNow.current;
      if (now?.kind !== 'sheets') return;
      const small = document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>('[data-sheet]')?.dataset.sheet;
      const { x, y } = mm(clientX, clientY);
      const to = {
        ...now.to,
        x: x - grab.current.x,
        y: y - grab.current.y,
        sheet: small === undefined ? now.to.sheet : Number(small),
      };
      props.onHand({ ...now, to });
    },
    onDrop: props.onPut,
    onCancel: props.onGiveUp,
  });
  if (!sheet || !stock) return null;
  const shownSheet = plan.sheets[over];
  return (
    <>
      {plan.sheets.length > 1 ? (
        <Thumbs plan={plan} problem={problem} chosen={over} locked={held.locked} onChoose={props.onChoose} />
      ) : null}
      <div className="sheet-room" ref={room}>
        {space ? (
          <svg
            ref={drawing}
            className="sheet-drawing"
            role="img"
            aria-label={`Sheet ${over + 1} to scale, ${shownSheet?.pieces.length ?? 0} pieces; they are listed below`}
            width={stock.length * scale + 2 * MARGIN}
            height={stock.width * scale + 2 * MARGIN}
            {...drag}
            onPointerDown={(event) => {
              press.current = { x: event.clientX, y: event.clientY };
              drag.onPointerDown(event);
            }}
          >
            <Hatchings on="hatch" />
            <Sheet
              sheet={shownSheet}
              stock={stock}
              trim={stock.trim ?? problem.trim}
              scale={scale}
              cuts={over === index && !hand ? cuts : NONE}
              made={made}
              marks={marks}
              problem={problem}
              picked={over === index ? picked : null}
              inHand={hand?.kind === 'sheets' && hand.from.sheet === over ? hand.from.index : null}
              say={say}
            />
            {hand?.kind === 'sheets' ? <Ghost hand={hand} plan={plan} scale={scale} fits={fits} /> : null}
          </svg>
        ) : null}
      </div>
    </>
  );
}

const NONE: readonly SheetCut[] = [];

interface GhostProps {
  readonly hand: Hand & { readonly kind: 'sheets' };
  readonly plan: SheetPlan;
  readonly scale: number;
  readonly fits: boolean;
}

/** The piece in hand where it is held. */
function Ghost({ hand: { from, to }, plan, scale, fits }: GhostProps) {
  const piece = plan.sheets[from.sheet]?.pieces[from.index];
  if (!piece) return null;
  const as = to.turned === piece.turned ? piece : { length: piece.width, width: piece.length };
  return (
    <rect
      className={fits ? 'ghost fits' : 'ghost'}
      x={MARGIN + to.x * scale}
      y={MARGIN + to.y * scale}
      width={as.length * scale}
      height={as.width * scale}
    />
  );
}
