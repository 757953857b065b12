import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { rooms } from '../../src/elements/index.ts';
import { newJob } from '../../src/job/start.ts';
import { writeJob } from '../../src/job/write.ts';
import { edited } from './loose.ts';
import { schemaFile, schemaText } from './schema-text.ts';

const committed = readFileSync(schemaFile, 'utf8');

describe('public/job.schema.json', () => {
  it('is what the fields give (npm run schema)', () => {
    expect(committed).toBe(schemaText());
  });

  it('says title, unit, range and default of a decision', () => {
    const schema = JSON.parse(committed);
    const { unit } = schema.properties;
    expect(unit.properties.height).toEqual({
      title: 'Height',
      description: 'Millimetres. From the finished floor to the upper face of the top.',
      type: 'number',
      minimum: 300,
      maximum: 3000,
    });
    const { width } = unit.properties.elements.properties.pillar.properties;
    expect(width).toMatchObject({ title: 'Pillar width', minimum: 40, maximum: 400, default: 140 });
    expect(unit.required).toContain('height');
  });

  it('taken by itself, allows what the program writes and refuses what it refuses', () => {
    const outside = z.fromJSONSchema(JSON.parse(committed));
    const good = writeJob(newJob('Servery', rooms));
    const allowed = (text: string) => outside.safeParse(JSON.parse(text)).success;
    expect(allowed(good)).toBe(true);
    expect(allowed(edited(good, (job) => (job.unit.height = 'tall')))).toBe(false);
    expect(allowed(edited(good, (job) => (job.unit.height = 5)))).toBe(false);
    expect(allowed(edited(good, (job) => (job.unit.colour = 'green')))).toBe(false);
    expect(allowed(edited(good, (job) => delete job.tools))).toBe(false);
    expect(allowed(edited(good, (job) => delete job.unit.elements.pillar.width))).toBe(true);
    expect(allowed(edited(good, (job) => (job.unit.elements.pillar.flutes = 4)))).toBe(false);
  });
});
