import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatLength, type LengthUnits, MM_PER_INCH, parseLength } from '../../src/base/lengths';
import { SEED } from './seed';

const read = (text: string, units: LengthUnits): number => {
  const result = parseLength(text, units);
  if (!result.ok) throw new Error(result.issues[0].message);
  return result.value;
};
const refusal = (text: string, units: LengthUnits = 'mm'): string => {
  const result = parseLength(text, units);
  return result.ok ? `read as ${result.value}` : result.issues[0].message;
};

describe('reading: a bare number is in the units given', () => {
  test.each([
    ['1200', 'mm', 1200],
    ['1,200.5', 'mm', 1200.5],
    ['1.200,5', 'mm', 1200.5],
    ['1200,5', 'mm', 1200.5],
    ['1 200', 'mm', 1200],
    ['1 200,5', 'mm', 1200.5],
    ['.5', 'mm', 0.5],
    ['1200.', 'mm', 1200],
    ['0', 'mm', 0],
    ['-12.5', 'mm', -12.5],
    ['−12.5', 'mm', -12.5],
    // A rule's fraction is inches, whatever the job is in.
    ['12 1/2', 'mm', 317.5],
    ['47 1/4', 'mm', 1200.15],
    ['3/4', 'mm', 19.05],
    ['12 1/2 mm', 'mm', 12.5],
    ['47 1/4', 'inch', 1200.15],
    ['47-1/4', 'inch', 1200.15],
    ['47¼', 'inch', 1200.15],
    ['¾', 'inch', 19.05],
    ['3/4', 'inch', 19.05],
    ['36', 'inch', 914.4],
    ['0,375', 'inch', 9.525],
  ] as const)('%s in %s is %d mm', (text, units, mm) => {
    expect(read(text, units)).toBe(mm);
  });
});

describe('reading: a written unit always wins', () => {
  test.each([
    ['1200mm', 1200],
    ['1200 MM', 1200],
    ['120 cm', 1200],
    ['1.2 m', 1200],
    ['1,2 m', 1200],
    ['47 1/4"', 1200.15],
    ['47 1/4 in', 1200.15],
    ['47.25 inches', 1200.15],
    [`3' 11 1/4"`, 1200.15],
    [`3'-11 1/4"`, 1200.15],
    ['3ft 11 1/4in', 1200.15],
    ['3 feet 11 1/4 inches', 1200.15],
    ['3′ 11¼″', 1200.15],
    ['3’ 11¼”', 1200.15],
    [`3' 11''`, 1193.8],
    [`3'11`, 1193.8],
    [`3'`, 914.4],
    ['1 ft', 304.8],
    ['4 1/2 ft', 1371.6],
    [' 12 mm ', 12],
  ])('%s is %d mm', (text, mm) => {
    expect(read(text, 'mm')).toBe(mm);
    expect(read(text, 'inch')).toBe(mm);
  });
});

describe('reading: what is no length is refused', () => {
  test.each([
    ...[
      '',
      '   ',
      '-',
      '"',
      'mm',
      'NaN',
      'Infinity',
      '1e3',
      'twelve',
      '5 mm x',
      '1/2/3',
      '1..2',
      '1 2',
      '1,2,3',
      '--5',
    ],
    ...['1 m 20', `3' 11 1/4 mm`, '5 mm 3 in', '1/', '/2', '12,34,567', '5;', '0x10', '1_000', '5 +3'],
  ])('%j', (text) => {
    expect(refusal(text)).toContain(`'${text}'`);
    expect(refusal(text)).toContain('understood are');
    expect(refusal(text, 'inch')).toContain('understood are');
  });
  test.each(['3650/2', '1/3', '12 2/3'])('%s of what?', (text) =>
    expect(refusal(text, 'mm')).toContain('Write the unit'),
  );
  test('a fraction over nothing', () => expect(refusal('3 1/0', 'inch')).toContain('over nothing, 1/0'));
  test('a number beyond numbers', () => expect(refusal('9'.repeat(400))).toContain('beyond any number'));
  test('a comma that may part thousands or decimals is asked back', () => {
    expect(refusal('1,200')).toContain('it may mean 1200 or 1.200');
    expect(refusal('1,200 m')).toContain('it may mean');
    expect(read('0,125', 'inch')).toBe(3.175);
  });
  test(`never throws, whatever it is given (seed ${SEED})`, () => {
    const near = fc.string({ unit: fc.constantFrom(...`0123456789.,/-'" ftincmh½¼’″e+`), maxLength: 14 });
    fc.assert(
      fc.property(fc.oneof(fc.string(), near), fc.constantFrom<LengthUnits>('mm', 'inch'), (text, units) => {
        const result = parseLength(text, units);
        if (result.ok) expect(Number.isFinite(result.value)).toBe(true);
        else expect(result.issues[0].message.length).toBeGreaterThan(0);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });
});

describe('writing', () => {
  test.each([
    [1203.5, '1203.5', '47 3/8"'],
    [1200, '1200', '47 1/4"'],
    [1200.15, '1200.15', '47 1/4"'],
    [0, '0', '0"'],
    [-0.001, '0', '0"'],
    [12.7, '12.7', '1/2"'],
    [25.4, '25.4', '1"'],
    [-38.1, '-38.1', '-1 1/2"'],
    [25.4 / 64, '0.4', '1/64"'],
    [25.4 * (1 - 1 / 256), '25.3', '1"'],
    [100, '100', '3 15/16"'],
  ])('%d mm is %s and %s', (mm, metric, imperial) => {
    expect(formatLength(mm, 'mm')).toBe(metric);
    expect(formatLength(mm, 'inch')).toBe(imperial);
  });
  test('a number that is none is refused', () => {
    for (const bad of [Number.NaN, Infinity, -Infinity]) {
      expect(() => formatLength(bad, 'mm')).toThrow(/must be finite/);
    }
  });

  const lengths = fc.double({ min: -50_000, max: 50_000, noNaN: true });
  test(`what is written reads back: within 0.005 mm, within 1/128 in (seed ${SEED})`, () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom<LengthUnits>('mm', 'inch'), (mm, typedIn) => {
        // The inch mark is written, so that inches read back whatever units the field is in.
        const noise = 1e-9;
        expect(Math.abs(read(formatLength(mm, 'mm'), 'mm') - mm)).toBeLessThanOrEqual(0.005 + noise);
        expect(Math.abs(read(formatLength(mm, 'inch'), typedIn) - mm)).toBeLessThanOrEqual(MM_PER_INCH / 128 + noise);
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });
  test(`writing what was read changes nothing more (seed ${SEED})`, () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom<LengthUnits>('mm', 'inch'), (mm, units) => {
        const once = formatLength(mm, units);
        expect(formatLength(read(once, units), units)).toBe(once);
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });
});
