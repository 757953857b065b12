import { useState } from 'react';
import { newJob } from '../../src/flow';
import { setAt } from '../../src/job/edits';
import { jobFields } from '../../src/job/fields';
import { openFile, saveFile } from '../effects/files';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import type { Keeping, Pane } from '../store/view';
import { Choice } from './Choice';
import { ErrorBoundary } from './ErrorBoundary';
import { ExportMenu } from './ExportMenu';
import { FileButton } from './FileButton';
import { Help } from './Help';
import { Shelf } from './Shelf';

const keepingWords: Readonly<Record<Keeping, string>> = {
  untouched: '',
  keeping: 'Keeping…',
  kept: 'Kept',
  failed: 'Not kept',
};

const Open = () => <FileButton label="Open" of="Job file to open" onFile={(file) => void openFile(app, file)} />;

function Steps() {
  const back = useApp((state) => state.past.at(-1)?.label);
  const forth = useApp((state) => state.future[0]?.label);
  const { undo, redo } = app.getState();
  return (
    <fieldset className="group" aria-label="History">
      <button type="button" disabled={back === undefined} title={back && `Undo: ${back}`} onClick={undo}>
        Undo
      </button>
      <button type="button" disabled={forth === undefined} title={forth && `Redo: ${forth}`} onClick={redo}>
        Redo
      </button>
    </fieldset>
  );
}

const panes: readonly { readonly value: Pane; readonly label: string }[] = [
  { value: 'unit', label: 'Unit' },
  { value: 'assembly', label: 'Assembly' },
  { value: 'parts', label: 'Parts list' },
  { value: 'cutting', label: 'Cutting' },
];

function Choices() {
  const pane = useApp((state) => state.view.pane);
  const units = useApp((state) => state.document.units);
  const { label, options } = jobFields.units;
  const { edit, setPane } = app.getState();
  return (
    <>
      <Choice legend="Shown in the middle" name="pane" value={pane} options={panes} onValue={setPane} />
      <Choice
        legend={label}
        name="units"
        value={units}
        options={options}
        onValue={(value) => edit(label, (job) => setAt(job, '/units', value))}
      />
    </>
  );
}

/** The job on the board, and what can be done with it as a whole. */
export function TopBar() {
  const job = useApp((state) => state.document);
  const keeping = useApp((state) => state.keeping);
  const [shown, setShown] = useState<'help' | 'shelf' | null>(null);
  const close = () => setShown(null);
  return (
    <header className="bar">
      <h1>
        <span className="maker">Counterwright</span>
        <span className="job-name">{job.name || 'Job without a name'}</span>
      </h1>
      <p className="keeping" role="status">
        {keepingWords[keeping]}
      </p>
      <Choices />
      <fieldset className="group" aria-label="Job">
        <button type="button" onClick={() => app.getState().open(newJob('New job'))}>
          New
        </button>
        <Open />
        <button type="button" onClick={() => void saveFile(app)}>
          Save
        </button>
        <button type="button" onClick={() => setShown('shelf')}>
          Kept work
        </button>
      </fieldset>
      <Steps />
      <ErrorBoundary what="The exports" tryAgainOn={job}>
        <ExportMenu />
      </ErrorBoundary>
      <button type="button" onClick={() => setShown('help')}>
        Keys
      </button>
      {shown === 'help' ? <Help onClose={close} /> : null}
      {shown === 'shelf' ? <Shelf onClose={close} /> : null}
    </header>
  );
}
