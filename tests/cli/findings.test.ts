import { describe, expect, it } from 'vitest';
import { findingLines } from '../../src/cli/findings';
import type { Finding } from '../../src/vocabulary/finding';

const finding = (change: Partial<Finding>): Finding => ({
  severity: 'warn',
  rule: 'longer-than-stock',
  subject: {},
  message: 'Too long.',
  source: 'stock book',
  remedy: 'Joint it.',
  ...change,
});

describe('a line about a finding', () => {
  it('names its subject once', () => {
    const line = (subject: Finding['subject'], message: string) => findingLines([finding({ subject, message })])[0];
    expect(line({ part: 'A-PL1', run: 'A' }, 'A-PL1 (plate, bottom) is long.')).toBe(
      'warn: A-PL1 (plate, bottom) is long. Joint it.',
    );
    expect(line({ run: 'A' }, 'The top of run A is long.')).toBe('warn: The top of run A is long. Joint it.');
    expect(line({ part: 'A-PL1' }, 'Too long.')).toBe('warn: A-PL1: Too long. Joint it.');
    expect(line({ part: 'A-PL1' }, 'Longer than A-PL12.')).toBe('warn: A-PL1: Longer than A-PL12. Joint it.');
    expect(line({ path: '/unit/depth' }, 'Too deep.')).toBe('warn: /unit/depth: Too deep. Joint it.');
  });

  it('stands for all that are alike, worst first, and says how many and where', () => {
    const parts = Array.from({ length: 18 }, (_, i) =>
      finding({ subject: { part: `${'ABC'[i % 3]}-PL${i}`, run: 'ABC'[i % 3] }, message: `Piece ${i} is long.` }),
    );
    const stop = finding({
      severity: 'stop',
      rule: 'run-too-short',
      subject: { run: 'D' },
      message: 'Run D is short.',
    });
    expect(findingLines([...parts, stop])).toEqual([
      'stop: Run D is short. Joint it.',
      'warn: A-PL0: Piece 0 is long. Joint it. … and 17 more like it: runs B, C, A',
    ]);
    expect(findingLines(parts.slice(0, 3))).toEqual([
      'warn: A-PL0: Piece 0 is long. Joint it. … and 2 more like it: B-PL1, C-PL2',
    ]);
  });

  it('is not shared by what is of another rule or weight', () => {
    const three = [finding({}), finding({ rule: 'other' }), finding({ severity: 'note' })];
    expect(findingLines(three)).toHaveLength(3);
  });
});
