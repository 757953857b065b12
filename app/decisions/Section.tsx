import type { ReactNode } from 'react';

interface Props {
  readonly title: string;
  /** Begins folded away: what is decided once in a long time. */
  readonly folded?: boolean;
  readonly children: ReactNode;
}

/** One step of the decisions, which can be folded away. */
export function Section({ title, folded, children }: Props) {
  return (
    <details className="section" open={!folded}>
      <summary>
        <h3>{title}</h3>
      </summary>
      <div className="section-body">{children}</div>
    </details>
  );
}
