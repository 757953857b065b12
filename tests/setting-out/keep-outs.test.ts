import { describe, expect, test } from 'vitest';
import { design } from '../../src/flow';
import { frameRound } from '../../src/setting-out/frame-round';
import { frameUp } from '../../src/setting-out/framing';
import { layNoggins } from '../../src/setting-out/noggins';
import { standStuds } from '../../src/setting-out/studs';
import type { Backing, Stud } from '../../src/vocabulary/backing';
import type { FrameTimber } from '../../src/vocabulary/rod';
import { openingOf } from '../elements/behind-job';
import { jobOf } from '../elements/job-of';

type KeepOut = Extract<Backing, { kind: 'keep-out' }>;
type StudWish = Extract<Backing, { kind: 'stud' }>;
type NogginWish = Extract<Backing, { kind: 'noggin' }>;

const timber = (said: Partial<FrameTimber> = {}): FrameTimber => ({
  stock: 'sawn-38x63',
  face: 38,
  depth: 63,
  centres: 400,
  method: 'module',
  datum: 'left',
  nogginRows: 0,
  ...said,
});
const keep = (from: number, to: number, low = 450, high = 550, opening = 0): KeepOut => ({
  kind: 'keep-out',
  run: 'A',
  from,
  to,
  low,
  high,
  reason: `opening ${opening + 1}`,
  opening,
});
const line = (x: number): StudWish => ({ kind: 'stud', run: 'A', x, centred: false, reason: 'pillar' });
const joint = (x: number): StudWish => ({ ...line(x), centred: true, reason: 'cladding joint' });
const stand = (
  outs: readonly KeepOut[],
  wishes: readonly StudWish[] = [],
  said: Partial<FrameTimber> = {},
  to = 1200,
) => standStuds('A', 0, to, timber(said), wishes, outs);
const centresOf = ({ studs }: { readonly studs: readonly Stud[] }) => studs.map((s) => (s.from + s.to) / 2);

describe('a stud that only keeps the centres', () => {
  // Without an opening: 19, 400, 800, 1181, each 38 wide.
  test('stays where it is clear of the opening, though it touch it', () => {
    const made = stand([keep(419, 500)]);
    expect(centresOf(made)).toEqual([19, 400, 800, 1181]);
    expect(made.findings).toEqual([]);
  });
  test('is moved to the nearer side while its neighbours keep the centres', () => {
    // Right of 390–395: 395 + 19 = 414 would leave 414 − 19 = 395 and 800 − 414 = 386. Left: 371, with 800 − 371 = 429: too far.
    const made = stand([keep(390, 395)]);
    expect(centresOf(made)).toEqual([19, 414, 800, 1181]);
    expect(made.findings).toMatchObject([
      {
        severity: 'note',
        rule: 'stud-moved',
        subject: { run: 'A', path: '/unit/openings/0' },
        value: 400,
        limit: 414,
        message: 'The stud on 400 mm of run A would stand in opening 1: it is moved 14 mm to the right, to 414 mm.',
      },
    ]);
    expect(made.trimmed).toEqual([]);
  });
  test('to the other side where the nearer one would not keep them', () => {
    // Equal gaps of 581: 19, 600, 1181 at 600. Left of 590–640: 571; right: 659 leaves 640 on its left: too far.
    expect(centresOf(stand([keep(590, 640)], [], { centres: 610, method: 'equal' }))).toEqual([19, 571, 1181]);
    // Right is nearer from 560–610: 629 leaves 610 and 552; left 541 would leave 640.
    expect(centresOf(stand([keep(560, 610)], [], { centres: 610, method: 'equal' }))).toEqual([19, 629, 1181]);
  });
  test('gives way to one at each side where neither would, and the opening is trimmed', () => {
    // Left 330: 800 − 330 = 470. Right 489: 489 − 19 = 470. So 311–349 and 470–508 stand.
    const out = keep(349, 470);
    const made = stand([out]);
    expect(centresOf(made)).toEqual([19, 330, 489, 800, 1181]);
    expect(made.studs[1].reasons).toEqual(['trimmer']);
    expect(made.trimmed).toEqual([out]);
    expect(made.findings).toMatchObject([
      {
        severity: 'note',
        rule: 'opening-trimmed',
        value: 400,
        message:
          'The stud on 400 mm of run A would stand in opening 1: a stud stands at each side instead, 121 mm clear, with noggins over and under.',
      },
    ]);
  });
  test('a stud that stands near enough serves at that side', () => {
    // From 300 to 1181 equal gaps of 881/3: 593.67 and 887.33. Between 319 and 349 there is no room for another of 38; over 750 there is.
    expect(centresOf(stand([keep(349, 750)], [line(300)]))).toEqual([19, 300, 769, 300 + (881 * 2) / 3, 1181]);
  });
  test('one that only keeps the centres, hard by one that trims, is left out while they are kept', () => {
    // Centres of 420: 19, 420, 840, 1181. For the one on 420 neither 310 (840 − 310 = 530) nor 799 (799 − 19 = 780) keeps them: trimmed,
    // on 310 and 799. The one on 840 would stand 3 clear of that; without it 1181 − 799 = 382: it is spare.
    expect(centresOf(stand([keep(329, 780)], [], { centres: 420 }))).toEqual([19, 310, 799, 1181]);
    // At 400, trimmed on 310 and 719: without the one on 800 the next would be 1181 − 719 = 462 away, so it stays.
    expect(centresOf(stand([keep(329, 700)]))).toEqual([19, 310, 719, 800, 1181]);
  });
  test('an opening wider than the centres is trimmed, and said to be', () => {
    const { findings, studs } = stand([keep(250, 950)]);
    expect(findings).toHaveLength(1);
    // 700 clear and half a stud at each side: 738.
    expect(findings[0].message).toContain('The studs on 400 and 800 mm');
    expect(findings[0].message).toContain('738 mm apart at least; the centres are 400 mm');
    expect(centresOf({ studs })).toEqual([19, 231, 969, 1181]);
  });
  test('three in a row with no room for a stud between are one, and each is told', () => {
    // 20 mm between them; 38 are needed.
    const outs = [keep(300, 370, 450, 550, 0), keep(390, 460, 450, 550, 1), keep(480, 550, 450, 550, 2)];
    const made = stand(outs);
    expect(centresOf(made)).toEqual([19, 281, 569, 800, 1181]);
    expect(made.trimmed).toEqual(outs);
    // 381–419 stands in the second only.
    expect(made.findings.map((f) => f.subject.path)).toEqual(['/unit/openings/1']);
  });
  test('with room for one between, it stands between', () => {
    // Just 38 between them, where the stud on 400 stands already.
    const made = stand([keep(300, 381), keep(419, 500)]);
    expect(centresOf(made)).toEqual([19, 400, 800, 1181]);
  });
  test('from the right it is the mirror image', () => {
    for (const out of [keep(390, 395), keep(349, 470), keep(250, 950)]) {
      const seen = centresOf(stand([{ ...out, from: 1200 - out.to, to: 1200 - out.from }], [], { datum: 'right' }));
      const own = centresOf(stand([out])).map((x) => 1200 - x);
      expect(seen.map((x) => x.toFixed(6))).toEqual(own.reverse().map((x) => x.toFixed(6)));
    }
    const turned = stand([keep(805, 810)], [], { datum: 'right' });
    expect(turned.findings[0].message).toContain(
      'on 800 mm of run A would stand in opening 1: it is moved 14 mm to the left',
    );
  });
});

describe('a stud that something needs', () => {
  test('stands to one side of its line, 6 mm in from its edge at most', () => {
    // Line 600, an opening from 603: 603 − 19 = 584, and 600 lies 3 mm from its edge: no. From 606: 587, 6 mm in.
    expect(centresOf(stand([keep(606, 700)], [line(600)]))).toContain(587);
    const made = stand([keep(603, 700)], [line(600)]);
    expect(made.kept).toMatchObject([{ run: 'A', x: 600, reason: 'pillar' }]);
    expect(made.findings).toMatchObject([
      { severity: 'stop', rule: 'stud-kept-out', value: 600, subject: { path: '/unit/openings/0' } },
    ]);
  });
  test('nor is it said to be served by one whose edge its line lies beyond, where the next would have stood', () => {
    // Line 560 has 541–579, line 590 would have 579–617 tight against that; an opening from 600 leaves it bare.
    const made = stand([keep(600, 700)], [line(560), line(590)]);
    expect(made.kept).toMatchObject([{ x: 590, centre: 598 }]);
  });
  test('a joint bears 12 mm at least on either side', () => {
    expect(centresOf(stand([keep(612, 700)], [joint(600)]))).toContain(593);
    expect(stand([keep(611, 700)], [joint(600)]).kept).toHaveLength(1);
  });
  test('an end stud stays, and that is said', () => {
    const made = stand([keep(-10, 60)]);
    expect(centresOf(made)[0]).toBe(19);
    expect(made.findings).toMatchObject([{ severity: 'stop', rule: 'stud-in-opening', value: 19 }]);
  });
});

describe('noggins', () => {
  const stud = (from: number): Stud => ({ from, to: from + 38, reasons: [] });
  const studs = [stud(0), stud(400)];
  const at = (z: number, reason = 'skirting'): NogginWish => ({
    kind: 'noggin',
    run: 'A',
    z,
    from: 0,
    to: 438,
    reason,
  });
  const lay = (wishes: readonly NogginWish[], outs: readonly KeepOut[], trimmed = false, rows = 0) =>
    layNoggins(studs, timber({ nogginRows: rows }), { low: 0, high: 1000 }, wishes, outs, trimmed ? outs : []);
  const lows = (laid: ReturnType<typeof lay>) => laid.noggins.map((n) => n.low);

  test('none crosses an opening: it is moved above or below, by the least', () => {
    // Wished at 281–319. The hole 290–330: under it 252, 29 down; over it 330, 49 up.
    const laid = lay([at(300)], [keep(100, 200, 290, 330)]);
    expect(lows(laid)).toEqual([252]);
    expect(laid.moved).toMatchObject([{ was: 281, low: 252, bare: true, reasons: ['skirting'] }]);
    // The hole 270–310: over it 310, 29 up; the line on 320 lies 10 mm in: still carried.
    expect(lay([at(320)], [keep(100, 200, 280, 310)]).moved).toMatchObject([{ was: 301, low: 310, bare: false }]);
  });
  test('an opening in another gap is nothing to it', () =>
    expect(lows(lay([at(300)], [keep(500, 600, 290, 330)]))).toEqual([281]));
  test('under and over an opening that is trimmed, and nothing more where they carry the line', () => {
    // 290 − 38 = 252 and 330; the line on 275 lies in 252–290, more than 6 from its edges.
    expect(lows(lay([], [keep(100, 200, 290, 330)], true))).toEqual([252, 330]);
    const laid = lay([at(275)], [keep(100, 200, 290, 330)], true);
    expect(lows(laid)).toEqual([252, 330]);
    expect(laid.noggins[0].reasons).toEqual(['trimmer', 'skirting']);
    expect(laid.moved).toEqual([]);
  });
  test('no trimmer where the plate is nearer than it is thick', () =>
    expect(lows(lay([], [keep(100, 200, 60, 330)], true))).toEqual([330]));
  test('left out, and said, where there is no room above or below', () => {
    const laid = lay([at(300)], [keep(100, 200, 70, 930)]);
    expect(laid.noggins).toEqual([]);
    expect(laid.moved).toMatchObject([{ was: 281, bare: true }]);
    expect(laid.moved[0]).not.toHaveProperty('low');
  });
  test('a row gives way: beside another noggin it isn’t wanted', () => {
    // The row lies at 481–519 in the hole 450–550; moved to 412 it would lie hard by the trimmer at 412.
    expect(lows(lay([], [keep(100, 200, 450, 550)], true, 1))).toEqual([412, 550]);
    expect(lows(lay([], [keep(100, 200, 470, 550)], false, 1))).toEqual([432]);
  });
  test('of two openings one over the other none crosses either', () => {
    const outs = [keep(100, 200, 200, 300), keep(100, 200, 320, 400, 1)];
    // 20 mm between the two take no noggin: under the lower and over the upper.
    expect(lows(lay([at(310)], outs, true))).toEqual([162, 400, 438]);
  });
});

test('an opening is told of the noggins that it moves', () => {
  const { rod } = design(jobOf({ runs: [{ length: 1000 }] }));
  const { findings } = frameUp(rod, [
    keep(430, 530, 290, 330),
    { kind: 'noggin', run: 'A', z: 300, from: 0, to: 1000, reason: 'skirting' },
  ]);
  expect(findings.filter((f) => f.rule === 'noggin-moved')).toMatchObject([
    { severity: 'note', value: 281, limit: 252, subject: { run: 'A', path: '/unit/openings/0' } },
  ]);
});

test('the frame begins where the rod says, and so do its noggins', () => {
  const { rod } = design(jobOf({ runs: [{ length: 1000 }], height: 1100 }));
  const raised = { ...rod, frameLow: 150, timber: { ...rod.timber, nogginRows: 1 } };
  const wish: Backing = { kind: 'noggin', run: 'A', z: 170, from: 0, to: 1000, reason: 'skirting' };
  const { framing } = frameUp(raised, [wish]);
  // 170 lies in the bottom plate, 150–188; the row lies halfway from 188 to 1022: 605, less 19.
  expect(new Set(framing[0].noggins.map((n) => n.low))).toEqual(new Set([586]));
});

test('an opening that a needed stud can’t give way to is refused, and only that one', () => {
  const { rod } = design(jobOf({ runs: [{ length: 3000, rhythm: { by: 'count', count: 4 } }], height: 1100 }));
  const openings = [400, 1000].map((x) => openingOf({ x, width: 100 }));
  // Something wants a stud on 1000.
  const made = frameRound(rod, openings, [], (placed) => [
    { ...line(1000), reason: 'bracket' },
    ...placed.map((o) => ({ ...keep(o.from - 5, o.to + 5, o.low - 5, o.high + 5, o.index) })),
  ]);
  expect(made.openings.map((o) => o.index)).toEqual([0]);
  // 19 for half a stud and 5 clear of it: 1000 − 24 − 50 = 926, 74 to the left. It reaches 50 + 19 over the stud's near side.
  expect(made.findings.filter((f) => f.severity === 'stop')).toMatchObject([
    {
      rule: 'opening-refused',
      subject: { path: '/unit/openings/1' },
      message: expect.stringContaining(
        'meets the stud for the bracket by 69 mm. The nearest good place is 74 mm to the',
      ),
    },
  ]);
  expect(made.framing[0].studs.some((s) => s.from <= 1000 && s.to >= 1000)).toBe(true);
});
