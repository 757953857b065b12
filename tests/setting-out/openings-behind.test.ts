import { describe, expect, test } from 'vitest';
import { design } from '../../src/flow';
import { mirrorJob } from '../../src/job/mirror';
import type { BayWish, Opening } from '../../src/vocabulary/job';
import { behindJob, openingOf } from '../elements/behind-job';
import { findingOf, jobOf, type Said } from '../elements/job-of';

describe('an opening through the top over a bay', () => {
  // As `behindJob` has it: the bay behind is clear from 38 to 962 and from −63 to −525, the top reaches from 75 to −565.
  const pipe = (more: Partial<Opening> = {}): Opening =>
    openingOf({ name: 'beer', through: 'top', use: 'pipe', x: 500, z: 300, width: 60, ...more });
  const over = (purpose: BayWish['purpose'], more: Partial<Opening> = {}, elements: Said['elements'] = {}) => {
    const made = design(behindJob([{ purpose, width: 600 }], { openings: [pipe(more)], elements }));
    expect(made.openings).toHaveLength(1);
    return made.findings.filter((f) => f.rule === 'opening-over-bay');
  };
  test('with shelves, drawers or an appliance: a note with bay and opening', () => {
    expect(over('shelves')).toMatchObject([
      {
        severity: 'note',
        subject: { run: 'A', path: '/unit/openings/0' },
        value: 60,
        message:
          'Opening 1 (beer) in run A lies over bay 1 by 60 mm, which is to have shelves: what comes through it meets them.',
        remedy: 'Notch the shelves by hand round what comes down, or move the opening over another bay.',
      },
    ]);
    expect(over('drawers')).toHaveLength(1);
    expect(over('appliance')).toHaveLength(1);
  });
  test('with nothing in the way: none', () => {
    for (const purpose of ['open', 'doors', 'sink', 'bin'] as const) expect(over(purpose)).toEqual([]);
  });
  test('none behind the posts, or over a worktop', () => {
    // Posts 300 before the back edge, at −265: 340 behind the front edge. 340 + 5 + 30 = 375.
    expect(over('shelves', { z: 400 }, { carcass: { setBack: 300 } })).toEqual([]);
    // A worktop 300 deep behind the front frame reaches to −363, 438 behind the edge.
    const worktop = { height: 900, of: 'sheet', sheet: 'mdf-25', depth: 300 };
    expect(over('shelves', { z: 300 }, { worktop })).toEqual([]);
    expect(over('shelves', { z: 420 }, { worktop })).toHaveLength(1);
  });
});

test('timber of the carcass and of what it carries keeps 5 mm, like the frame’s own', () => {
  // Rear rail from −525 to −487: 562 to 600 behind the front edge.
  const tried = (z: number) =>
    design(
      behindJob([{ purpose: 'doors' }], {
        openings: [openingOf({ through: 'top', use: 'pipe', x: 500, z, width: 60 })],
      }),
    );
  expect(tried(562 - 5 - 30).openings).toHaveLength(1);
  // Over it: 560 + 30 − 562 = 28; and to be 5 clear, 33 to the front.
  expect(findingOf(tried(560), 'opening-refused').message).toContain(
    'meets rear rail of space 1 by 28 mm. The nearest good place is 33 mm to the front, to 527 mm, which leaves 5 mm clear.',
  );
  expect(findingOf(tried(562 - 4 - 30), 'opening-refused').message).toContain(
    'comes within 4 mm of rear rail of space 1',
  );
  // Bearers of a fixed shelf end on 380.3: 5 and half of 30 above it a pipe has its place.
  const front = (z: number) =>
    design(behindJob([{ purpose: 'shelves' }], { openings: [openingOf({ use: 'pipe', x: 500, z, width: 30 })] }))
      .openings.length;
  expect([front(400.5), front(400.2)]).toEqual([1, 0]);
});

test('a mirrored unit refuses and places the same', () => {
  const openings = [openingOf({ x: 700 }), openingOf({ x: 1200 }), openingOf({ x: 1320 })];
  const job = jobOf({ runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }], openings });
  const [made, other] = [design(job), design(mirrorJob(job))];
  expect(made.openings).toHaveLength(1);
  expect(other.openings.map((o) => [3000 - o.to, 3000 - o.from])).toEqual(made.openings.map((o) => [o.from, o.to]));
  const said = (d: typeof made) => d.findings.filter((f) => f.rule === 'opening-refused').map((f) => f.value);
  expect(said(other)).toEqual(said(made));
});
