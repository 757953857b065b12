import { Component, type ReactNode } from 'react';
import { saveFile } from '../effects/files';
import { app } from '../store/app';

interface Props {
  /** What has failed, in words: "The view". */
  readonly what: string;
  /** When this changes, what failed is tried again. */
  readonly tryAgainOn: unknown;
  readonly children: ReactNode;
}

interface State {
  readonly error: Error | null;
  readonly seen: unknown;
}

/** Keeps a fault in one part of the screen from taking the rest, and the job, with it. */
export class ErrorBoundary extends Component<Props, State> {
  override state: State = { error: null, seen: this.props.tryAgainOn };

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { error: error instanceof Error ? error : new Error(String(error)) };
  }

  static getDerivedStateFromProps(props: Props, state: State): Partial<State> | null {
    return props.tryAgainOn === state.seen ? null : { error: null, seen: props.tryAgainOn };
  }

  override render(): ReactNode {
    const { error } = this.state;
    if (!error) return this.props.children;
    return (
      <div className="fault" role="alert">
        <h2>{this.props.what} can’t be shown</h2>
        <p>
          This is a fault in the program, not in your job. The job is safe: save it to a file, or undo the last edit.
        </p>
        <p className="why">{error.message}</p>
        <div className="row">
          <button type="button" onClick={() => void saveFile(app)}>
            Save the job to a file
          </button>
          <button type="button" onClick={() => app.getState().undo()}>
            Undo the last edit
          </button>
        </div>
      </div>
    );
  }
}
