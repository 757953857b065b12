import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { findingOf, jobOf, partsOf, rulesOf } from '../job-of';

describe('the frame', () => {
  test('plates run through, studs stand between them', () => {
    const made = design(jobOf({ height: 1000 }));
    const [bottom, top] = partsOf(made, 'PL');
    expect([bottom.size.length, top.size.length]).toEqual([2400, 2400]);
    expect([bottom.place.origin[2], top.place.origin[2]]).toEqual([0, 1000 - 40 - 38]);
    for (const stud of partsOf(made, 'ST'))
      expect(stud.size).toMatchObject({ length: 960 - 76, width: 63, thickness: 38 });
  });

  test('on flat, the wider side lies in the plane of the front', () => {
    const made = design(jobOf({ elements: { frame: { lay: 'flat' } } }));
    expect(partsOf(made, 'ST')[0].size).toMatchObject({ width: 63, thickness: 38 });
    expect(made.rod.timber).toMatchObject({ face: 63, depth: 38 });
  });

  test('every member is bare timber, there from the framed view on', () => {
    for (const part of design(jobOf({})).parts.filter((p) => p.kind === 'frame'))
      expect(part).toMatchObject({ finish: 'bare', from: 'framed', material: 'sawn-38x63' });
  });

  test('a canted corner gets a fillet the whole height; one too big for the timber is said', () => {
    const made = design(jobOf({ runs: [{ deflectionDeg: 45 }, {}] }));
    const fillets = made.parts.filter((p) => p.code === 'FI');
    expect(fillets).toHaveLength(1);
    expect(fillets[0].size.length).toBe(made.rod.frameHeight);
    expect(rulesOf(made)).not.toContain('fillet-glued-up');
    const sharp = design(jobOf({ runs: [{ deflectionDeg: 140 }, {}] }));
    expect(findingOf(sharp, 'fillet-glued-up')).toMatchObject({ severity: 'note', limit: 63 });
  });

  test('marks each stud’s middle on the rod', () => {
    const made = design(jobOf({}));
    const marks = made.marks.A.filter((m) => m.lane === 'timber');
    expect(marks).toHaveLength(partsOf(made, 'ST').length);
    expect(marks[0].x).toBeCloseTo(19, 9);
    expect(marks.at(-1)?.x).toBeCloseTo(2400 - 19, 9);
  });

  test('a fillet says that it is three-cornered', () => {
    const made = design(jobOf({ runs: [{ deflectionDeg: 45 }, {}] }));
    expect(partsOf(made, 'FI', 'B')[0].section).toBe('three-cornered, 63 × 44.5 × 44.5 mm');
  });
  test('a corner a little off square is packed, and said once', () => {
    const made = design(jobOf({ runs: [{ deflectionDeg: 88.5 }, {}] }));
    const said = made.findings.filter((f) => f.rule === 'corner-packing');
    expect(said).toHaveLength(1);
    expect(said[0].value).toBeCloseTo(63 * Math.cos((88.5 * Math.PI) / 180), 9);
  });
  test('no height for a stud: no frame, and said', () => {
    const low = jobOf({
      height: 300,
      stock: { 'oak-40': { thickness: 120 }, 'sawn-38x63': { width: 150, thickness: 100 } },
    });
    const made = design(low);
    expect(findingOf(made, 'frame-no-height')).toMatchObject({ severity: 'stop', value: 180, limit: 300 });
    expect(partsOf(made, 'ST')).toEqual([]);
  });
});
