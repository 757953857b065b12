import { useCallback } from 'react';
import { Choice } from '../shell/Choice';
import { figure } from '../shell/format';
import { codeOf, Late } from '../shell/late';
import { useApp, useDesign } from '../store/hooks';
import { cutting, useCutting } from './board';
import { CutFindings } from './CutFindings';
import './cutting.css';
import './drawing.css';
import './lists.css';
import './work.css';
import './print.css';
import { PlanView } from './PlanView';
import { RackView } from './RackView';
import type { CuttingView } from './store';
import { TypedView } from './TypedView';
import { useJobBatches } from './useJobBatches';
import { pounds } from './words';

const settings = codeOf(() => import('./Settings'));

const VIEWS: readonly { readonly value: CuttingView; readonly label: string }[] = [
  { value: 'plan', label: 'Plans' },
  { value: 'settings', label: 'Settings' },
  { value: 'rack', label: 'Offcut rack' },
  { value: 'typed', label: 'A list without a job' },
];

/** How the parts of the job, or of a list, are cut from what is bought and what lies in the rack. */
export default function CuttingPanel() {
  const { job } = useDesign();
  const view = useCutting((state) => state.view);
  const noSolver = useCutting((state) => state.noSolver);
  const picked = useApp((state) => state.view.selected !== null);
  const findings = useJobBatches();
  const documentId = useApp((state) => state.documentId);
  const onBoard = useCutting((state) => state.documentId) === documentId;
  const { units, tools } = job;
  const say = useCallback((mm: number) => figure(mm, { units, tools }), [units, tools]);
  return (
    <section className="cutting" aria-label="Cutting" data-picked={(view === 'plan' && picked) || undefined}>
      <Choice
        legend="What of the cutting"
        name="cutting"
        value={view}
        options={VIEWS}
        onValue={(to) => cutting.setState({ view: to, sheet: 0, cut: 0 })}
      />
      {noSolver === null ? null : (
        <p className="no-solver" role="status">
          The solver that proves plans could not be loaded ({noSolver}). The plans are good all the same; less is known
          of how good.
        </p>
      )}
      {view === 'plan' ? (
        <>
          <CutFindings findings={findings} />
          <PlanView
            source="job"
            say={say}
            costs={pounds}
            none={onBoard ? 'Nothing to cut: the job makes no parts.' : 'Laying the parts on the stuff…'}
          />
        </>
      ) : null}
      {view === 'settings' ? (
        <Late code={settings} waiting="Gathering the settings…">
          {(Settings) => <Settings say={say} />}
        </Late>
      ) : null}
      {view === 'rack' ? <RackView say={say} unit={units === 'mm' ? ' mm' : ''} /> : null}
      {view === 'typed' ? <TypedView say={say} /> : null}
    </section>
  );
}
