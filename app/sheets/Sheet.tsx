import { type ReactNode, useId } from 'react';

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
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by the keyboard */}
      <section className="parts-scroll" aria-label={`Rows: ${title}`} tabIndex={0}>
        {children}
      </section>
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
