import { whenIdle } from '../shell/late';
import { design } from '../store/designs';
import type { AppStore } from '../store/store';
import type { Rack } from './rack';
import type { Cutting } from './store';
import { takenOff } from './taken-off';

/** A job that nobody has touched for so long is likely to be looked at next, ms. Shorter pauses lie between two edits. */
export const QUIET = 800;

/**
 * While something else than the cutting is looked at: each time the job has been quiet for a moment, takes its batches up ahead, so that
 * plans stand there when the cutting is opened. An edit calls off what is being planned. A job of which something has been
 * cut already is left alone: what counts of that is only judged while somebody looks.
 */
export function planAhead(app: AppStore, cutting: Cutting, rack: Rack, idle = whenIdle): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;

  const plan = async (): Promise<void> => {
    const { document, documentId } = app.getState();
    const quiet = (): boolean => {
      const { view, gesture, document: now } = app.getState();
      return view.pane !== 'cutting' && gesture === null && now === document;
    };
    if (!quiet()) return;
    const { documentId: onBoard, order, held } = cutting.getState();
    const cut =
      onBoard === documentId
        ? order.job.filter((id) => (held[id]?.locked.length ?? 0) > 0)
        : await rack.keep().then((keep) => keep.cutOf(documentId));
    if (cut.length > 0 || !quiet()) return;
    const { batches } = takenOff(design(document), cutting.getState().rack);
    if (onBoard !== documentId) {
      cutting.forget('job');
      cutting.setState({ documentId });
    }
    cutting.takeAhead('job', batches);
  };

  const later = (): void => {
    clearTimeout(timer);
    // What can't be looked up now is looked up, and said, when the cutting is opened.
    timer = setTimeout(() => idle(() => void plan().catch(() => undefined)), QUIET);
  };

  const stops = [
    app.subscribe((now, was) => {
      if (now.document === was.document && now.gesture === was.gesture) return;
      cutting.letBe('job');
      later();
    }),
    cutting.subscribe((now, was) => {
      if (now.rack !== was.rack) later();
    }),
  ];
  later();
  return () => {
    clearTimeout(timer);
    for (const stop of stops) stop();
  };
}
