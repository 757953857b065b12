import { describe, expect, it } from 'vitest';
import {
  cornerWords,
  readCount,
  readLength,
  readLengths,
  readNumber,
  readWords,
  showNumber,
} from '../../app/decisions/entry';

const height = { min: 300, max: 3000 };

describe('a length typed into a field', () => {
  it('is read in the units of the job, and a written unit wins', () => {
    expect(readLength(' 1100 ', height, 'mm')).toEqual({ ok: true, value: 1100 });
    expect(readLength('43 1/2', height, 'inch')).toEqual({ ok: true, value: 1104.9 });
    expect(readLength('1.1 m', height, 'inch')).toEqual({ ok: true, value: 1100 });
    expect(readLength('43 1/2 in', height, 'mm')).toEqual({ ok: true, value: 1104.9 });
  });

  it('is refused outside its range, with the range in the units of the job', () => {
    expect(readLength('299.99', height, 'mm')).toEqual({ ok: false, message: 'Must be from 300 mm to 3000 mm.' });
    expect(readLength('10', height, 'inch')).toEqual({ ok: false, message: 'Must be from 11 13/16" to 118 7/64".' });
    expect(readLength('300', height, 'mm')).toEqual({ ok: true, value: 300 });
    expect(readLength('3000', height, 'mm')).toEqual({ ok: true, value: 3000 });
    expect(readLength('3000.01', height, 'mm').ok).toBe(false);
  });

  it('is refused with what was got when it is no length', () => {
    expect(readLength(' ', height, 'mm')).toEqual({ ok: false, message: 'Type a length.' });
    for (const text of ['tall', '12 x 4', '1,200', 'NaN', 'Infinity', '1e3', '<b>1</b>']) {
      const entry = readLength(text, height, 'mm');
      expect(entry.ok, text).toBe(false);
      if (!entry.ok) expect(entry.message).toContain(`'${text}'`);
    }
  });
});

describe('numbers and counts', () => {
  it('reads an angle with a point, a comma, a true minus, a degree sign', () => {
    const turn = { min: -150, max: 150, unit: 'deg' } as const;
    expect(readNumber('91,5', turn)).toEqual({ ok: true, value: 91.5 });
    expect(readNumber('−90°', turn)).toEqual({ ok: true, value: -90 });
    expect(readNumber(showNumber(-45.25), turn)).toEqual({ ok: true, value: -45.25 });
    expect(readNumber('151', turn)).toEqual({ ok: false, message: 'Must be from −150 to 150.' });
    for (const text of ['', 'square', '1e2', '--5', '9 0']) expect(readNumber(text, turn).ok, text).toBe(false);
  });

  it('says a turn as the angle that a surveyor finds between the fronts', () => {
    // A surveyed 91.5° outside corner turns by 88.5°; straight on, the fronts stand at 180°.
    expect(cornerWords(88.5)).toBe('outside corner of 91.5° (between the fronts, measured through the unit)');
    expect(cornerWords(-91.4)).toBe('inside corner of 88.6° (between the fronts, measured in front of the unit)');
    expect(cornerWords(0)).toBe('straight on, no corner');
  });

  it('gives no example that might be meant', () => {
    const turn = { min: -150, max: 150, unit: 'deg' } as const;
    expect(readNumber('square', turn)).toEqual({ ok: false, message: 'Type a number, such as 45.' });
  });

  it('reads whole numbers only, odd ones or 0 where the field says so', () => {
    const flutes = { min: 0, max: 9, odd: true };
    expect(readCount('5', flutes)).toEqual({ ok: true, value: 5 });
    expect(readCount('0', flutes)).toEqual({ ok: true, value: 0 });
    expect(readCount('4', flutes).ok).toBe(false);
    expect(readCount('11', flutes).ok).toBe(false);
    expect(readCount('3.5', flutes).ok).toBe(false);
    expect(readCount('4', { min: 0, max: 9 })).toEqual({ ok: true, value: 4 });
  });
});

describe('several lengths', () => {
  const marks = { min: -2000, max: 32_000, maxItems: 4 };
  it('reads rising lengths with semicolons between them', () => {
    expect(readLengths('-18; 750;1500 ', marks, 'mm')).toEqual({ ok: true, value: [-18, 750, 1500] });
    expect(readLengths('29 1/2"; 59 in', marks, 'mm')).toEqual({ ok: true, value: [749.3, 1498.6] });
  });

  it('refuses what falls, is too many or no length, and names the piece', () => {
    expect(readLengths('750; 750', marks, 'mm')).toEqual({
      ok: false,
      message: '750: must be more than the one before it.',
    });
    expect(readLengths('1;2;3;4;5', marks, 'mm').ok).toBe(false);
    const bad = readLengths('1; two', marks, 'mm');
    expect(!bad.ok && bad.message.startsWith('two: ')).toBe(true);
  });
});

describe('names', () => {
  it('are neither empty nor taken', () => {
    expect(readWords(' back wall ', ['kitchen wall'])).toEqual({ ok: true, value: 'back wall' });
    expect(readWords('kitchen wall', ['kitchen wall']).ok).toBe(false);
    expect(readWords('  ', []).ok).toBe(false);
  });
});
