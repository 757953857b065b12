import { useCallback, useMemo, useState } from 'react';
import { stagesWords } from '../../src/cut';
import { Scrolled } from '../shell/Scrolled';
import { useArrows } from '../shell/useArrows';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';
import { lock } from './acts';
import { Bars } from './Bars';
import { cutting, useCutting } from './board';
import { CutSteps } from './CutSteps';
import { idleOf } from './changed';
import { calledOn, laidOf } from './copies';
import { HandTools } from './HandTools';
import { canTakeUp, type Hand, putDown, takeUp, tried } from './hand';
import { atWork, type Held, type Shown } from './held';
import { PieceList, pieceSize } from './PieceList';
import { Sheets } from './Sheets';
import { toldCuts } from './steps';
import { useCuts } from './useCuts';
import { type Say, sourceWords } from './words';

interface Props {
  readonly held: Held;
  readonly shown: Shown;
  /** The job has gone on since. */
  readonly behind: boolean;
  readonly say: Say;
}

/** How a batch is cut: the sheet or bar in hand to scale, its cuts in order, its pieces as a list. */
export function BatchPlan({ held, shown, behind, say }: Props) {
  const { batch, plan } = shown;
  const laid = laidOf(plan);
  const index = Math.min(
    useCutting((state) => state.sheet),
    laid.length - 1,
  );
  const { cuts, made, setMade } = useSteps(shown, index);
  const tell = useCallback(
    (from: number, to: number) => (cuts ? toldCuts(cuts, shown, index, say, from, to) : []),
    [cuts, shown, index, say],
  );
  const { picked, pick } = usePicked(shown, index);
  const { hand, outcome, tools, refused } = useHand(held, shown, index);
  const choose = useCallback((sheet: number) => cutting.setState({ sheet, cut: 0 }), []);
  if (index < 0) return <Unplaced shown={shown} say={say} />;
  const common = { held, shown, index, made, picked, hand, fits: outcome !== null && 'plan' in outcome, say };
  const acts = { onChoose: choose, onPick: pick, ...tools };
  return (
    <>
      <Unplaced shown={shown} say={say} />
      <Which held={held} shown={shown} index={index} behind={behind} say={say} />
      {plan.kind === 'sheets' ? (
        <Sheets {...common} {...acts} plan={plan} cuts={cuts?.kind === 'sheet' ? cuts.cuts : NO_CUTS} />
      ) : (
        <Bars {...common} {...acts} plan={plan} cuts={cuts?.kind === 'bar' ? cuts.cuts : NO_CUTS} />
      )}
      {hand && outcome ? (
        <HandTools shown={shown} hand={hand} outcome={outcome} say={say} {...tools} />
      ) : (
        <div className="hand-offer">
          <button
            type="button"
            disabled={picked === null || !canTakeUp(held, index)}
            onClick={() => picked !== null && tools.onTakeUp(picked)}
          >
            Move by hand
          </button>
          <p role="status" className={refused ? 'no' : undefined}>
            {refused ?? (picked === null ? 'Pick a piece out by its mark or in the drawing, or draw it along.' : '')}
          </p>
        </div>
      )}
      <div className="below-plan">
        <CutSteps count={cuts?.cuts.length} tell={tell} made={made} onMade={setMade} />
        <Scrolled label="Pieces" className="piece-list parts">
          <PieceList shown={shown} index={index} picked={picked} say={say} onPick={pick} />
        </Scrolled>
      </div>
      {batch.problem.pieces.length === 0 ? <p className="said">Nothing is left to be cut.</p> : null}
    </>
  );
}

const NO_CUTS: readonly never[] = [];

/** The cuts of the sheet or bar in hand, and how far they have been stepped through. */
function useSteps(shown: Shown, index: number) {
  const asked = useCutting((state) => state.cut);
  const cuts = useCuts(shown, index);
  const count = cuts?.cuts.length ?? 0;
  const made = Math.min(asked, count);
  const setMade = useCallback((to: number) => cutting.setState({ cut: to }), []);
  useArrows(useCallback((by: 1 | -1) => setMade(Math.max(0, Math.min(count, made + by))), [setMade, count, made]));
  return { cuts, made, setMade };
}

/** Which piece of the sheet or bar in hand is picked out, and how one is. */
function usePicked({ batch, plan, copies }: Shown, index: number) {
  const selected = useApp((state) => state.view.selected);
  const { parts } = useDesign();
  const marksAt = useCallback((at: number) => calledOn(batch, plan, copies, at), [batch, plan, copies]);
  const marks = useMemo(() => marksAt(index), [marksAt, index]);
  // A list without a job has no parts: what is picked out is remembered here.
  const [own, setOwn] = useState<string | null>(null);
  const typed = batch.marks.every((some) => some.length === 0);
  const found = typed
    ? own?.startsWith(`${index} `)
      ? Number(own.split(' ')[1])
      : -1
    : marks.findIndex((some) => selected !== null && some.includes(selected));
  const pick = useCallback(
    (place: number, at: number = index) => {
      if (at !== index) cutting.setState({ sheet: at, cut: 0 });
      if (typed) return setOwn((was) => (was === `${at} ${place}` ? null : `${at} ${place}`));
      const mine = marksAt(at)[place] ?? [];
      const { selected: now } = app.getState().view;
      // Of a strip with several parts each in its turn, then none.
      const next = now === null || !mine.includes(now) ? mine[0] : mine[mine.indexOf(now) + 1];
      app.getState().select(next ?? null, parts.find(({ mark }) => mark === next)?.run);
    },
    [marksAt, parts, index, typed],
  );
  return { picked: found < 0 ? null : found, pick };
}

/** A piece taken in hand, what comes of putting it down, and what can be done with it. */
function useHand(held: Held, shown: Shown, index: number) {
  const [hand, setHand] = useState<Hand | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const [of, setOf] = useState(shown);
  // The plan has changed under it: what is in hand may lie elsewhere now.
  if (of !== shown) {
    setOf(shown);
    setHand(null);
    setRefused(null);
  }
  const outcome = useMemo(() => hand && tried(shown, hand, held.locked), [shown, hand, held.locked]);
  const [at, setAt] = useState(index);
  if (at !== index) {
    setAt(index);
    setRefused(null);
  }
  const tools = {
    onTakeUp(place: number, from: number = index): Hand | null {
      const taken = canTakeUp(held, from) ? takeUp(shown, from, place) : null;
      setRefused(taken ? null : 'It is cut already.');
      setHand(taken);
      // No better plan comes under a hand that holds a piece.
      if (taken && atWork(held)) cutting.put(held.batch.id, held);
      return taken;
    },
    onHand: setHand,
    onPut() {
      if (!hand) return;
      const why = putDown(app, cutting, held.batch.id, hand);
      setHand(null);
      setRefused(why === null ? null : `Not moved: ${why}.`);
    },
    onGiveUp() {
      setHand(null);
    },
  };
  return { hand, outcome, tools, refused };
}

/** Which sheet or bar is in hand, what it is cut from, and whether it is cut already. */
function Which({ held, shown, index, behind, say }: Props & { readonly index: number }) {
  const { batch, plan } = shown;
  const sheet = plan.kind === 'sheets' ? plan.sheets[index] : undefined;
  const trimsFree = batch.problem.kind === 'sheets' && batch.problem.trimsFree;
  const thing = plan.kind === 'sheets' ? 'Sheet' : 'Bar';
  return (
    <div className="which">
      <p>
        <b>
          {thing} {index + 1}
        </b>{' '}
        of {laidOf(plan).length}: {sourceWords(batch, laidOf(plan)[index]?.stock ?? 0, say)}
        {sheet ? `; ${stagesWords(sheet, trimsFree)}` : ''}
      </p>
      <label className="tick-inline">
        <input
          type="checkbox"
          checked={held.locked.includes(index)}
          disabled={behind || held.done || held.stand === 'waiting'}
          onChange={(event) => lock(app, cutting, held.batch.id, index, event.target.checked)}
        />
        <span>Cut already{idleOf(held).includes(index) ? '; nothing on it is wanted any more' : ''}</span>
      </label>
    </div>
  );
}

/** What could not be placed, and why. */
function Unplaced({ shown: { batch, plan }, say }: Pick<Props, 'shown' | 'say'>) {
  if (plan.unplaced.length === 0) return null;
  return (
    <ul className="unplaced" aria-label="What can’t be cut">
      {plan.unplaced.map(({ piece, quantity, why }) => (
        <li key={piece}>
          <b>
            {quantity} × {batch.problem.pieces[piece]?.name ?? `piece ${piece + 1}`}
          </b>
          , {pieceSize(batch.problem, piece, say)}: {why}
        </li>
      ))}
    </ul>
  );
}
