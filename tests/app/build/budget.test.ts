import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { initialBytes, initialChunks, type WeighedChunk } from '../../../app/build/budget.ts';

const chunk = (fileName: string, imports: string[] = [], isEntry = false): WeighedChunk => ({
  fileName,
  code: `export const name = '${fileName}';`,
  imports,
  isEntry,
});

describe('the budget of initial JavaScript', () => {
  const entry = chunk('main.js', ['a.js', 'b.js'], true);
  const a = chunk('a.js', ['shared.js']);
  const b = chunk('b.js', ['shared.js', 'a.js']);
  const shared = chunk('shared.js', ['main.js']);
  const lazy = chunk('lazy.js', ['only-lazy.js']);
  const onlyLazy = chunk('only-lazy.js');
  const all = [entry, a, b, shared, lazy, onlyLazy];

  it('weighs the entry and all that it statically imports, each once, and nothing lazy', () => {
    const names = initialChunks(all).map(({ fileName }) => fileName);
    expect(names.sort()).toEqual(['a.js', 'b.js', 'main.js', 'shared.js']);
  });

  it('adds up the gzipped sizes', () => {
    const expected = [entry, a, b, shared].reduce((sum, { code }) => sum + gzipSync(code).length, 0);
    expect(initialBytes(all)).toBe(expected);
  });

  it('finds nothing to weigh where there is no entry', () => {
    expect(initialChunks([a, b])).toEqual([]);
  });
});
