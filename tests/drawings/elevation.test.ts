import { describe, expect, it } from 'vitest';
import { elevationOf } from '../../src/drawings/elevation';
import type { Vec3 } from '../../src/vocabulary/geometry';
import { box, byHand } from './fixture';
import { at, of, texts } from './strokes';

const PANEL = { kind: 'panel', name: 'panel moulding', from: 'finished', d: [12, 30] } as const;
/** Where the bays begin. */
const BAY_LEFTS = [140, 970];
/** The same place, down on the floor. */
const at0 = ([x, y]: Vec3): Vec3 => [x, y, 0];

describe('the front of a run set out by hand', () => {
  const front = elevationOf(byHand, 'A', 'front');

  it('gives every pillar and every bay its width, and they add up to the front', () => {
    const chain = texts(at(front, 'horizontal', -20));
    expect(chain).toEqual(['140', '690', '140', '690', '140']);
    expect(chain.reduce((sum, text) => sum + Number(text), 0)).toBe(1800);
  });

  it('gives the length of the frame and the length over the layer the size was taken to', () => {
    expect(texts(at(front, 'horizontal', -30))).toEqual(['frame line 1800']);
    expect(texts(at(front, 'horizontal', -40))).toEqual(['over plinth 1800']);
  });

  it('gives what stands on the floor: blocks, wider than their pillars, and the skirting between', () => {
    const chain = at(front, 'horizontal', -10);
    expect(texts(chain)).toEqual(['150', '680', '150', '680', '150']);
    expect(chain[0].from[0]).toBe(-5);
  });

  it('leaves that row out where it would say what the row of the pillars says', () => {
    const parts = byHand.parts.filter((part) => part.kind !== 'plinth' && part.kind !== 'skirting');
    const bare = parts.map((part) =>
      part.mark.startsWith('A-PB') ? { ...part, place: { ...part.place, origin: at0(part.place.origin) } } : part,
    );
    const drawn = elevationOf({ ...byHand, parts: bare }, 'A', 'front');
    expect(texts(at(drawn, 'horizontal', -10))).toEqual(['140', '690', '140', '690', '140']);
    expect(texts(at(drawn, 'horizontal', -20))).toEqual(['frame line 1800']);
  });

  it('gives margins and widths of the frames once where all bays are alike, and says so', () => {
    const above = at(front, 'horizontal', 10);
    expect(texts(above)).toEqual(['70', '550', '70', '30', '30']);
    expect(above[0].from[0]).toBe(140);
    expect(front.notes).toContain('What is dimensioned over the first bay is alike in all bays.');
  });

  it('gives them bay by bay where the bays differ', () => {
    const wider = byHand.parts.map((part) =>
      part.mark === 'A-PM8'
        ? box({ ...PANEL, mark: 'A-PM8', x: [1570, 1600], z: [190, 940] })
        : part.mark === 'A-PM5' || part.mark === 'A-PM6'
          ? box({ ...PANEL, mark: part.mark, x: [1040, 1600], z: part.mark === 'A-PM5' ? [190, 220] : [910, 940] })
          : part,
    );
    const drawn = elevationOf({ ...byHand, parts: wider }, 'A', 'front');
    expect(texts(at(drawn, 'horizontal', 10))).toEqual(['70', '550', '70', '70', '560', '60', '30', '30']);
    expect(drawn.notes?.join()).not.toContain('alike');
  });

  it('leaves out of them what runs from end to end of a bay, and what hangs before a frame', () => {
    const hung = BAY_LEFTS.flatMap((x, i) => [
      box({
        kind: 'panel',
        mark: `A-FL${i}`,
        name: 'rail',
        from: 'finished',
        x: [x, x + 690],
        z: [540, 580],
        d: [12, 24],
      }),
      box({
        kind: 'bracket',
        mark: `A-FB${i}`,
        name: 'bracket',
        from: 'finished',
        x: [x + 55, x + 102],
        z: [130, 210],
        d: [12, 120],
      }),
    ]);
    const drawn = elevationOf({ ...byHand, parts: [...byHand.parts, ...hung] }, 'A', 'front');
    expect(texts(at(drawn, 'horizontal', 10))).toEqual(['70', '550', '70', '30', '30']);
  });

  it('measures the gap of a flap beside the frame line, and not the flap as part of the top', () => {
    const flap = box({
      kind: 'flap',
      mark: 'A-LF1',
      name: 'flap',
      from: 'finished',
      x: [1803, 2497],
      z: [1010, 1050],
      d: [-500, 75],
    });
    const flaps = [{ left: 'A', right: 'B', width: 700, hinge: 'left', gate: false }] as const;
    const parts = byHand.parts.map((part) =>
      part.mark === 'A-TP1'
        ? box({
            kind: 'top',
            mark: 'A-TP1',
            name: 'top',
            from: 'finished',
            x: [-30, 1800],
            z: [1010, 1050],
            d: [-500, 75],
          })
        : part,
    );
    const drawn = elevationOf({ ...byHand, parts: [...parts, flap], rod: { ...byHand.rod, flaps } }, 'A', 'front');
    expect(texts(at(drawn, 'horizontal', -30))).toEqual(['frame line 1800', 'gap 700']);
    expect(texts(at(drawn, 'horizontal', 10)).slice(3)).toEqual(['30']);
    expect(of(drawn, 'polygon').some((polygon) => polygon.part === 'A-LF1')).toBe(true);
  });

  it('rounds every figure to the step of the job and not otherwise', () => {
    const length = 1800.26;
    const runs = [{ ...byHand.rod.runs[0], length }];
    const drawn = (roundingStep: number) => {
      const job = { ...byHand.job, tools: { ...byHand.job.tools, roundingStep } };
      return texts(at(elevationOf({ ...byHand, job, rod: { ...byHand.rod, runs } }, 'A', 'front'), 'horizontal', -30));
    };
    expect([0.5, 0.1, 0.01, 1].map((step) => drawn(step)[0])).toEqual([
      'frame line 1800.5',
      'frame line 1800.3',
      'frame line 1800.26',
      'frame line 1800',
    ]);
  });

  it('gives heights from the floor: skirting, block, panel frame as one, underside and face of the top', () => {
    expect(texts(of(front, 'dimension').filter((d) => d.running))).toEqual([
      '120',
      '150',
      '190',
      '940',
      '1010',
      '1050',
    ]);
  });

  it('leaves out what the skin hides, and shows the rest', () => {
    const shown = new Set(of(front, 'polygon').map((polygon) => polygon.part));
    expect(
      byHand.parts
        .filter((part) => part.from === 'framed')
        .map((part) => part.mark)
        .filter((mark) => shown.has(mark)),
    ).toEqual([]);
    expect(byHand.parts.filter((part) => part.from !== 'framed').every((part) => shown.has(part.mark))).toBe(true);
  });

  it('shows timber that the skin does not reach', () => {
    const short = byHand.parts.map((part) =>
      part.mark === 'A-CL1'
        ? box({ kind: 'cladding', mark: 'A-CL1', name: 'skin', from: 'clad', x: [500, 1800], z: [0, 1010], d: [0, 12] })
        : part,
    );
    const shown = new Set(
      of(elevationOf({ ...byHand, parts: short }, 'A', 'front'), 'polygon').map((polygon) => polygon.part),
    );
    expect(shown.has('A-ST2')).toBe(true);
    expect(shown.has('A-ST4')).toBe(false);
  });

  it('paints the nearer over the farther', () => {
    const order = of(front, 'polygon').map((polygon) => polygon.part);
    expect(order.indexOf('A-CL1')).toBeLessThan(order.indexOf('A-PB1'));
    expect(order.indexOf('A-SK1')).toBeLessThan(order.indexOf('A-BL1'));
    expect(order.at(-1)).toBe('A-TP1');
  });

  it('marks the middle of each pillar with a narrow chain line (ISO 128-2)', () => {
    const lines = of(front, 'line').filter((line) => line.style === 'chain');
    expect(lines.map((line) => line.points[0][0])).toEqual([70, 900, 1730]);
    expect(lines.every((line) => line.pen === 'narrow')).toBe(true);
  });

  it('draws outlines wide', () => {
    expect(of(front, 'polygon').every((polygon) => polygon.pen === 'wide' && polygon.fill === 'paper')).toBe(true);
  });

  it('writes inches for a job in inches', () => {
    const inch = elevationOf({ ...byHand, job: { ...byHand.job, units: 'inch' } }, 'A', 'front');
    // 1800 mm = 70.866 in = 70 55/64 in to the nearest 64th.
    expect(texts(at(inch, 'horizontal', -30))).toEqual(['frame line 70 55/64"']);
  });

  it('throws for a run that is not there, and says which are', () => {
    expect(() => elevationOf(byHand, 'Q', 'front')).toThrow("run 'Q' is not on the rod; runs: A");
  });
});

describe('the frame of a run set out by hand', () => {
  const framing = elevationOf(byHand, 'A', 'framing');

  it('runs the stud centres from the left end of the frame line, as the rod does, whatever end they are set out from', () => {
    const centres = ['0 frame line', '19', '400', '800', '1200', '1600', '1781'];
    expect(texts(at(framing, 'horizontal', 10))).toEqual(centres);
    const timber = { ...byHand.rod.timber, datum: 'right' as const };
    const fromRight = elevationOf({ ...byHand, rod: { ...byHand.rod, timber } }, 'A', 'framing');
    expect(texts(at(fromRight, 'horizontal', 10))).toEqual(centres);
    expect(framing.notes).toContain('Stud centres are from the left end of the frame line, as on the rod.');
  });

  it('shows plates that begin after the frame line, or before it', () => {
    const plates = (from: number, to: number) => {
      const drawn = elevationOf({ ...byHand, framing: [{ ...byHand.framing[0], from, to }] }, 'A', 'framing');
      return [-20, -30].map((offset) => texts(at(drawn, 'horizontal', offset)));
    };
    expect(plates(63, 1800)).toEqual([['plates 1737', '63'], ['frame line 1800']]);
    expect(plates(0, 1863)).toEqual([['plates 1863'], ['frame line 1800', '63']]);
    expect(plates(-63, 1770)).toEqual([
      ['plates 1833', '30'],
      ['frame line 1800', '63'],
    ]);
  });

  it('gives the clear gaps, which with the studs make up the frame', () => {
    const gaps = texts(at(framing, 'horizontal', -10)).map(Number);
    expect(gaps).toEqual([343, 362, 362, 362, 143]);
    expect(gaps.reduce((a, b) => a + b) + 6 * 38).toBe(1800);
    expect(texts(at(framing, 'horizontal', -20))).toEqual(['plates 1800']);
    expect(texts(at(framing, 'horizontal', -30))).toEqual(['frame line 1800']);
  });

  it('gives the height of the frame and of the noggins', () => {
    expect(texts(at(framing, 'vertical', -10))).toEqual(['1010']);
    expect(texts(at(framing, 'vertical', 10))).toEqual(['486']);
    expect(framing.notes).toContain('Noggin heights are to their undersides.');
  });

  it('shows the timber only, each with its mark', () => {
    const marks = byHand.parts.filter((part) => part.from === 'framed').map((part) => part.mark);
    expect(
      of(framing, 'polygon')
        .map((polygon) => polygon.part)
        .sort(),
    ).toEqual([...marks].sort());
    expect(
      of(framing, 'text')
        .map((text) => text.text)
        .sort(),
    ).toEqual([...marks].sort());
    expect(of(framing, 'polygon').every((polygon) => polygon.fill === 'timber')).toBe(true);
  });

  it('turns the marks of studs', () => {
    const turned = (mark: string) => of(framing, 'text').find((text) => text.text === mark)?.turned;
    expect(turned('A-ST2')).toBe(true);
    expect(turned('A-NG1')).toBe(false);
  });
});
