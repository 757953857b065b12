import type { BuildStage } from '../../src/vocabulary/part';

/** Where to look from; `room`: as somebody in the room sees it; `fit` keeps the direction and brings the whole unit into view. */
export type Look = 'room' | 'fit' | 'front' | 'behind' | 'plan' | 'left' | 'right';

export type Pane = 'unit' | 'assembly' | 'parts' | 'cutting';

/** Which of the lists is in the middle. */
export type ListName = 'parts' | 'fixings' | 'spacers' | 'maps' | 'site';

/** What is in hand on the rod besides a part: an opening or a join by hand, by its place in the job's list; a bay, by the job's numbers. */
export type Thing =
  | { readonly kind: 'opening'; readonly index: number }
  | { readonly kind: 'join'; readonly index: number }
  | { readonly kind: 'bay'; readonly run: number; readonly bay: number };

export const sameThing = (a: Thing | null, b: Thing | null): boolean => JSON.stringify(a) === JSON.stringify(b);

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
  readonly thing: Thing | null;
  /** How far the sections are drawn apart, 0 to 1. */
  readonly apart: number;
  /** Whether what is fitted on site is told apart by its colour. */
  readonly siteShown: boolean;
  /** The step of the assembly that is looked at, 0 the first. */
  readonly step: number;
  /** What fills the middle: the unit itself, how it is put together, the lists, or how its stuff is cut. */
  readonly pane: Pane;
  readonly list: ListName;
  /** Whether the rod under each of them is folded away. */
  readonly rodFolded: Readonly<Record<Pane, boolean>>;
}

/** Nothing is seen of the unit: the lists stand before it, or its cutting, unless a part is picked out there. */
export const isUnitAway = ({ pane, selected }: Pick<View, 'pane' | 'selected'>): boolean =>
  pane === 'parts' || (pane === 'cutting' && selected === null);

export const firstView: View = {
  mode: 'finished',
  selected: null,
  run: '',
  camera: { request: null, serial: 0 },
  showDimensions: true,
  thing: null,
  apart: 0,
  siteShown: false,
  step: 0,
  pane: 'unit',
  list: 'parts',
  // A list wants the room, and so do the assembly and the sheets.
  rodFolded: { unit: false, assembly: true, parts: true, cutting: true },
};

/** Something to tell the user; `lines` are the single points, each with its path where it has one. */
export interface Notice {
  readonly tone: 'info' | 'trouble';
  readonly text: string;
  readonly lines?: readonly string[];
}
