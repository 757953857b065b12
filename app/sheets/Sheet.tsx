import { type ReactNode, useId } from 'react';
import { Scrolled } from '../shell/Scrolled';

interface Props {
  readonly title: string;
  /** A line beside the title. */
  readonly told: string;
  readonly children: ReactNode;
}

/** A list with its heading; its rows scroll. */
export function Sheet({ title, told, children }: Props) {
  const id = useId();
  return (
    <section className="parts" aria-labelledby={id}>
      <div className="parts-head">
        <h2 id={id}>{title}</h2>
        <p>{told}</p>
      </div>
      <Scrolled label={`Rows: ${title}`}>{children}</Scrolled>
    </section>
  );
}

/** A mark of a part in a list, by which it is picked out. */
export function MarkButton({
  mark,
  picked,
  onPick,
}: {
  mark: string;
  picked: boolean;
  onPick: (mark: string) => void;
}) {
  return (
    <button type="button" aria-pressed={picked} onClick={() => onPick(mark)}>
      {mark}
    </button>
  );
}
