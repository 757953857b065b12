import { describe, expect, test } from 'vitest';
import { standStuds } from '../../src/setting-out/studs';
import type { Backing } from '../../src/vocabulary/backing';
import type { FrameTimber } from '../../src/vocabulary/rod';

type Wish = Extract<Backing, { kind: 'stud' }>;
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
const line = (x: number, reason = 'pillar'): Wish => ({ kind: 'stud', run: 'A', x, centred: false, reason });
const joint = (x: number): Wish => ({ ...line(x, 'cladding joint'), centred: true });
const centres = (wishes: readonly Wish[], said: Partial<FrameTimber> = {}, to = 1200): readonly number[] =>
  standStuds('A', 0, to, timber(said), wishes).studs.map((s) => (s.from + s.to) / 2);

describe('studs', () => {
  test('stand at both ends and on the module', () => expect(centres([])).toEqual([19, 400, 800, 1181]));
  test('from the right', () => expect(centres([], { datum: 'right' }, 1100)).toEqual([19, 300, 700, 1081]));
  test('equally', () =>
    expect(centres([], { method: 'equal' })).toEqual([19, 19 + 1162 / 3, 19 + (1162 * 2) / 3, 1181]));
  test('keep what is said of them', () => {
    const { studs } = standStuds('A', 0, 1200, timber(), [line(400), joint(800)]);
    expect(studs.map((s) => s.reasons)).toEqual([['end'], ['pillar'], ['cladding joint'], ['end']]);
  });
});

describe('a line that something asks for', () => {
  test('is met by a stud that carries it 6 mm in from its edge', () => {
    expect(centres([line(32)])).toEqual(centres([]));
    expect(centres([joint(600), line(613)])).toEqual(centres([joint(600)]));
  });
  test('else by one on it', () => expect(centres([line(600)])).toContain(600));
  test('or by one tight against another, when there is no room on it', () => {
    const { studs } = standStuds('A', 0, 1200, timber(), [joint(600), line(625)]);
    expect(studs.find((s) => s.reasons.includes('pillar'))).toMatchObject({ from: 619, to: 657 });
  });
  test('beyond the frame is the neighbour’s', () => expect(centres([line(-10), line(1215)])).toEqual(centres([])));
  test('a joint that can’t have a stud on its middle is said, with where', () => {
    const { findings } = standStuds('A', 0, 1200, timber(), [joint(600), joint(610)]);
    expect(findings).toMatchObject([{ severity: 'warn', rule: 'stud-crowded', value: 610, subject: { run: 'A' } }]);
  });
  test('and is said at the same place from the right', () => {
    const { findings } = standStuds('A', 0, 1200, timber({ datum: 'right' }), [joint(590), joint(600)]);
    expect(findings).toMatchObject([{ rule: 'stud-crowded', value: 590 }]);
  });
});

describe('the module', () => {
  test('leaves out a line hard by a stud that is needed, while the centres are kept', () => {
    expect(centres([line(450)], {}, 1200)).not.toContain(400);
  });
  test('is given up for equal gaps where it can’t keep within the centres', () => {
    const found = centres([line(520)], {}, 1200);
    for (const [i, x] of found.slice(1).entries()) expect(x - found[i]).toBeLessThanOrEqual(400.004);
  });
  test('a frame seen in a mirror has its studs mirrored', () => {
    const wishes = [line(250), joint(610), line(640), line(900)];
    const turned = wishes.map((w) => ({ ...w, x: 1200 - w.x }));
    const right = centres(turned, { datum: 'right' })
      .map((x) => 1200 - x)
      .reverse();
    for (const [i, x] of centres(wishes).entries()) expect(right[i]).toBeCloseTo(x, 9);
  });

  test('a line less than 6 mm from the edge of a stud gets another, tight against it', () => {
    expect(centres([line(400), line(413)])).toEqual([19, 400, 800, 1181]);
    expect(centres([line(400), line(414)])).toEqual([19, 400, 438, 800, 1181]);
  });
  test('a joint off the middle is met with 12 mm of bearing, and said with less', () => {
    const { studs, findings } = standStuds('A', 0, 1200, timber(), [joint(26)]);
    expect(studs[0].reasons).toEqual(['end', 'cladding joint']);
    expect(findings).toEqual([]);
    expect(standStuds('A', 0, 1200, timber(), [joint(27)]).findings.map((f) => f.rule)).toEqual(['stud-crowded']);
    expect(standStuds('A', 0, 1200, timber(), [joint(500), joint(530)]).findings).toHaveLength(1);
  });
  test('timber no thicker than the edges ask for still stands', () =>
    expect(() => standStuds('A', 0, 1200, timber({ face: 5 }), [line(400), joint(700)])).not.toThrow());
});
