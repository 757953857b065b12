import { alongFace } from '../../base/place';
import type { Part } from '../../vocabulary/part';
import type { Mark, RodRun } from '../../vocabulary/rod';

/** Edges of the skin's pieces, at its back, where they lie on the studs. */
export function marks(run: RodRun, parts: readonly Part[]): readonly Mark[] {
  const starts = parts.map((p) => ({ x: alongFace(run, p.place.origin), mark: p.mark }));
  const reason = (i: number): string => (i === 0 ? 'cladding starts' : 'cladding joint');
  const ends: Mark[] = starts.length
    ? [
        {
          id: `${run.id}-cladding-end`,
          x: run.length,
          lane: 'skin',
          reason: 'cladding ends',
          part: starts[starts.length - 1].mark,
        },
      ]
    : [];
  return [
    ...starts.map(
      ({ x, mark }, i): Mark => ({ id: `${run.id}-cladding-${i}`, x, lane: 'skin', reason: reason(i), part: mark }),
    ),
    ...ends,
  ];
}
