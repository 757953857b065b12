import { join } from 'node:path';
import { rooms } from '../../src/elements/index.ts';
import { jobJsonSchema } from '../../src/job/json-schema.ts';

export const schemaFile = join(import.meta.dirname, '..', '..', 'public', 'job.schema.json');

/** What public/job.schema.json should hold. */
export function schemaText(): string {
  return `${JSON.stringify(jobJsonSchema(rooms), null, 2)}\n`;
}
