import { alongFace } from '../base/along';
import { extentOf } from '../base/solid/extent';
import type { Design } from '../vocabulary/design';
import type { FixingMap, TimberBehind } from '../vocabulary/making';
import type { Part } from '../vocabulary/part';
import type { RodRun } from '../vocabulary/rod';
import { MOST_GAP } from './contacts';

/**
 * Where there is timber behind the skin, run by run: for whoever fixes something to the finished front. Running measurements from the
 * end of the run's frame line, as on the rod, on the side that the setting-out is measured from; exact, to be rounded where they are shown.
 */
export function mapsOf({ rod, parts }: Pick<Design, 'rod' | 'parts'>): readonly FixingMap[] {
  const { datum } = rod.timber;
  const timber = parts.filter((p) => p.from === 'framed');
  return rod.runs
    .filter((run) => run.sound)
    .map((run) => ({
      run: run.id,
      name: run.name,
      datum,
      timber: timber
        .filter((part) => part.run === run.id)
        .flatMap((part) => behindSkin(part, run, datum))
        .sort((a, b) => a.from - b.from || a.low - b.low || a.to - b.to),
    }));
}

/** A timber whose face lies in the plane of the frame's face; nothing for one that stands further back. */
function behindSkin(part: Part, run: RodRun, datum: 'left' | 'right'): readonly TimberBehind[] {
  const [, face] = alongFace(part, { origin: run.origin, along: run.front });
  if (Math.abs(face) > MOST_GAP) return [];
  const [from, to] = alongFace(part, run);
  const [low, high] = extentOf(part, [0, 0, 1]);
  const running: readonly [number, number] = datum === 'left' ? [from, to] : [run.length - to, run.length - from];
  return [{ part: part.mark, name: part.name, from: running[0], to: running[1], low, high }];
}
