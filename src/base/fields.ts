import type {
  ChoiceField,
  CountField,
  Decision,
  DecisionsOf,
  Fields,
  LengthField,
  LengthsField,
  NumberField,
  StockField,
  SwitchField,
} from '../vocabulary/field';

type Bare<F> = Omit<F, 'kind'>;

/** A length in mm. */
export const length = (f: Bare<LengthField>): LengthField => ({ kind: 'length', ...f });
export const number = (f: Bare<NumberField>): NumberField => ({ kind: 'number', ...f });
export const count = (f: Bare<CountField>): CountField => ({ kind: 'count', ...f });
export const choice = <const T extends string>(f: Bare<ChoiceField<T>>): ChoiceField<T> => ({ kind: 'choice', ...f });
export const yesNo = (f: Bare<SwitchField>): SwitchField => ({ kind: 'switch', ...f });
export const stock = (f: Bare<StockField>): StockField => ({ kind: 'stock', ...f });
export const lengths = (f: Bare<LengthsField>): LengthsField => ({ kind: 'lengths', ...f });

/** The decisions a joiner starts from: each field's default. */
export function defaultsOf<S extends Fields>(fields: S): DecisionsOf<S> {
  const out: Record<string, Decision> = {};
  for (const [key, field] of Object.entries(fields)) out[key] = field.default;
  return out as DecisionsOf<S>;
}
