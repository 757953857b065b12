import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { design, making, newJob } from '../../src/flow';
import { contactsOf } from '../../src/making/contacts';
import type { Batch } from '../../src/making/order';
import { groupsOf, putOn } from '../../src/making/order';
import { afterWhatTheyStandOn, standsOn } from '../../src/making/stands';
import { basesOf, contentsOf, listOf, plural, puttingOn, verbOf } from '../../src/making/step-words';
import { touchingOf } from '../../src/making/touching';
import type { Design } from '../../src/vocabulary/design';
import type { Job } from '../../src/vocabulary/job';
import { boundsInRoom } from '../base/bounds';
import { SEED } from '../base/seed';
import { behindJob } from '../elements/behind-job';
import { jobOf } from '../elements/job-of';
import { anyJob } from '../properties/random-job';
import { block } from './parts';

/** Two plates with two studs between, a noggin between the studs, and a sheet on them. */
const lower = block('PL1', [0, 0, 0], [400, 63, 38], { code: 'PL', name: 'plate' });
const upper = block('PL2', [0, 0, 538], [400, 63, 38], { code: 'PL', name: 'plate' });
const studs = [0, 362].map((x, i) => block(`ST${i + 1}`, [x, 0, 38], [38, 63, 500], { code: 'ST', name: 'stud' }));
const noggin = block('NG1', [38, 0, 200], [324, 63, 38], { code: 'NG', name: 'noggin' });
const sheet = block('CL1', [0, -12, 10], [400, 12, 560], { kind: 'skin', code: 'CL', name: 'cladding', from: 'clad' });
const ALL = [lower, upper, ...studs, noggin, sheet];
const marks = (batches: readonly (readonly { readonly mark: string }[])[]): readonly string[] =>
  batches.map((batch) => batch.map((p) => p.mark).join(' '));

describe('the order in which parts go on', () => {
  it('is that of what was framed first, then kind by kind, each kind by its codes', () => {
    expect(marks(groupsOf([...ALL].reverse(), ALL).map((group) => [...group].reverse()))).toEqual([
      'PL1 PL2',
      'ST1 ST2',
      'NG1',
      'CL1',
    ]);
  });

  it('has plates go on with their studs, since the upper one hangs on nothing before', () => {
    const { batches, loose } = putOn(groupsOf(ALL, ALL), new Set(), touchingOf(contactsOf(ALL)));
    expect(marks(batches)).toEqual(['PL1 PL2 ST1 ST2', 'NG1', 'CL1']);
    expect(loose).toEqual([]);
  });

  it('lets a part wait that touches nothing, until something carries it', () => {
    const far = block('XX1', [900, 0, 300], [100, 63, 38], { code: 'AA', name: 'block' });
    const bridge = block('BR1', [400, 0, 300], [500, 63, 38], {
      kind: 'skin',
      code: 'ZZ',
      name: 'bridge',
      from: 'clad',
    });
    const parts = [far, ...ALL, bridge];
    const { batches, loose } = putOn(groupsOf(parts, parts), new Set(['PL1']), touchingOf(contactsOf(parts)));
    expect(loose).toEqual([]);
    // The bridge touches the frame; the block touches the bridge alone.
    expect(marks(batches).at(-1)?.split(' ').sort()).toEqual(['BR1', 'XX1']);
    const alone = putOn([[far]], new Set(['PL1']), touchingOf(contactsOf(parts)));
    expect(marks([alone.loose])).toEqual(['XX1']);
  });
});

describe('what stands on another', () => {
  const put = (mark: string, z: number, kind: string) =>
    block(mark, [0, -30, z], [100, 18, 100], { kind, code: mark.slice(0, 2), from: 'finished' });
  const [board, base, stone] = [put('PI1', 200, 'pillar'), put('PS1', 100, 'pillar'), put('BK1', 0, 'plinth')];
  const ordered = (...groups: (typeof board)[][]) =>
    marks(afterWhatTheyStandOn(groups, touchingOf(contactsOf(groups.flat()))));

  it('comes after it, whatever the order of kinds', () => {
    expect(ordered([board], [base], [stone])).toEqual(['BK1', 'PS1', 'PI1']);
    expect(ordered([stone], [base], [board])).toEqual(['BK1', 'PS1', 'PI1']);
  });

  it('and where two groups stand on one another in turn the order stays', () => {
    const high = put('BK2', 300, 'plinth');
    expect(ordered([board], [stone, high], [base])).toEqual(['PI1', 'BK1 BK2', 'PS1']);
  });
});

const BOOK = newJob('any').stock.fixings;
const verb = (batch: Batch): string => verbOf(batch, BOOK);
const putting = (batch: Batch, bases: (some: Batch) => string): string => puttingOn(batch, bases, BOOK);

describe('the words of a step', () => {
  it('count things as one speaks', () => {
    expect(['stud', 'shelf', 'skirting', 'batch', 'bearer'].map(plural)).toEqual([
      'studs',
      'shelves',
      'pieces of skirting',
      'batches',
      'bearers',
    ]);
    expect(listOf(['a', 'b', 'c'])).toBe('a, b and c');
    expect(contentsOf([lower, upper, studs[0]])).toBe('2 plates and 1 stud');
  });

  it('say how most of them are held', () => {
    const held = (by: 'screw' | 'brad', glue?: 'pva') =>
      block('X', [0, 0, 0], [10, 10, 10], {
        holds: [{ by, through: 5, where: { at: 'all', each: 1 }, rule: '', ...(glue ? { glue } : {}) }],
      });
    expect(verb([held('screw', 'pva'), held('screw', 'pva'), held('brad')])).toBe('glue and screw');
    expect(verb([held('brad')])).toBe('pin');
    // 2.5 × 26 = 65: longer than any pin, so the fixings say a screw, and so do the steps.
    const thick = held('brad');
    const [pin] = thick.holds ?? [];
    const stout: Batch = [{ ...thick, holds: [{ ...pin, through: 26 }] }];
    expect(verb(stout)).toBe('screw');
    expect(verbOf(stout, [...BOOK, { ...BOOK[0], kind: 'brad', length: 65 }])).toBe('pin');
    expect(verb([lower])).toBe('fix');
    const [screw] = held('screw').holds ?? [];
    // A post that is bolted to the next section's is screwed on the bench.
    expect(verb([block('X', [0, 0, 0], [10, 10, 10], { holds: [screw, { ...screw, by: 'bolt' }] })])).toBe('screw');
    expect(verb([block('X', [0, 0, 0], [10, 10, 10], { holds: [{ ...screw, by: 'bolt' }] })])).toBe('bolt');
  });

  it('hang what has hinges, when the rest is on', () => {
    const hinged = block('LF1', [0, 0, 0], [10, 10, 10], {
      name: 'flap',
      hardware: [{ what: 'counter flap hinge', count: 2 }],
      holds: [{ by: 'screw', through: 2, where: { at: 'all', each: 12 }, rule: '' }],
    });
    const bases = () => ' to the jamb';
    expect(putting([hinged], bases)).toBe('hang 1 flap on its hinges');
    expect(putting([hinged, hinged], bases)).toBe('hang 2 flaps on their hinges');
    expect(putting([hinged, lower], bases)).toBe('fix 1 plate to the jamb; hang 1 flap on its hinges');
  });

  it('lay what nothing fixes on its supports', () => {
    const loose = block('SH1', [0, 0, 0], [10, 10, 10], {
      name: 'shelf',
      hardware: [{ what: 'shelf pin', count: 4 }],
      holds: [{ by: 'dowel', through: 0, where: { at: 'all', each: 0 }, rule: '' }],
    });
    expect(putting([loose, loose], () => ' to the lining')).toBe('lay 2 shelves on their supports');
    expect(putting([loose, lower], () => ' to the lining')).toBe(
      'fix 1 plate to the lining; lay 1 shelf on its supports',
    );
  });

  it('screw the front of a drawer to its box, not to what it lies before', () => {
    const front = block('DF1', [0, 0, 0], [10, 10, 10], {
      name: 'drawer front',
      hardware: [{ what: 'pair of drawer runners, at most 450 mm', count: 1 }],
      holds: [{ by: 'screw', through: 15, where: { at: 'all', each: 4 }, rule: '' }],
    });
    expect(putting([front], () => ' to the posts')).toBe('screw 1 drawer front to its box');
    expect(putting([front, front], () => ' to the posts')).toBe('screw 2 drawer fronts to their boxes');
  });

  it('name what it is put on, the commonest first, and nothing where there is nothing yet', () => {
    const touching = touchingOf(contactsOf(ALL));
    const by = new Map(ALL.map((p) => [p.mark, p]));
    const to = (part: (typeof ALL)[number], before: readonly string[]): string =>
      basesOf([part], new Set(before), by, touching);
    expect(to(noggin, ['PL1', 'PL2', 'ST1', 'ST2'])).toBe(' to the studs');
    expect(to(noggin, ['ST1'])).toBe(' to the stud');
    expect(to(sheet, ['PL1', 'PL2', 'ST1', 'ST2'])).toBe(' to the plates and studs');
    expect(to(studs[0], ['CL1'])).toBe(' to the cladding');
    expect(to(lower, [])).toBe('');
  });
});

describe('the steps of a counter in two sections', () => {
  const made = design(jobOf({ runs: [{ length: 3600 }], joins: { by: 'least' }, carry: { vanLength: 2400 } }));
  const { steps } = making(made);

  it('go from the bench by the dry fit to the site, numbered through', () => {
    expect(steps.map((s) => s.number)).toEqual(steps.map((_, i) => i + 1));
    const places = steps.map((s) => s.place);
    expect([...places].sort((a, b) => RANK.indexOf(a) - RANK.indexOf(b))).toEqual(places);
    expect(new Set(places)).toEqual(new Set(RANK));
  });

  it('begin each section with plates and studs on the bench', () => {
    expect(made.sections.length).toBeGreaterThan(1);
    for (const { id } of made.sections) {
      const [first] = steps.filter((s) => s.section === id);
      expect(first.what).toMatch(/^Glue and screw 2 plates and \d+ studs together on the bench;/);
      expect(first.place).toBe('workshop');
    }
  });

  it('bring the sections together at each join and bolt them on site', () => {
    for (const { id, bolts } of made.joins) {
      expect(steps.filter((s) => s.place === 'dry fit' && s.what.includes(id))).toHaveLength(1);
      const [drawn] = steps.filter((s) => s.place === 'site' && s.what.includes(id));
      expect(drawn.what).toContain(`with ${bolts.length} bolts`);
    }
  });

  it('bolt the rear posts at the join with it: bored at the dry fit, drawn up on site, bought once', () => {
    const behind = design(
      jobOf({
        runs: [{ length: 3600 }],
        joins: { by: 'least' },
        carry: { vanLength: 2400 },
        elements: { carcass: { build: true } },
        fit: { bolts: [150, 500, 850] },
      }),
    );
    expect(behind.joins).toHaveLength(1);
    const { steps: told, fixings } = making(behind);
    const says = (place: string) => told.filter((s) => s.place === place).map((s) => s.what);
    expect(says('dry fit')[0]).toMatch(
      /bore through both studs for 3 bolts, 150, 500 and 850 above the floor, and for 2 through the rear posts\.$/,
    );
    expect(says('site')).toContain(
      'Draw S1 and S2 together at J1 with 3 bolts and 2 through the rear posts, faces flush.',
    );
    // 3 through the studs and 2 through the posts.
    expect(fixings.totals.find((line) => line.item === 'bolt-m8x90')?.amount).toBe(5);
  });

  it('are packed up together, one by itself', () => {
    const set = (made: Design) => making(made).steps.find((s) => s.what.startsWith('Set '))?.what;
    const levels = [{ run: 1, along: 0, height: 0 }];
    const said = { runs: [{ length: 3600 }], carry: { vanLength: 2400 }, survey: { levels } };
    expect(set(design(jobOf({ ...said, joins: { by: 'least' } })))).toMatch(/^Set S1 and S2 in place, pack them up/);
    expect(set(design(jobOf(said)))).toMatch(/^Set S1 in place, pack it up/);
  });

  it('leave what is fitted on site for the site, the top after the front', () => {
    const onSite = new Set(steps.filter((s) => s.place === 'site').flatMap((s) => s.parts));
    expect([...onSite].sort()).toEqual(
      made.parts
        .filter((p) => p.fitted === 'site')
        .map((p) => p.mark)
        .sort(),
    );
    const names = steps.filter((s) => s.place === 'site' && s.parts.length > 0).map((s) => s.what);
    expect(names.at(-1)).toMatch(/top/);
  });
});

const RANK = ['workshop', 'dry fit', 'site'];
const COUNT = 30;

/** What must hold of the steps of any job; complaints in words. */
function faultsOf(made: Design): readonly string[] {
  const { steps, contacts } = making(made);
  const touching = touchingOf(contacts);
  const at = new Map<string, number>();
  const faults: string[] = [];
  for (const step of steps)
    for (const mark of step.parts) {
      if (at.has(mark)) faults.push(`${mark} is in two steps`);
      at.set(mark, step.number);
    }
  const firsts = new Set(made.sections.map(({ id }) => steps.find((s) => s.section === id)?.parts[0]));
  for (const part of made.parts) {
    const step = at.get(part.mark);
    if (step === undefined) faults.push(`${part.mark} is in no step`);
    const held = (touching.get(part.mark) ?? []).some((other) => (at.get(other) ?? Infinity) <= (step ?? 0));
    if (!held && !firsts.has(part.mark) && boundsInRoom(part).min[2] > 0.5)
      faults.push(`${part.mark} hangs in the air`);
    const told = steps.find((s) => s.number === step);
    for (const other of touching.get(part.mark) ?? []) {
      const [base, its] = [made.parts.find((p) => p.mark === other), steps.find((s) => s.number === at.get(other))];
      if (base && standsOn(part, base) && its?.place === told?.place && (its?.number ?? 0) > (step ?? 0))
        faults.push(`${part.mark} comes before ${other}, on which it stands`);
    }
    if (told?.place === 'workshop' && (part.fitted !== 'workshop' || part.inSection !== told.section))
      faults.push(`${part.mark} is put on in the wrong place`);
  }
  return [...faults, ...steps.filter((s) => !/^[A-Z].*\.$/.test(s.what)).map((s) => `no sentence: ${s.what}`)];
}

describe(`the steps of ${COUNT} random jobs, every other one in sections (seed ${SEED})`, () => {
  it('have every part once, none before what it is fixed to', { timeout: 300_000 }, () => {
    const jobs = fc.sample(anyJob, { numRuns: COUNT, seed: SEED });
    const wrong = jobs.flatMap((job, i) => {
      const other: Job = i % 2 ? { ...job, unit: { ...job.unit, joins: { by: 'least' } } } : job;
      return faultsOf(design(other)).map((fault) => `job ${i}: ${fault}`);
    });
    expect(wrong).toEqual([]);
  });
});

describe('what is bought goes in last', () => {
  const last = (bays: Parameters<typeof behindJob>[0]) => making(design(behindJob(bays))).steps.at(-1);
  const cooler = { purpose: 'appliance', width: 600, height: 850, depth: 400 } as const;

  it('an appliance, with who may connect it', () => {
    const step = last([cooler]);
    expect(step).toMatchObject({ place: 'site', parts: [] });
    expect(step?.what).toBe(
      'Put in the appliance in bay 1 of run A, by its maker’s instructions; wiring, gas and plumbing are for licensed people.',
    );
    expect(last([{ purpose: 'bin', width: 300, height: 500, depth: 300 }])?.what).toBe(
      'Put in the bin in bay 1 of run A.',
    );
  });

  it('not one that its bay does not take', () => {
    expect(last([{ ...cooler, height: 2000 }])?.what).not.toMatch(/appliance/);
  });
});
