import type { Layout } from '../vocabulary/making';
import type { Room } from '../vocabulary/room';

/** What has to be decided for a layout, as the forms call it: "Noggin rows: 2; Stud centres, at most: 450 mm". `length`: how lengths are written. */
export function layoutWords({ decisions }: Layout, rooms: readonly Room[], length: (mm: number) => string): string {
  return decisions
    .map(({ kind, key, value }) => {
      const field = rooms.find((room) => room.kind === kind)?.fields[key];
      const label = field?.label ?? key;
      if (field?.kind === 'length' && typeof value === 'number') return `${label}: ${length(value)}`;
      const option = field?.kind === 'choice' ? field.options.find((one) => one.value === value)?.label : undefined;
      return `${label}: ${option ?? String(value)}`;
    })
    .join('; ');
}
