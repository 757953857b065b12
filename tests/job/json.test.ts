import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultOf } from '../../src/job/json.ts';

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('the place where a text stops being JSON', () => {
  it.each([
    ['', 1, 1, 'a value'],
    ['{"a": 1,}', 1, 9, 'a name in double quotes'],
    ['{\n  "a": 1\n  "b": 2\n}', 3, 3, '"," or "}"'],
    ['[1, 2', 1, 6, '"," or "]"'],
    ['[1 2]', 1, 4, '"," or "]"'],
    ['{"a" 1}', 1, 6, '":"'],
    ['{a: 1}', 1, 2, 'a name in double quotes'],
    ["{'a': 1}", 1, 2, 'a name in double quotes'],
    ['{"a": }', 1, 7, 'a value'],
    ['{"a": NaN}', 1, 7, 'a value'],
    ['{"a": "x\n"}', 1, 7, 'a finished text'],
    ['{"a": "\\q"}', 1, 7, 'a finished text'],
    ['{} {}', 1, 4, 'the end of the file'],
    ['[01]', 1, 3, '"," or "]"'],
    ['{"a": 1} // end', 1, 10, 'the end of the file'],
  ])('%j: line %i, column %i, where %s should be', (text, line, column, wanted) => {
    const fault = faultOf(text);
    expect(fault).toMatchObject({ line, column });
    expect(fault?.message).toContain(`where ${wanted} should be`);
  });

  it('finds a fault exactly where the machine’s own parser refuses (seed 7302)', () => {
    const mangled = fc
      .tuple(
        fc.json(),
        fc.nat(200),
        fc.nat(3),
        fc.constantFrom('', ',', '"', '}', ']', '[', '{', '0', ' ', '\\', 'e', '-', ':', '\n'),
      )
      .map(([text, at, cut, put]) => text.slice(0, at) + put + text.slice(at + cut));
    fc.assert(
      fc.property(mangled, (text) => {
        expect(faultOf(text) === null).toBe(parses(text));
      }),
      { seed: 7302, numRuns: 3000 },
    );
  });

  it('reads nesting and texts of a million without giving way', () => {
    const deep = '['.repeat(1_000_000);
    expect(faultOf(deep)).toMatchObject({ line: 1, column: 1_000_001 });
    expect(faultOf(`${deep}${']'.repeat(1_000_000)}`)).toBeNull();
    expect(faultOf(`["${'x\\n'.repeat(1_000_000)}"`)).toMatchObject({ line: 1, column: 3_000_004 });
  });
});
