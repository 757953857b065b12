import { describe, expect, it } from 'vitest';
import { elevationOf } from '../../src/drawings/elevation';
import { elevationSheet, runSheet } from '../../src/exports/sheets';
import { design, elevation, rodDrawing } from '../../src/flow';
import type { Job } from '../../src/vocabulary/job';
import { examples, workedExample } from '../tools/goldens';

const texts = (svg: string): string[] => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((found) => found[1]);
const sheetOf = (svg: string): string =>
  texts(svg)
    .find((text) => /^1:\d+ on /.test(text))!
    .replace(/.* on /, '');
const withJob = (name: string, change: (job: Job) => Job) => design(change(workedExample(name).job));

describe('the sheets of a job', () => {
  it('are numbered run by run, front before framing, whichever is asked for', () => {
    const worked = workedExample('corner-return');
    const numbers = worked.rod.runs.flatMap(({ id }) =>
      (['front', 'framing'] as const).map((kind) =>
        texts(elevationSheet(worked, id, kind, elevation)).find((text) => /^\d+ of \d+$/.test(text)),
      ),
    );
    expect(numbers).toEqual(['1 of 6', '2 of 6', '3 of 6', '4 of 6', '5 of 6', '6 of 6']);
    expect(texts(runSheet(worked, worked.rod.runs[1].id, rodDrawing))).toContain('2 of 3');
  });

  it('from behind are a set of their own, run by run', () => {
    const worked = workedExample('corner-return');
    const behind = (run: string): string[] =>
      texts(runSheet(worked, run, (made, one) => elevationOf(made, one, 'behind')));
    const ids = worked.rod.runs.map(({ id }) => id);
    expect(ids.map((id) => behind(id).find((text) => /^\d+ of \d+$/.test(text)))).toEqual([
      '1 of 3',
      '2 of 3',
      '3 of 3',
    ]);
    expect(behind('A')).toEqual(expect.arrayContaining(['Run A: from behind', 'A-DR1']));
    expect(() => behind('Q')).toThrow("run 'Q'");
  });

  it('name the maker as owner and creator, or leave the fields open', () => {
    const named = withJob('straight', (job) => ({ ...job, maker: { name: 'Larch & Son' } }));
    const count = (svg: string) => texts(svg).filter((text) => text === 'Larch &amp; Son').length;
    expect(count(elevationSheet(named, 'A', 'front', elevation))).toBe(2);
    const open = withJob('straight', (job) => ({ ...job, maker: { name: '' } }));
    expect(texts(elevationSheet(open, 'A', 'front', elevation))).not.toContain('');
  });

  it.each(examples())('of %s are all A4, or none is', (name) => {
    const worked = workedExample(name);
    const sheets = worked.rod.runs.flatMap(({ id }) =>
      (['front', 'framing'] as const).map((kind) => sheetOf(elevationSheet(worked, id, kind, elevation))),
    );
    const small = sheets.filter((sheet) => sheet === 'A4').length;
    expect([0, sheets.length]).toContain(small);
  });

  it('are A4 when all of them fit that', () => {
    const short = withJob('straight', (job) => ({
      ...job,
      unit: {
        ...job.unit,
        height: 700,
        plan: { ...job.unit.plan, runs: [{ ...job.unit.plan.runs[0], length: 1500 }] },
      },
    }));
    expect(sheetOf(elevationSheet(short, 'A', 'front', elevation))).toBe('A4');
    expect(sheetOf(elevationSheet(short, 'A', 'framing', elevation))).toBe('A4');
  });

  it('throw for a run that is not there', () => {
    expect(() => elevationSheet(workedExample('straight'), 'Q', 'front', elevation)).toThrow("run 'Q'");
  });
});
