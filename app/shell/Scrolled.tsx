import type { ReactNode } from 'react';

interface Props {
  /** What is in it, for who doesn't see it. */
  readonly label: string;
  readonly className?: string;
  readonly children: ReactNode;
}

/** A region that scrolls by itself, and can be reached by the keyboard for it. */
export const Scrolled = ({ label, className = 'parts-scroll', children }: Props) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by the keyboard
  <section className={className} aria-label={label} tabIndex={0}>
    {children}
  </section>
);
