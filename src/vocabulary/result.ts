/** What is wrong with a foreign file, at its path (`/unit/plan/runs/0/length`). */
export interface Issue {
  readonly path: string;
  readonly message: string;
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly Issue[] };
