/** Why something can't be put where it was put. */
export interface Refusal {
  readonly why:
    | 'overlap'
    | 'off the stock'
    | 'grain'
    | 'turn'
    | 'no cut through'
    | 'too long a cut'
    | 'too many stages'
    | 'set'
    | 'cut already'
    | 'no stock left';
  /** In words, with what is in the way. */
  readonly words: string;
}

/** A new plan, or why there is none. */
export type Answer<Plan> =
  | { readonly plan: Plan; readonly refused?: undefined }
  | { readonly plan?: undefined; readonly refused: Refusal };

export const refuse = (why: Refusal['why'], words: string): { readonly refused: Refusal } => ({
  refused: { why, words },
});
