import type { Backing, RunFraming } from './backing';
import type { Cutter, StockItem } from './book';
import type { DecisionsOf, Fields } from './field';
import type { Finding } from './finding';
import type { Obstacle, PlacedOpening } from './opening';
import type { Part, PartDraft } from './part';
import type { Demands, Mark, Rod, RodRun } from './rod';

/** Looks things up in the job's stock book. Throws when the id is unknown: a job that passed the schema has none. */
export interface Book {
  item<K extends StockItem['kind']>(kind: K, id: string): Extract<StockItem, { kind: K }>;
  cutter(id: string): Cutter | undefined;
}

/** All that a room may look at when it makes its parts. */
export interface Bench {
  readonly rod: Rod;
  readonly framing: readonly RunFraming[];
  readonly book: Book;
  /** The openings that have their place; a room cuts those that come through its own parts. */
  readonly openings: readonly PlacedOpening[];
}

/** What a room hands over. A thing that can't be made is left out and said in a finding; nothing is clamped. */
export interface Made {
  readonly drafts: readonly PartDraft[];
  readonly findings: readonly Finding[];
}

/** One kind of thing that is made. A room knows only its own decisions, the rod, the framing and the stock book. */
export interface Room<S extends Fields = Fields> {
  readonly kind: string;
  readonly label: string;
  /** Where its form stands among the decisions. */
  readonly group: 'front' | 'frame' | 'behind' | 'top';
  readonly fields: S;
  /** What its decisions mean for the setting-out. */
  demands(decisions: DecisionsOf<S>, book: Book): Demands;
  /** What an opening must not meet. */
  obstacles?(decisions: DecisionsOf<S>, bench: Pick<Bench, 'rod' | 'book'>): readonly Obstacle[];
  /** Where it needs timber behind it. */
  backing(decisions: DecisionsOf<S>, bench: Pick<Bench, 'rod' | 'book' | 'openings'>): readonly Backing[];
  /**
   * Whether its obstacles, its backing or its parts may be others where the unit is joined. What looks at the framing, or at the openings for its
   * backing, does mind. Where none of it does, what it said of the unit in one piece stands for the unit as it is parted, as long as
   * openings keep their places. Not given: it minds.
   */
  mindsJoins?(decisions: DecisionsOf<S>, rod: Rod): boolean;
  /** The things to make. */
  parts(decisions: DecisionsOf<S>, bench: Bench): Made;
  /** The layer it makes, to which sizes can be taken; none where it makes no layer of the front. */
  readonly layer?: string;
  /** Its marks on the rod of one run, from its own parts there. */
  marks(run: RodRun, parts: readonly Part[]): readonly Mark[];
}
