import { getAt } from '../../src/job/path';
import { useApp } from '../store/hooks';
import { decide } from './decide';
import { TextInput } from './inputs';
import { Section } from './Section';

/** Greatest lengths as in the job file's schema. */
const lines: readonly {
  readonly label: string;
  readonly path: string;
  readonly most: number;
  readonly rows?: number;
}[] = [
  { label: 'Job name', path: '/name', most: 200 },
  { label: 'Unit name', path: '/unit/name', most: 200 },
  { label: 'Made by', path: '/maker/name', most: 200 },
  { label: 'Client', path: '/client/name', most: 200 },
  { label: 'Contact', path: '/client/contact', most: 1000, rows: 2 },
  { label: 'Site address', path: '/site/address', most: 1000, rows: 2 },
  { label: 'Site notes', path: '/site/notes', most: 20_000, rows: 3 },
];

/** Whose job it is, and where. */
export function JobForm() {
  const job = useApp((state) => state.document);
  return (
    <Section title="Job and client">
      {lines.map(({ label, path, most, rows }) => (
        <TextInput
          key={path}
          label={label}
          most={most}
          rows={rows}
          value={String(getAt(job, path) ?? '')}
          onValue={(text) => decide(label, path, text)}
        />
      ))}
    </Section>
  );
}
