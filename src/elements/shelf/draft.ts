import type { Stuff } from '../../base/stuff';
import type { PartDraft } from '../../vocabulary/part';
import type { Laid } from './lay';

/** A draft of one piece of a bay's shelves; `more` says what is its own. */
export const draftOf = (
  { run, bay }: Laid,
  code: 'SH' | 'SB' | 'LN',
  name: string,
  material: string,
  where: string,
  { shape, place }: Stuff,
  more: Partial<PartDraft>,
): PartDraft => ({
  kind: 'shelf',
  code,
  name,
  run: run.id,
  material,
  finish: 'paint',
  from: 'finished',
  edges: [],
  grooves: [],
  where: `bay ${(bay.bay ?? 0) + 1}, ${where}`,
  shape,
  place,
  ...more,
});
