import type { ReactNode } from 'react';

/** Marks of the drawing that are seen and not read out: what they say is said elsewhere. Nothing in it takes the focus. */
export function Unread({ className, children }: { readonly className?: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in such a group takes the focus
    <g className={className} aria-hidden="true">
      {children}
    </g>
  );
}
