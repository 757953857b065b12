import type { ReactNode } from 'react';

/** One step of the decisions, which can be folded away. */
export function Section({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <details className="section" open>
      <summary>
        <h3>{title}</h3>
      </summary>
      <div className="section-body">{children}</div>
    </details>
  );
}
