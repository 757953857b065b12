import { useEffect, useState } from 'react';
import { EXAMPLES, type Example, openExample } from '../effects/examples';
import type { Kept } from '../effects/keep';
import { keptDocuments, keptVersions, takeFromShelf } from '../effects/shelf';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import { Dialog } from './Dialog';

const when = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'medium' });

interface RowsProps {
  readonly title: string;
  readonly none: string;
  readonly rows: readonly Kept[];
  readonly wordsFor: (kept: Kept) => string;
  readonly action: string;
  readonly onTake: (kept: Kept) => void;
}

function Rows({ title, none, rows, wordsFor, action, onTake }: RowsProps) {
  return (
    <section>
      <h3>{title}</h3>
      {rows.length === 0 ? <p className="aside">{none}</p> : null}
      <ul className="shelf">
        {rows.map((kept) => (
          <li key={`${kept.documentId} ${kept.revision}`}>
            <span>{wordsFor(kept)}</span>
            <time dateTime={new Date(kept.savedAt).toISOString()}>{when.format(kept.savedAt)}</time>
            <button
              type="button"
              aria-label={`${action}: ${wordsFor(kept)}, ${when.format(kept.savedAt)}`}
              onClick={() => onTake(kept)}
            >
              {action}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What the browser keeps: earlier versions of this job, and the other jobs; and the examples, always to be had afresh. */
export function Shelf({ onClose }: { readonly onClose: () => void }) {
  const documentId = useApp((state) => state.documentId);
  const [versions, setVersions] = useState<readonly Kept[]>([]);
  const [others, setOthers] = useState<readonly Kept[]>([]);
  useEffect(() => {
    let wanted = true;
    void Promise.all([keptVersions(documentId), keptDocuments()]).then(
      ([mine, all]) => {
        if (!wanted) return;
        setVersions(mine);
        setOthers(all.filter((kept) => kept.documentId !== documentId));
      },
      () => app.getState().notify({ tone: 'trouble', text: 'The browser could not say what it keeps.' }),
    );
    return () => {
      wanted = false;
    };
  }, [documentId]);
  const take = (kept: Kept) => {
    takeFromShelf(app, kept);
    onClose();
  };
  const begin = async (example: Example) => {
    if (await openExample(app, example)) onClose();
    else app.getState().notify({ tone: 'trouble', text: 'The example could not be fetched.' });
  };
  return (
    <Dialog title="Kept work" onClose={onClose}>
      <Rows
        title="Earlier versions of this job"
        none="None yet: every edit from now on is kept."
        rows={versions}
        wordsFor={({ label }) => label}
        action="Go back"
        onTake={take}
      />
      <Rows
        title="Other jobs in this browser"
        none="None."
        rows={others}
        wordsFor={({ name }) => name || 'Job without a name'}
        action="Open"
        onTake={take}
      />
      <section>
        <h3>Examples</h3>
        <ul className="shelf">
          {EXAMPLES.map((example) => (
            <li key={example.file}>
              <span>{example.label}</span>
              <button type="button" aria-label={`Open: ${example.label}`} onClick={() => void begin(example)}>
                Open
              </button>
            </li>
          ))}
        </ul>
      </section>
    </Dialog>
  );
}
