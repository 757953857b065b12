import { describe, expect, it } from 'vitest';
import { type Foreign, migrate, STEPS, type Step } from '../../src/job/migrate.ts';
import { VERSION } from '../../src/job/schema.ts';

/** Steps of an imagined program that is at version 4. */
const steps: readonly Step[] = [
  { from: 2, upgrade: ({ hight, ...rest }) => ({ ...rest, height: hight }) },
  {
    from: 3,
    upgrade: (file) => {
      if (typeof file.height !== 'number') throw new Error('its height is no number');
      return { ...file, height: file.height * 10 };
    },
  },
];

const said = (file: Foreign, current: number, by: readonly Step[]) => {
  const result = migrate(file, current, by);
  return result.ok ? result.value : result.issues;
};

describe('older and newer versions', () => {
  it('takes every step in order, whatever order they are listed in', () => {
    const file = { version: 2, hight: 110 };
    expect(said(file, 4, steps)).toEqual({ version: 4, height: 1100 });
    expect(said(file, 4, [...steps].reverse())).toEqual({ version: 4, height: 1100 });
    expect(file).toEqual({ version: 2, hight: 110 });
  });

  it('starts in the middle, and leaves the current version alone', () => {
    expect(said({ version: 3, height: 110 }, 4, steps)).toEqual({ version: 4, height: 1100 });
    const current = { version: 4, height: 1100 };
    expect(said(current, 4, steps)).toBe(current);
  });

  it('refuses a newer version by its number', () => {
    expect(said({ version: 7 }, 1, [])).toEqual([
      { path: '/version', message: 'written by a newer version: 7, this one reads up to 1' },
    ]);
  });

  it('says which is the oldest it reads', () => {
    expect(said({ version: 1 }, 4, steps)).toEqual([
      { path: '/version', message: 'version 1 can no longer be read; the oldest that can is 2' },
    ]);
  });

  it('says so when a step can make nothing of the file', () => {
    expect(said({ version: 3, height: 'x' }, 4, steps)).toEqual([
      { path: '/version', message: 'could not be brought from version 3 to 4: its height is no number' },
    ]);
  });

  it.each([undefined, null, '1', 0, -1, 1.5, {}, []])('refuses %j as a version', (version) => {
    expect(said({ version }, 4, steps)).toMatchObject([{ path: '/version' }]);
  });

  it('has a step for every version before the current one', () => {
    expect(STEPS.map((step) => step.from).sort()).toEqual(Array.from({ length: VERSION - 1 }, (_, i) => i + 1));
  });
});
