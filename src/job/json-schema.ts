import { z } from 'zod';
import { makeSchema, type RoomWords } from './schema';

/**
 * The job file's shape as JSON Schema (draft 2020-12), for editors and other programs: titles, units, ranges and help from the
 * same fields as the form. What one part of a file asks of another can't be said in it and is checked on reading.
 */
export function jobJsonSchema(rooms: readonly RoomWords[]): Record<string, unknown> {
  const schema = z.toJSONSchema(makeSchema(rooms), { io: 'input', target: 'draft-2020-12', reused: 'inline' });
  const { $schema, ...rest } = schema as Record<string, unknown>;
  return {
    $schema,
    title: 'Counterwright job',
    description: 'All that a joiner decides about one unit. Lengths in millimetres.',
    ...rest,
  };
}
