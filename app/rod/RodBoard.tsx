import { type KeyboardEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useApp, useCurrentRun, useDesign } from '../store/hooks';
import { Board } from './Board';
import { exactly, toTheStep } from './figures';
import { layOut, type Wish } from './layout';
import { RunTabs } from './RunTabs';
import './rod.css';
import { inOrder, type Strip, type Stroke, steered, stripsOf } from './strips';
import { useRoom } from './useRoom';

const CAPTION: Readonly<Record<Strip['lane'], string>> = {
  front: 'front',
  skin: 'skin',
  timber: 'timber',
  behind: 'behind',
};

/** How far the board can be drawn out, and by how much at a time. */
const LONGEST = 12;
const STEP = 1.5;

/** The setting-out rod of the run in hand: a lane each for what is put on in front, the skin and the timber behind it. */
export function RodBoard() {
  const design = useDesign();
  const run = useCurrentRun();
  const selected = useApp((state) => state.view.selected);
  const setRun = useApp((state) => state.setRun);
  const select = useApp((state) => state.select);
  const [zoom, setZoom] = useState(1);
  const [inHand, setInHand] = useState<string | null>(null);
  const [pointedAt, setPointedAt] = useState<string | null>(null);
  const scroller = useRef<HTMLDivElement>(null);
  const room = useRoom(scroller);
  const { units, tools } = design.job;
  const format = useCallback((mm: number) => toTheStep(mm, units, tools.roundingStep), [units, tools]);
  const exact = useCallback((mm: number) => exactly(mm, units), [units]);

  const strips = useMemo(() => (run ? stripsOf(design, run) : []), [design, run]);
  const strokes = useMemo(() => inOrder(strips), [strips]);
  const current = strokes.find((stroke) => stroke.id === inHand) ?? strokes[0];
  const shown = strokes.find((stroke) => stroke.id === (pointedAt ?? inHand));
  const picked = useMemo(
    () => strips.flatMap((strip) => strip.blocks).find((block) => block.mark === selected),
    [strips, selected],
  );
  const layout = useMemo(() => {
    if (!run || !room || room.width === 0) return null;
    const wishes: Wish[] = [];
    if (shown) wishes.push({ x: shown.x, rank: 0 });
    if (picked) wishes.push({ x: picked.from, rank: 1 }, { x: picked.to, rank: 2 });
    return layOut(run, strips, { ...room, width: Math.floor(room.width * zoom) }, design.rod.height, format, wishes);
  }, [run, room, zoom, strips, shown, picked, design.rod.height, format]);

  useEffect(
    () => bringIntoView(scroller.current, picked && layout ? layout.at((picked.from + picked.to) / 2) : null),
    [picked, layout],
  );

  if (!run) return <section className="rod" aria-label="Rod" />;

  const take = (stroke: Stroke): void => {
    setInHand(stroke.id);
    scroller.current?.querySelector<SVGGElement>(`[data-stroke="${CSS.escape(stroke.id)}"]`)?.focus();
  };
  const steer = (event: KeyboardEvent): void => {
    const next = current && steered(strips, current, event.key);
    if (!next) return;
    event.preventDefault();
    take(next);
  };

  return (
    <section className="rod" aria-label="Rod">
      <header className="rod-head">
        <RunTabs runs={design.rod.runs} current={run.id} format={format} onChoose={setRun} />
        <p className="rod-readout">
          {shown ? (
            <>
              <b>{exact(shown.x)}</b> {shown.reasons.join(' · ')}
            </>
          ) : (
            'Running measurements from the left end of the frame'
          )}
        </p>
        <fieldset className="rod-zoom" aria-label="Length of the board">
          <button
            type="button"
            aria-label="Shorter"
            disabled={zoom <= 1}
            onClick={() => setZoom(Math.max(1, zoom / STEP))}
          >
            −
          </button>
          <button
            type="button"
            aria-label="Longer"
            disabled={zoom >= LONGEST}
            onClick={() => setZoom(Math.min(LONGEST, zoom * STEP))}
          >
            +
          </button>
        </fieldset>
      </header>
      <div className="rod-board" role="tabpanel" id="rod-board" aria-labelledby={`rod-run-${run.id}`}>
        <div className="rod-captions" aria-hidden="true">
          {layout?.lanes.map(({ strip, top, height }) => (
            <span key={strip.lane} style={{ top, height }}>
              {CAPTION[strip.lane]}
            </span>
          ))}
        </div>
        <div className="rod-scroll" ref={scroller}>
          {layout && (
            <Board
              layout={layout}
              name={`Marks of ${run.name}`}
              format={format}
              exact={exact}
              current={current?.id ?? null}
              selected={selected}
              picked={picked}
              onSteer={steer}
              onHold={setInHand}
              onPoint={setPointedAt}
              onPick={(mark) => select(mark, run.id)}
            />
          )}
        </div>
      </div>
    </section>
  );
}

/** Slides a drawn-out board until a place on it shows. */
function bringIntoView(scroller: HTMLDivElement | null, x: number | null): void {
  if (!scroller || x === null) return;
  const { scrollLeft, clientWidth } = scroller;
  if (x < scrollLeft || x > scrollLeft + clientWidth) scroller.scrollLeft = x - clientWidth / 2;
}
