import { useEffect, useMemo, useRef } from 'react';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import { accept, planAnew } from './acts';
import { BatchList } from './BatchList';
import { BatchPlan } from './BatchPlan';
import { cutting, rack, useCutting } from './board';
import { type CutFrom, placesByMark } from './copies';
import { atWork, type Held } from './held';
import { JobTotal } from './JobTotal';
import { fetchLines } from './order-list';
import { PlanHead } from './PlanHead';
import { PlanPages } from './PlanPages';
import { Printed } from './Printed';
import type { Source } from './store';
import { type Cost, type Say, sawWords, stockWords } from './words';

interface Props {
  readonly source: Source;
  readonly say: Say;
  readonly costs: Cost;
  readonly none: string;
}

/** Batches at the left, and how the one in hand is cut. */
export function PlanView({ source, say, costs, none }: Props) {
  const order = useCutting((state) => state.order[source]);
  const all = useCutting((state) => state.held);
  const chosen = useCutting((state) => state.at[source]);
  const batches = useMemo(() => order.flatMap((id) => all[id] ?? []), [order, all]);
  const document = useApp((state) => state.document);
  const { name: job, units } = document;
  // After an edit the plan before stands until the new one is taken off: it must not be taken for that.
  const behind = useCutting((state) => state.taken) !== document && source === 'job';
  const held = all[chosen];
  useTurnTo(source, batches);
  if (!held) return <p className="said">{none}</p>;
  return (
    <div className={batches.length > 1 || source === 'job' ? 'cutting-plan' : 'cutting-plan alone'}>
      <div className="stuffs">
        {source === 'job' ? <JobTotal batches={batches} job={job} say={say} costs={costs} /> : null}
        <BatchList batches={batches} chosen={chosen} costs={costs} onChoose={(id) => cutting.lookAt(source, id)} />
      </div>
      <div className="batch-plan">
        <PlanHead
          held={held}
          costs={costs}
          fetch={held.shown ? fetchLines(held.shown, held.locked, say, source === 'job' ? costs : undefined) : []}
          onAnew={() => planAnew(app, cutting, chosen)}
        >
          {held.shown ? (
            <Printed
              label="Print"
              title={`${held.batch.name}: ${stockWords(held.shown.plan)}`}
              head={[
                source === 'job' ? job || 'Job' : 'A list without a job',
                sawWords(held.shown.batch.problem, say),
                ...(units === 'mm' ? ['lengths in mm'] : []),
              ]}
            >
              <PlanPages shown={held.shown} say={say} />
            </Printed>
          ) : null}
          {source === 'job' && held.shown && !held.done ? <Accept id={chosen} held={held} behind={behind} /> : null}
        </PlanHead>
        {held.shown ? (
          <BatchPlan key={chosen} held={held} shown={held.shown} behind={behind} say={say} />
        ) : (
          <p className="said">{held.stand === 'failed' ? 'Change the list or the decisions, and try again.' : ''}</p>
        )}
      </div>
    </div>
  );
}

/** All of it is cut: the rack is told. */
function Accept({ id, held, behind }: { readonly id: string; readonly held: Held; readonly behind: boolean }) {
  const items = useApp((state) => state.document.stock.items);
  const isBlank = (material: string) => items.some((item) => item.id === material && item.kind === 'hardwood');
  return (
    <button
      type="button"
      disabled={behind || atWork(held)}
      title="What is left over goes into the rack, and the offcuts that were used leave it"
      onClick={() => void accept(app, cutting, rack, id, isBlank)}
    >
      Plan is cut
    </button>
  );
}

/**
 * A part picked out elsewhere, in the view or on a list, is turned to, once: from there one goes by hand. Where it is looked at and a
 * better plan lays it elsewhere, it is followed.
 */
function useTurnTo(source: Source, batches: readonly Held[]): void {
  const selected = useApp((state) => (source === 'job' ? state.view.selected : null));
  const found = useMemo(() => (selected === null ? null : whereIs(selected, batches)), [selected, batches]);
  const last = useRef<{ readonly mark: string; readonly batch: string; readonly sheet: number } | null>(null);
  useEffect(() => {
    const was = last.current;
    last.current = found && selected !== null ? { mark: selected, batch: found.batch, sheet: found.sheet } : null;
    if (!found) return;
    const { at, sheet } = cutting.getState();
    const looked = was !== null && at[source] === was.batch && sheet === was.sheet;
    const isNew = was?.mark !== selected;
    if ((isNew || looked) && (found.batch !== at[source] || found.sheet !== sheet))
      cutting.lookAt(source, found.batch, found.sheet);
  }, [selected, found, source]);
}

function whereIs(mark: string, batches: readonly Held[]): (CutFrom & { readonly batch: string }) | null {
  for (const { batch, shown } of batches) {
    // What is looked for must be in it at all, before every piece is gone through.
    if (!shown?.batch.marks.some((copies) => copies.some((marks) => marks.includes(mark)))) continue;
    const place = placesByMark(shown.batch, shown.plan, shown.copies).get(mark);
    if (place) return { ...place, batch: batch.id };
  }
  return null;
}
