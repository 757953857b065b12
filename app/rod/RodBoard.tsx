import { type KeyboardEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { figure, length } from '../shell/format';
import { app } from '../store/app';
import { useApp, useCurrentRun, useDesign } from '../store/hooks';
import { Board } from './Board';
import { Captions } from './Captions';
import type { Wish } from './figures';
import { layOut } from './layout';
import { RunTabs } from './RunTabs';
import './rod.css';
import './things.css';
import { Slip } from './Slip';
import { Stretch } from './Stretch';
import { inOrder, steered, stripsOf } from './strips';
import { Things } from './Things';
import { aboveOn } from './things';
import { useRoom } from './useRoom';

/** The setting-out rod of the run in hand: a lane each for what is put on in front, the skin and the timber behind it. */
export function RodBoard() {
  const design = useDesign();
  const run = useCurrentRun();
  const selected = useApp((state) => state.view.selected);
  const thing = useApp((state) => state.view.thing);
  const folded = useApp((state) => state.view.rodFolded[state.view.pane]);
  const { setRun, foldRod } = app.getState();
  const [zoom, setZoom] = useState(1);
  const [inHand, setInHand] = useState<string | null>(null);
  const [pointedAt, setPointedAt] = useState<string | null>(null);
  const scroller = useRef<HTMLDivElement>(null);
  const room = useRoom(scroller);
  const { units, tools } = design.job;
  const format = useCallback((mm: number) => figure(mm, { units, tools }), [units, tools]);
  const full = useCallback((mm: number) => length(mm, { units, tools }), [units, tools]);

  const strips = useMemo(() => (run ? stripsOf(design, run) : []), [design, run]);
  const strokes = useMemo(() => inOrder(strips), [strips]);
  const current = strokes.find((stroke) => stroke.id === inHand) ?? strokes[0];
  const held = strokes.find((stroke) => stroke.id === inHand);
  const shown = strokes.find((stroke) => stroke.id === pointedAt) ?? held;
  const picked = useMemo(
    () => strips.flatMap((strip) => strip.blocks).find((block) => block.mark === selected),
    [strips, selected],
  );
  const layout = useMemo(() => {
    if (!run || !room || room.width === 0) return null;
    const wishes: Wish[] = [];
    if (held) wishes.push({ x: held.x, rank: 0 });
    if (picked) wishes.push({ x: picked.from, rank: 1 }, { x: picked.to, rank: 2 });
    const drawnOut = { ...room, width: Math.floor(room.width * zoom) };
    return layOut(run, strips, drawnOut, design.rod, format, wishes, aboveOn(design, run));
  }, [run, room, zoom, strips, held, picked, design, format]);

  const pickedMark = picked?.mark;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the board slides for what is picked, not for every change of it
  useEffect(() => {
    if (picked && layout) bringIntoView(scroller.current, layout.at((picked.from + picked.to) / 2));
  }, [pickedMark, zoom]);

  const things = useMemo(
    () => (run && layout ? <Things made={design} run={run} layout={layout} inHand={thing} full={full} /> : null),
    [design, run, layout, thing, full],
  );
  const onFront = held?.lane === 'front' ? { from: held.x, to: held.x } : (picked ?? null);

  const runId = run?.id;
  const pick = useCallback((mark: string) => app.getState().select(mark, runId), [runId]);
  const steer = useCallback(
    (event: KeyboardEvent) => {
      const next = current && steered(strips, current, event.key);
      if (!next) return;
      event.preventDefault();
      setInHand(next.id);
      scroller.current?.querySelector<SVGGElement>(`[data-stroke="${CSS.escape(next.id)}"]`)?.focus();
    },
    [strips, current],
  );

  if (!run) return <section className="rod" aria-label="Rod" />;

  return (
    <section className="rod" aria-label="Rod">
      {folded ? null : <Slip made={design} run={run} inHand={thing} at={onFront} full={full} />}
      <header className="rod-head">
        <RunTabs runs={design.rod.runs} current={run.id} format={format} onChoose={setRun} />
        <p className="rod-readout">
          {shown ? (
            <>
              <b>{full(shown.x)}</b> {shown.reasons.join(' · ')}
            </>
          ) : (
            'Running figures from the left end of the frame line'
          )}
        </p>
        <div className="rod-tools">
          {folded ? null : <Stretch times={zoom} onTimes={setZoom} />}
          <button
            type="button"
            className="rod-fold"
            aria-expanded={!folded}
            aria-controls="rod-board"
            aria-label={folded ? 'Unfold the rod' : 'Fold away the rod'}
            onClick={() => foldRod(!folded)}
          >
            {folded ? 'unfold' : 'fold away'}
          </button>
        </div>
      </header>
      {/* Hidden, not taken down: its room is measured again when it is unfolded. */}
      <div className="rod-board" role="tabpanel" id="rod-board" aria-labelledby={`rod-run-${run.id}`} hidden={folded}>
        <Captions layout={layout} />
        <div className="rod-scroll" ref={scroller}>
          {layout && (
            <Board
              layout={layout}
              name={`Marks of ${run.name}`}
              format={format}
              full={full}
              current={current?.id ?? null}
              selected={selected}
              picked={picked}
              onSteer={steer}
              onHold={setInHand}
              onPoint={setPointedAt}
              onPick={pick}
            >
              {things}
            </Board>
          )}
        </div>
      </div>
    </section>
  );
}

/** Slides a drawn-out board until a place on it shows. */
function bringIntoView(scroller: HTMLDivElement | null, x: number): void {
  if (!scroller) return;
  const { scrollLeft, clientWidth } = scroller;
  if (x < scrollLeft || x > scrollLeft + clientWidth) scroller.scrollLeft = x - clientWidth / 2;
}
