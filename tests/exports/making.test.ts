import { describe, expect, it } from 'vitest';
import {
  assemblyCsv,
  fixingsCsv,
  makingJson,
  mapCsv,
  partFixingsCsv,
  sectionsCsv,
  siteCsv,
  siteRows,
  spacersCsv,
} from '../../src/exports/making';
import { design, making } from '../../src/flow';
import { jobOf } from '../elements/job-of';

const made = design(
  jobOf({
    runs: [{ length: 3600 }],
    leftEnd: { kind: 'wall', wall: 'Left wall' },
    joins: { by: 'least' },
    carry: { vanLength: 2400 },
    fit: { scribe: 15 },
    survey: {
      walls: [{ name: 'Left wall', directionDeg: 91, leanDeg: 0.5, skirtingHeight: 120, skirtingThickness: 18 }],
      levels: [
        { run: 1, along: 0, height: 0 },
        { run: 1, along: 3600, height: -9 },
      ],
    },
  }),
);
const worked = making(made);

/** Rows of a table without quoted line ends, the head first; quotes and commas within cells left as they are. */
const rows = (csv: string): readonly string[] => csv.replace('\ufeff', '').trimEnd().split('\r\n');

describe('the tables of the making', () => {
  it.each([
    ['sections', sectionsCsv(made), made.sections.length],
    ['fixings', fixingsCsv(worked.fixings), worked.fixings.totals.length],
    ['fixings of each part', partFixingsCsv(worked.fixings), worked.fixings.parts.length],
    ['spacers', spacersCsv(worked.spacers, made.job), worked.spacers.length],
    ['assembly', assemblyCsv(worked.steps), worked.steps.length],
    ['map', mapCsv(worked.maps, made.job), worked.maps[0].timber.length],
    ['site', siteCsv(worked, made.job), siteRows(worked.site).length],
  ])('of %s has a row for each', (_, csv, count) => {
    expect(count).toBeGreaterThan(1);
    expect(rows(csv)).toHaveLength(count + 1);
    expect(csv).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('round lengths once, to the job’s step', () => {
    const [, first] = rows(mapCsv(worked.maps, made.job)).slice(1);
    expect(first).toMatch(/^A,left end of the frame,0,/);
    const coarse = { ...made.job, tools: { ...made.job.tools, roundingStep: 0.5 } };
    const numbers = rows(mapCsv(worked.maps, coarse))
      .slice(1)
      .flatMap((row) => row.split(',').slice(2, 6).map(Number));
    expect(numbers.every((value) => Number.isInteger(value * 2))).toBe(true);
  });

  it('of sections say what is carried and which rule is broken', () => {
    const [head, first] = rows(sectionsCsv(made));
    expect(head).toContain('section,pieces of runs mm,parts,length mm');
    expect(first).toMatch(/^S1,A 0 to /);
    const tight = { ...made, sections: made.sections.map((s) => ({ ...s, breaches: [] })) };
    expect(rows(sectionsCsv(tight))[1]).toMatch(/,$/);
  });

  it('of the site keep packers, scribes and notches apart', () => {
    const what = rows(siteCsv(worked, made.job))
      .slice(1)
      .map((row) => row.split(',')[0]);
    expect(new Set(what)).toEqual(new Set(['packer', 'scribe', 'notch']));
    expect(what).toHaveLength(worked.site.packers.length + worked.site.scribes.length + worked.site.notches.length);
  });

  it('leave packs open where the stock book has nothing', () => {
    const line = { name: 'Screw', unit: 'pieces' as const, amount: 3, spare: 1, packs: 0, rules: ['a rule'] };
    expect(rows(fixingsCsv({ totals: [line], parts: [] }))[1]).toBe('Screw,pieces,3,1,,no,a rule');
  });

  it('are JSON as well', () => {
    const read = JSON.parse(makingJson(made.job, { site: worked.site }));
    expect(read).toEqual({ job: 'test', units: 'mm', site: JSON.parse(JSON.stringify(worked.site)) });
  });
});
