import { describe, expect, test } from 'vitest';
import { design } from '../../../src/flow';
import { cornersIn } from '../../properties/measure';
import { findingOf, jobOf, partsOf, runOf, type Said } from '../job-of';

const elements = { pillar: { rhythm: 'count', bays: 2, width: 100 }, skirting: { moulding: 'skirting-ogee-120' } };

describe('panel frames', () => {
  test('are four mitred pieces in each bay, cut at 45°', () => {
    const made = design(jobOf({ elements }));
    const pieces = partsOf(made, 'PM');
    expect(pieces).toHaveLength(8);
    for (const piece of pieces)
      for (const end of piece.ends) expect(end).toMatchObject({ kind: 'mitre', longSide: 'outer edge' });
    for (const piece of pieces) for (const end of piece.ends) expect(end.sawDeg).toBeCloseTo(45, 9);
  });

  test('keep their margin to pillars, skirting and top', () => {
    const made = design(jobOf({ height: 1000, elements: { ...elements, panel: { margin: 60 } } }));
    const corners = partsOf(made, 'PM')
      .slice(0, 4)
      .flatMap((p) => cornersIn(runOf(made), p));
    const [bay] = runOf(made).bays;
    const [xs, zs] = [corners.map((c) => c.x), corners.map((c) => c.z)];
    expect([Math.min(...xs) - bay.from, bay.to - Math.max(...xs)].map((m) => Number(m.toFixed(9)))).toEqual([60, 60]);
    expect([Math.min(...zs), Math.max(...zs)].map((m) => Number(m.toFixed(9)))).toEqual([120 + 60, 960 - 60]);
  });

  test('in rows are of one height, with the gap asked for between', () => {
    const made = design(jobOf({ height: 1000, elements: { ...elements, panel: { margin: 60, rows: 2, rowGap: 40 } } }));
    const uprights = partsOf(made, 'PM').filter((p) => p.where.startsWith('bay 1') && p.where.endsWith('left'));
    expect(uprights.map((p) => p.size.length)).toEqual([340, 340]);
    const [low, high] = uprights.map((p) => cornersIn(runOf(made), p).map((c) => c.z));
    expect(Math.min(...high) - Math.max(...low)).toBeCloseTo(40, 9);
  });

  test('have a noggin behind the middle of each level member', () => {
    const made = design(jobOf({ elements }));
    for (const piece of partsOf(made, 'PM').filter((p) => /bottom|top/.test(p.where))) {
      const zs = cornersIn(runOf(made), piece).map((c) => c.z);
      const middle = (Math.min(...zs) + Math.max(...zs)) / 2;
      expect(made.framing[0].noggins.some((n) => n.low + 5.9 <= middle && middle <= n.high - 5.9)).toBe(true);
    }
  });

  test('without room are left out, with what there is and what is needed', () => {
    const made = design(
      jobOf({
        elements: {
          ...elements,
          pillar: { rhythm: 'count', bays: 5, width: 300 },
          panel: { margin: 50, moulding: 'panel-ogee-30' },
        },
      }),
    );
    // (2400 − 6 · 300)/5 = 120 between pillars; 20 over the frame; two mouldings of 30, and 10 of field.
    expect(findingOf(made, 'panel-no-room')).toMatchObject({ severity: 'stop', value: 20, limit: 70 });
    expect(partsOf(made, 'PM')).toEqual([]);
  });

  test('on a return too narrow for them are no fault; too low for them they are one there too', () => {
    const found = (elements: Said['elements']) =>
      design(jobOf({ leftEnd: { kind: 'return', length: 300 }, elements })).findings.filter(
        (f) => f.rule === 'panel-no-room' && f.subject.run === 'RL',
      );
    expect(found({ panel: { margin: 120 } })).toMatchObject([{ severity: 'note' }]);
    expect(found({ panel: { margin: 120 } })[0].remedy).toContain('a longer return');
    const low = found({ panel: { margin: 10, rows: 12, rowGap: 50 } });
    expect(low.length).toBeGreaterThan(0);
    expect(low.every(({ severity }) => severity === 'stop')).toBe(true);
  });

  test('that would run past the mitre of a sharp corner are left out, with how far', () => {
    const said = {
      cladding: { sheet: 'mdf-12' },
      pillar: { cornerWidth: 35, rhythm: 'count', bays: 1, flutes: 0 },
      panel: { margin: 5 },
    };
    const made = design(
      jobOf({ runs: [{ length: 3000, deflectionDeg: 148 }, { length: 3000 }], depth: 300, elements: said }),
    );
    const tan = Math.tan((74 * Math.PI) / 180);
    expect(findingOf(made, 'panel-past-mitre').value).toBeCloseTo(30 * tan - 35 - 5 - 12 * tan, 9);
    expect(partsOf(made, 'PM')).toEqual([]);
  });
});
