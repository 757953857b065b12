import type { Design } from '../../../src/vocabulary/design';
import type { Found } from '../sample';

/** Every part says how it is held: by what rule, and by fixings of some kind. */
export function held({ parts }: Design): Found {
  const wrong = parts.flatMap(({ mark, name, holds }) => {
    if (!holds || holds.length === 0) return [`${mark} (${name}) is held by nothing`];
    return holds.flatMap((h) =>
      h.rule && h.through >= 0 ? [] : [`${mark} (${name}) is held by ${h.by} through ${h.through}: ${h.rule}`],
    );
  });
  return { wrong, looked: parts.length };
}
