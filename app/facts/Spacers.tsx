import { useDeferredValue, useMemo, useState } from 'react';
import { layoutWords } from '../../src/exports/layout-words';
import { layoutsBySpacers, making, rooms } from '../../src/flow';
import { setElement } from '../../src/job/edits';
import type { Job } from '../../src/vocabulary/job';
import type { Layout } from '../../src/vocabulary/making';
import { length } from '../shell/format';
import { app } from '../store/app';
import { useDesign } from '../store/hooks';
import { Figure } from './Figure';

/** Other layouts that are offered at most. */
const MOST = 3;

/** Takes all the decisions of a layout in one step. */
const withLayout = (job: Job, { decisions }: Layout): Job =>
  decisions.reduce((now, { kind, key, value }) => setElement(now, kind, key, value), job);

/** How many different blocks the frames are built with, and layouts that need fewer. */
export function Spacers() {
  // The making is worked out after the rest of the page.
  const made = useDeferredValue(useDesign());
  const { spacers } = making(made);
  // Looked for when asked: every layout is framed up to be counted.
  const [asked, setAsked] = useState<Job | null>(null);
  return (
    <section className="facts" aria-labelledby="spacers-title">
      <h3 id="spacers-title">Building the frames</h3>
      <dl>
        <Figure name="Different spacers" value={String(spacers.length)} by={null} />
      </dl>
      {asked === made.job ? (
        <Offers job={made.job} now={spacers.length} />
      ) : (
        <button type="button" className="quiet" onClick={() => setAsked(made.job)}>
          Look for a layout with fewer
        </button>
      )}
    </section>
  );
}

function Offers({ job, now }: { readonly job: Job; readonly now: number }) {
  const layouts = useMemo(() => layoutsBySpacers(job), [job]);
  const fewer = layouts.filter(({ spacers, decisions }) => spacers < now && decisions.length > 0).slice(0, MOST);
  if (fewer.length === 0)
    return (
      <p className="aside" role="status">
        No other layout of the frame needs fewer.
      </p>
    );
  return (
    <ul className="offers" aria-label="Layouts with fewer spacers">
      {fewer.map((layout) => {
        const words = layoutWords(layout, rooms, (mm) => length(mm, job));
        return (
          <li key={words}>
            <p>
              <b>{layout.spacers} spacers</b>, {layout.studs} studs, {layout.noggins} noggins
            </p>
            <p className="aside">{words}</p>
            <button
              type="button"
              onClick={() => app.getState().edit('Layout with fewer spacers', (at) => withLayout(at, layout))}
            >
              Take this layout
            </button>
          </li>
        );
      })}
    </ul>
  );
}
