interface Props<T extends string> {
  readonly legend: string;
  /** Sets this choice apart from the others on the page. */
  readonly name: string;
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly onValue: (value: T) => void;
}

/** One of a few, all of them in sight. */
export function Choice<T extends string>({ legend, name, value, options, onValue }: Props<T>) {
  return (
    <fieldset className="choice">
      <legend className="unseen">{legend}</legend>
      {options.map((option) => (
        <label key={option.value}>
          <input type="radio" name={name} checked={value === option.value} onChange={() => onValue(option.value)} />
          <span>{option.label}</span>
        </label>
      ))}
    </fieldset>
  );
}
