import type { KeyboardEvent, ReactNode } from 'react';
import type { Layout } from './layout';
import type { Block } from './strips';

/** What the board and its lanes are drawn from, and what they tell. */
export interface BoardProps {
  readonly layout: Layout;
  readonly name: string;
  /** A length as written on the board, and with its unit. */
  readonly format: (mm: number) => string;
  readonly full: (mm: number) => string;
  /** The mark that the keyboard reaches first. */
  readonly current: string | null;
  readonly selected: string | null;
  readonly picked: Block | undefined;
  readonly onSteer: (event: KeyboardEvent) => void;
  readonly onHold: (stroke: string) => void;
  readonly onPoint: (stroke: string | null) => void;
  readonly onPick: (mark: string) => void;
  /** What is drawn over the lanes: openings, joins, bays. */
  readonly children?: ReactNode;
}
