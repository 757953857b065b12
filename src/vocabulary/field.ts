interface Common {
  readonly label: string;
  readonly help: string;
  /** Shown only when another field of the same group has one of these values. */
  readonly when?: { readonly field: string; readonly is: readonly (string | number | boolean)[] };
}

/** A length in millimetres. */
export interface LengthField extends Common {
  readonly kind: 'length';
  readonly min: number;
  readonly max: number;
  readonly default: number;
}

/** A number in the unit named. */
export interface NumberField extends Common {
  readonly kind: 'number';
  readonly unit: 'deg' | 'kg/m³' | 'pence' | 'ratio' | 'kg';
  readonly min: number;
  readonly max: number;
  readonly default: number;
}

/** A whole number; odd only when `odd`. Zero is always allowed when `min` is 0. */
export interface CountField extends Common {
  readonly kind: 'count';
  readonly min: number;
  readonly max: number;
  readonly default: number;
  readonly odd?: boolean;
}

/** One of a few words. */
export interface ChoiceField<T extends string = string> extends Common {
  readonly kind: 'choice';
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly default: T;
}

/** Yes or no. */
export interface SwitchField extends Common {
  readonly kind: 'switch';
  readonly default: boolean;
}

/** A choice among the stock book's items of one kind, or among the cutters; '' means none where `optional`. */
export interface StockField extends Common {
  readonly kind: 'stock';
  readonly of: 'sheet' | 'timber' | 'moulding' | 'hardwood' | 'cutter';
  readonly default: string;
  readonly optional?: boolean;
}

/** A list of heights in millimetres, rising. */
export interface LengthsField extends Common {
  readonly kind: 'lengths';
  readonly min: number;
  readonly max: number;
  readonly maxItems: number;
  readonly default: readonly number[];
}

export type Field = LengthField | NumberField | CountField | ChoiceField | SwitchField | StockField | LengthsField;

/** The decisions of one group, each a field: unit, range, default and words in one place. Form, schema and docs come from it. */
export type Fields = Readonly<Record<string, Field>>;

type ValueOf<F extends Field> =
  F extends ChoiceField<infer T>
    ? T
    : F extends SwitchField
      ? boolean
      : F extends StockField
        ? string
        : F extends LengthsField
          ? readonly number[]
          : number;

/** The plain data that a group of fields describes. */
export type DecisionsOf<S extends Fields> = { readonly [K in keyof S]: ValueOf<S[K]> };

/** What a decision may hold. */
export type Decision = string | number | boolean | readonly number[];
