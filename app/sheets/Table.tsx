import type { ReactNode } from 'react';
import type { Heading } from './columns';

interface Props {
  readonly headings: readonly Heading[];
  readonly children: ReactNode;
  /** What it lists, where several stand on a sheet. */
  readonly label?: string;
}

/** A ruled table under its headings. */
export function Table({ headings, children, label }: Props) {
  return (
    <table aria-label={label}>
      <thead>
        <tr>
          {headings.map(({ title, full, number }) => (
            <th key={title} scope="col" className={number ? 'number' : undefined} abbr={full} title={full}>
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>{children}</tbody>
    </table>
  );
}
