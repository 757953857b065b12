import type { BuildStage } from '../../src/vocabulary/part';

/** Where to look from; `room`: as somebody in the room sees it; `fit` keeps the direction and brings the whole unit into view. */
export type Look = 'room' | 'fit' | 'front' | 'plan' | 'left' | 'right';

export type Pane = 'unit' | 'parts';

/** Whether the browser has the job as it stands: not asked yet, on its way, safe, or refused. */
export type Keeping = 'untouched' | 'keeping' | 'kept' | 'failed';

/** How the work is looked at. Never saved, never undone. */
export interface View {
  readonly mode: BuildStage;
  /** Mark of the part that is picked out. */
  readonly selected: string | null;
  /** Run on the rod; '' until one has been chosen (then the first run is shown). */
  readonly run: string;
  /** A new serial asks the camera to move, even to where it was asked to go before. */
  readonly camera: { readonly request: Look | null; readonly serial: number };
  readonly showDimensions: boolean;
  /** What fills the middle: the unit itself, or the list of its parts. */
  readonly pane: Pane;
  /** Whether the rod under each of them is folded away. */
  readonly rodFolded: Readonly<Record<Pane, boolean>>;
}

export const firstView: View = {
  mode: 'finished',
  selected: null,
  run: '',
  camera: { request: null, serial: 0 },
  showDimensions: true,
  pane: 'unit',
  // A list wants the room.
  rodFolded: { unit: false, parts: true },
};

/** Something to tell the user; `lines` are the single points, each with its path where it has one. */
export interface Notice {
  readonly tone: 'info' | 'trouble';
  readonly text: string;
  readonly lines?: readonly string[];
}
