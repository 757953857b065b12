import { lazy, memo, Suspense, useEffect } from 'react';
import { Decisions } from '../decisions/Decisions';
import { openFile } from '../effects/files';
import { Facts } from '../facts/Facts';
import { RodBoard } from '../rod/RodBoard';
import { Lists } from '../sheets/Lists';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import { ErrorBoundary } from './ErrorBoundary';
import { codeOf, Late, whenIdle } from './late';
import { NoticeBoard } from './NoticeBoard';
import { listenForKeys } from './shortcuts';
import { TopBar } from './TopBar';
import { usePanels } from './usePanels';
import { ViewBar } from './ViewBar';

/** The 3D view brings its own renderer along, so it comes after the rest of the screen. */
const Scene = lazy(() => import('../scene/Scene'));
const AssemblyPanel = lazy(() => import('../assembly/AssemblyPanel'));
const cuttingPanel = codeOf(() => import('../cutting/CuttingPanel'));

/** The page comes first: the code of the cutting is fetched, and its plans are begun, when it has nothing else to do, ms after it stands. */
const AFTER = 1000;

function useFetchedAhead(): void {
  useEffect(() => {
    // Where it can't be had now, it is asked for again when it is opened, and said.
    const timer = setTimeout(() => whenIdle(() => void cuttingPanel.fetch().catch(() => undefined)), AFTER);
    return () => clearTimeout(timer);
  }, []);
}

/** A job file dropped anywhere on the board is opened. */
function useDrop(): void {
  useEffect(() => {
    const allow = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
    };
    const drop = (event: DragEvent) => {
      const file = event.dataTransfer?.files[0];
      if (!file) return;
      event.preventDefault();
      void openFile(app, file);
    };
    window.addEventListener('dragover', allow);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', allow);
      window.removeEventListener('drop', drop);
    };
  }, []);
}

/** The view of the unit is not drawn anew only because another pane stands over it. */
const View = memo(function View() {
  const job = useApp((state) => state.document);
  return (
    <ErrorBoundary what="The view" tryAgainOn={job}>
      <Suspense fallback={<p className="waiting">Bringing up the view…</p>}>
        <Scene />
      </Suspense>
    </ErrorBoundary>
  );
});

const Rod = memo(function Rod() {
  const job = useApp((state) => state.document);
  return (
    <ErrorBoundary what="The rod" tryAgainOn={job}>
      <RodBoard />
    </ErrorBoundary>
  );
});

function Middle() {
  const pane = useApp((state) => state.view.pane);
  const job = useApp((state) => state.document);
  return (
    <main className="middle" aria-label="Board">
      {pane === 'parts' || pane === 'cutting' ? <div /> : <ViewBar />}
      <div className="stage" data-pane={pane}>
        {/* Hidden, not taken down: what the view has built stays built. */}
        <div className="fill" hidden={pane === 'parts'}>
          <View />
        </div>
        {pane === 'assembly' ? (
          <ErrorBoundary what="The assembly" tryAgainOn={job}>
            <Suspense fallback={<p className="waiting">Working out the steps…</p>}>
              <AssemblyPanel />
            </Suspense>
          </ErrorBoundary>
        ) : null}
        {pane === 'cutting' ? (
          <ErrorBoundary what="The cutting" tryAgainOn={job}>
            <Late code={cuttingPanel} waiting="Laying the parts on the stuff…">
              {(CuttingPanel) => <CuttingPanel />}
            </Late>
          </ErrorBoundary>
        ) : null}
        {pane === 'parts' ? (
          <ErrorBoundary what="The lists" tryAgainOn={job}>
            <Lists />
          </ErrorBoundary>
        ) : null}
      </div>
      <Rod />
    </main>
  );
}

/** The whole screen: decisions at the left, the unit over its rod in the middle, what follows at the right. */
export function Shell() {
  const job = useApp((state) => state.document);
  const panels = usePanels();
  useDrop();
  useFetchedAhead();
  useEffect(() => listenForKeys(app, window), []);
  return (
    <div className="shell" data-left={panels.left} data-right={panels.right}>
      <TopBar />
      <NoticeBoard />
      <div className="columns">
        <aside className="column left" aria-labelledby="decisions-title">
          <h2 className="column-title">
            <button
              type="button"
              id="decisions-title"
              aria-expanded={panels.left}
              onClick={() => panels.toggle('left')}
            >
              Decisions
            </button>
          </h2>
          <div className="column-body" hidden={!panels.left}>
            <ErrorBoundary what="The decisions" tryAgainOn={job}>
              <Decisions />
            </ErrorBoundary>
          </div>
          <p className="foot" hidden={!panels.left}>
            Enter keeps what you typed, Escape brings the old value back.
          </p>
        </aside>
        <Middle />
        <aside className="column right" aria-labelledby="facts-title">
          <h2 className="column-title">
            <button type="button" id="facts-title" aria-expanded={panels.right} onClick={() => panels.toggle('right')}>
              Facts
            </button>
          </h2>
          <div className="column-body" hidden={!panels.right}>
            <ErrorBoundary what="The facts" tryAgainOn={job}>
              <Facts />
            </ErrorBoundary>
          </div>
        </aside>
      </div>
    </div>
  );
}
