import type { Part } from '../vocabulary/part';
import type { Rod } from '../vocabulary/rod';
import type { Section } from '../vocabulary/section';
import { boxOf, piecesBySection } from './box';

/** What leaves the workshop as one section: its parts, the box they stand in, what they weigh. */
export interface Bundle extends Pick<Section, 'id' | 'pieces' | 'size' | 'weightKg'> {
  readonly parts: readonly Part[];
}

/** The parts of a unit by section, left to right. Sections of which nothing is made are left out. */
export function bundlesOf(parts: readonly Part[], rod: Rod): readonly Bundle[] {
  const own = new Map<string, Part[]>();
  for (const part of parts) {
    if (part.inSection === undefined) continue;
    const mine = own.get(part.inSection);
    if (mine) mine.push(part);
    else own.set(part.inSection, [part]);
  }
  return [...piecesBySection(rod)].flatMap(([id, pieces]): Bundle[] => {
    const mine = own.get(id);
    if (!mine) return [];
    const weightKg = mine.reduce((sum, part) => sum + part.weightKg, 0);
    return [{ id, pieces, parts: mine, size: boxOf(mine, rod, pieces), weightKg }];
  });
}
