import type { Design } from '../../src/vocabulary/design';
import type { RodRun } from '../../src/vocabulary/rod';
import type { Thing } from '../store/view';
import type { Layout } from './layout';

/** What is needed to draw the things of one run on its board. */
export interface ThingProps {
  readonly made: Design;
  readonly run: RodRun;
  readonly layout: Layout;
  readonly inHand: Thing | null;
  readonly full: (mm: number) => string;
}

/** The classes of a thing, by whether it has its place and is in hand. */
export const classOf = (base: string, refused: boolean, inHand: boolean): string =>
  [base, refused ? 'rod-refused' : '', inHand ? 'rod-in-hand' : ''].filter(Boolean).join(' ');
