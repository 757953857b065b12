import { saveFile } from '../effects/files';
import type { AppStore } from '../store/store';

/** A key that does something, for the keyboard and for the help. */
export interface Shortcut {
  readonly label: string;
  /** As shown in the help. */
  readonly keys: string;
  readonly matches: (event: KeyboardEvent) => boolean;
  readonly run: (store: AppStore) => void;
}

const withCtrl = (event: KeyboardEvent, key: string, shift: boolean): boolean =>
  (event.ctrlKey || event.metaKey) && !event.altKey && event.shiftKey === shift && event.key.toLowerCase() === key;
const plain = (key: string) => (event: KeyboardEvent) =>
  !event.ctrlKey && !event.metaKey && !event.altKey && event.key.toLowerCase() === key;

/** Work with Ctrl as well as with the Apple key. */
export const shortcuts: readonly Shortcut[] = [
  { label: 'Undo', keys: 'Ctrl Z', matches: (e) => withCtrl(e, 'z', false), run: (s) => s.getState().undo() },
  {
    label: 'Redo',
    keys: 'Ctrl Shift Z, Ctrl Y',
    matches: (e) => withCtrl(e, 'z', true) || withCtrl(e, 'y', false),
    run: (s) => s.getState().redo(),
  },
  { label: 'Save to a file', keys: 'Ctrl S', matches: (e) => withCtrl(e, 's', false), run: (s) => void saveFile(s) },
  { label: 'Fit the unit in the view', keys: 'F', matches: plain('f'), run: (s) => s.getState().look('fit') },
  { label: 'Look as from the room', keys: '0', matches: plain('0'), run: (s) => s.getState().look('room') },
  { label: 'Look from the front', keys: '1', matches: plain('1'), run: (s) => s.getState().look('front') },
  { label: 'Look from above', keys: '2', matches: plain('2'), run: (s) => s.getState().look('plan') },
  { label: 'Look at the left end', keys: '3', matches: plain('3'), run: (s) => s.getState().look('left') },
  { label: 'Look at the right end', keys: '4', matches: plain('4'), run: (s) => s.getState().look('right') },
  { label: 'Look from behind', keys: 'B', matches: plain('b'), run: (s) => s.getState().look('behind') },
  { label: 'As finished', keys: '5', matches: plain('5'), run: (s) => s.getState().setMode('finished') },
  { label: 'As clad', keys: '6', matches: plain('6'), run: (s) => s.getState().setMode('clad') },
  { label: 'As framed', keys: '7', matches: plain('7'), run: (s) => s.getState().setMode('framed') },
  {
    label: 'Dimensions in the view, on or off',
    keys: 'D',
    matches: plain('d'),
    run: (s) => s.getState().setShowDimensions(!s.getState().view.showDimensions),
  },
  {
    label: 'The unit, or its parts list',
    keys: 'P',
    matches: plain('p'),
    run: (s) => s.getState().setPane(s.getState().view.pane === 'unit' ? 'parts' : 'unit'),
  },
  {
    label: 'The unit, or its assembly step by step',
    keys: 'A',
    matches: plain('a'),
    run: (s) => s.getState().setPane(s.getState().view.pane === 'assembly' ? 'unit' : 'assembly'),
  },
  {
    label: 'The unit, or how its stuff is cut',
    keys: 'C',
    matches: plain('c'),
    run: (s) => s.getState().setPane(s.getState().view.pane === 'cutting' ? 'unit' : 'cutting'),
  },
  {
    label: 'Drawn apart, or together',
    keys: 'X',
    matches: plain('x'),
    run: (s) => s.getState().setApart(s.getState().view.apart > 0 ? 0 : 1),
  },
  {
    label: 'The rod, folded away or not',
    keys: 'R',
    matches: plain('r'),
    run: (s) => s.getState().foldRod(!s.getState().view.rodFolded[s.getState().view.pane]),
  },
  { label: 'Put the part’s card away', keys: 'Esc', matches: plain('escape'), run: (s) => s.getState().select(null) },
];

/** Where a letter belongs to what is being written, and Ctrl Z to a text half written. */
function isWriting(target: EventTarget | null, event: KeyboardEvent): boolean {
  if (!(target instanceof HTMLElement)) return false;
  const writes = target.matches('input:not([type=checkbox], [type=radio], [type=file]), textarea, select');
  if (!writes) return false;
  // A field whose text is the job's own value has nothing of its own to undo.
  const ownHistory = target.dataset.pending !== undefined;
  return !(event.ctrlKey || event.metaKey) || ownHistory;
}

/** Listens for the keys until the returned function is called. */
export function listenForKeys(store: AppStore, target: Window): () => void {
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || event.isComposing) return;
    if (event.target instanceof HTMLElement && event.target.closest('dialog')) return;
    if (isWriting(event.target, event) && !withCtrl(event, 's', false)) return;
    const shortcut = shortcuts.find(({ matches }) => matches(event));
    if (!shortcut) return;
    event.preventDefault();
    shortcut.run(store);
  };
  target.addEventListener('keydown', onKeyDown);
  return () => target.removeEventListener('keydown', onKeyDown);
}
