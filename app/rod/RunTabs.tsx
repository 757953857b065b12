import type { KeyboardEvent } from 'react';
import type { RodRun } from '../../src/vocabulary/rod';

interface Props {
  readonly runs: readonly RodRun[];
  readonly current: string;
  readonly format: (mm: number) => string;
  readonly onChoose: (run: string) => void;
}

/** One tab for each run, from left to right as one walks along the front. */
export function RunTabs({ runs, current, format, onChoose }: Props) {
  const steer = (event: KeyboardEvent<HTMLDivElement>): void => {
    const at = runs.findIndex((run) => run.id === current);
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: runs.length - 1 }[event.key];
    const next = to === undefined ? undefined : runs[to];
    if (!next) return;
    event.preventDefault();
    onChoose(next.id);
    document.getElementById(`rod-run-${next.id}`)?.focus();
  };
  return (
    <div className="rod-tabs" role="tablist" aria-label="Runs" onKeyDown={steer}>
      {runs.map((run) => (
        <button
          key={run.id}
          id={`rod-run-${run.id}`}
          type="button"
          role="tab"
          aria-selected={run.id === current}
          aria-controls="rod-board"
          tabIndex={run.id === current ? 0 : -1}
          onClick={() => onChoose(run.id)}
        >
          {run.name} <small>{format(run.length)}</small>
        </button>
      ))}
    </div>
  );
}
