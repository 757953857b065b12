import { describe, expect, test } from 'vitest';
import { hollowsOf } from '../../../src/base/solid/hollows';
import { design } from '../../../src/flow';
import { findingOf, jobOf, partsOf, rulesOf, runOf } from '../job-of';

describe('pillars', () => {
  test('stand on their blocks and reach the underside of the top', () => {
    const made = design(jobOf({ height: 1000, elements: { plinth: { height: 150 } } }));
    for (const pillar of partsOf(made, 'PI')) {
      expect(pillar.size).toMatchObject({ length: 960 - 150, width: 140, thickness: 18 });
      expect(pillar.place.origin[2]).toBe(150);
    }
  });

  test('at a corner are two boards, mitred by half the turn, with their visible faces as asked', () => {
    const made = design(jobOf({ runs: [{ deflectionDeg: 60 }, {}], elements: { pillar: { cornerWidth: 90 } } }));
    const boards = made.parts.filter((p) => p.name === 'corner pillar board');
    expect(boards.map((p) => [p.run, p.edges[0].edge, p.edges[0].angleDeg])).toEqual([
      ['A', 'right long edge', 30],
      ['B', 'left long edge', 30],
    ]);
    for (const board of boards) expect(board.size.width).toBeCloseTo(90, 9);
  });

  test('flutes that don’t fit are left out, and why is said', () => {
    const made = design(jobOf({ elements: { pillar: { fluteDepth: 9 } } }));
    expect(findingOf(made, 'flutes-do-not-fit')).toMatchObject({
      severity: 'stop',
      subject: { path: '/unit/elements/pillar/flutes' },
    });
    expect(partsOf(made, 'PI').every((p) => p.grooves.length === 0)).toBe(true);
  });

  test('corner boards narrower than the mitre takes are left out, with the width needed', () => {
    const made = design(
      jobOf({ runs: [{ deflectionDeg: 150 }, {}], depth: 200, elements: { pillar: { cornerWidth: 60 } } }),
    );
    const finding = findingOf(made, 'corner-board-too-narrow');
    // 18 · tan 75° + 10
    expect(finding.value).toBeCloseTo(60, 9);
    expect(finding.limit).toBeCloseTo(18 * Math.tan((75 * Math.PI) / 180) + 10, 9);
    expect(partsOf(made, 'PI', 'A').some((p) => p.where === 'right end')).toBe(false);
  });

  test('end pillars wider than the run are left out, with what there is and what is needed', () => {
    const made = design(jobOf({ runs: [{ length: 250 }] }));
    expect(findingOf(made, 'pillars-wider-than-run')).toMatchObject({ value: 250, limit: 280 });
    expect(partsOf(made, 'PI')).toEqual([]);
  });

  test('blocks as high as the frame leave pillars no height', () => {
    const made = design(jobOf({ height: 500, elements: { plinth: { height: 500 } } }));
    expect(findingOf(made, 'pillar-no-height')).toMatchObject({ value: 500, limit: 460 });
  });

  test('each has a stud behind it', () => {
    const made = design(jobOf({}));
    const between = made.rod.runs[0].pillars.filter((p) => p.where === 'between');
    expect(between.length).toBeGreaterThan(0);
    for (const { centre } of between)
      expect(made.framing[0].studs.some((s) => s.from + 6 <= centre && centre <= s.to - 6)).toBe(true);
    expect(rulesOf(made)).not.toContain('stud-crowded');
  });

  test('a narrow corner board has fewer flutes of the same cutter, and that is said', () => {
    const made = design(jobOf({ runs: [{ deflectionDeg: 90 }, {}], elements: { pillar: { cornerWidth: 80 } } }));
    const corner = partsOf(made, 'PI', 'B')[0];
    expect(corner.grooves.length).toBeLessThan(5);
    expect(corner.grooves[0].width).toBeCloseTo(partsOf(made, 'PI', 'B')[1].grooves[0].width, 9);
    expect(findingOf(made, 'fewer-flutes')).toMatchObject({ severity: 'note', value: corner.grooves.length, limit: 5 });
  });

  test('at a corner the flutes are centred on the face that is seen, whichever way it turns', () => {
    for (const turn of [90, -90, 60]) {
      const made = design(jobOf({ runs: [{ deflectionDeg: turn }, {}], elements: { pillar: { cornerWidth: 110 } } }));
      const corner = made.parts.filter((p) => p.name === 'corner pillar board');
      expect(corner).toHaveLength(2);
      for (const board of corner) {
        // Five of 16 with fillets of 5 take 100, and with margins of 20 more than 110; three take 58 and leave (110 − 58)/2 = 26.
        expect(board.grooves.map((g) => g.centre)).toEqual([34, 55, 76]);
        // On the stuff itself, u runs from the right edge of the face to the left: 110 − 76 = 34, and 8 to each side.
        const cut = board.shape.kind === 'stick' ? hollowsOf(board.shape.section) : [];
        const edges = cut.map(({ points }) => [points[0][0], points[points.length - 1][0]]);
        expect(edges).toEqual([
          [84, 68],
          [63, 47],
          [42, 26],
        ]);
      }
    }
  });

  test('are not made at corners where none are wanted', () => {
    const made = design(
      jobOf({ runs: [{ deflectionDeg: 90 }, {}], elements: { pillar: { atCorners: false, baseHeight: 60 } } }),
    );
    expect(made.parts.filter((p) => /corner p/.test(p.name))).toEqual([]);
    for (const run of ['A', 'B']) {
      const there = partsOf(made, 'PI', run).map((p) => p.where);
      expect(there).toHaveLength(runOf(made, run).pillars.length);
      expect(there).not.toContain(run === 'A' ? 'right end' : 'left end');
      for (const code of ['BK', 'PS']) expect(partsOf(made, code, run).map((p) => p.where)).toEqual(there);
    }
  });

  test('hard by an inside corner that has no pillar are left out where they would stand past its mitre', () => {
    const made = design(
      jobOf({
        // Pillar 140 wide to 2380; its face lies 30 out, so the mitre of the square inside corner is on 2400 − 30.
        runs: [{ deflectionDeg: -90, rhythm: { by: 'marks', marks: [1000, 2310] } }, {}],
        elements: { cladding: { sheet: 'mdf-12' }, pillar: { atCorners: false } },
      }),
    );
    expect(findingOf(made, 'pillar-past-mitre').value).toBeCloseTo(10, 9);
    // The block's foot reaches 2385, its face 37 out: 2385 − 2363.
    expect(findingOf(made, 'block-past-mitre').value).toBeCloseTo(22, 9);
    expect(partsOf(made, 'PI').map((p) => p.where)).toEqual(['left end', 'pillar 2']);
  });

  test('are mitred with the neighbour’s, and have stuff left on at walls', () => {
    const made = design(jobOf({ runs: [{ deflectionDeg: 90 }, {}], fit: { scribe: 15 } }));
    const boards = partsOf(made, 'PI');
    expect(boards.map((p) => p.meets)).toEqual([undefined, undefined, undefined, 'right']);
    expect(boards[0].oversize).toEqual([
      { side: 'left long edge', amount: 15, on: 'width', reason: 'scribed to the wall' },
    ]);
    expect(boards.slice(1).every((p) => p.oversize === undefined)).toBe(true);
    expect(boards[0].size.width).toBe(140);
  });

  test('a corner board says which side is the wider, outside and inside', () => {
    for (const [turn, longSide, back] of [
      [90, 'face', 92],
      [-90, 'back', 128],
    ] as const) {
      const made = design(jobOf({ runs: [{ deflectionDeg: turn }, {}] }));
      expect(partsOf(made, 'PI', 'B')[0].edges).toEqual([
        { edge: 'left long edge', work: 'bevelled', angleDeg: 45, longSide, backWidth: back },
      ]);
    }
  });
});
