import type { Offcut } from '../../vocabulary/cut-plan';
import type { Issue, Result } from '../../vocabulary/result';
import { MOST } from '../most';
import { type Found, groupOf, listOf, maybe, numberOf, textOf } from './fields';
import { parsed } from './json';
import { fewest, SIZE } from './limits';

/** Reads the offcut rack from a file: a JSON list of offcuts, maybe an empty one. Never throws; issues carry JSON pointers into the file. */
export function readRack(text: string): Result<readonly Offcut[]> {
  const value = parsed(text);
  if (!value.ok) return value;
  const issues: Issue[] = [];
  const file: Found = { value: value.value, path: '', issues };
  const offcuts = listOf(file, { least: 0, most: MOST.pieces, of: 'offcuts' }, offcutOf);
  return issues.length > 0 ? { ok: false, issues: fewest(issues) } : { ok: true, value: offcuts };
}

function offcutOf(found: Found): Offcut {
  const given = groupOf(found, ['mark', 'material', 'length', 'width', 'note']);
  return {
    mark: textOf(given('mark')),
    material: textOf(given('material')),
    length: numberOf(given('length'), SIZE),
    width: maybe(given('width'), (width) => numberOf(width, SIZE)),
    note: maybe(given('note'), textOf),
  };
}
