import type { RunFraming } from '../vocabulary/backing';
import type { Layout } from '../vocabulary/making';
import type { FrameTimber, Rod } from '../vocabulary/rod';
import { spacersOf } from './spacers';

/** What of a frame may be decided otherwise. The names are those of the decisions. */
export type Setting = Pick<FrameTimber, 'centres' | 'method' | 'datum' | 'nogginRows'>;

/** Stud centres in use besides the one decided, mm: 16 and 24 inches and their metric cousins, and half of 600 (common practice, no source). */
const USUAL_CENTRES: readonly number[] = [300, 400, 406.4, 600];
/** No more rows of noggins are tried than so many above what is decided. */
const MORE_ROWS = 1;

/**
 * Ways to set out the frames, fewest different spacers first; of those alike the one with the least timber, then the one nearest to what
 * is decided. The decided centres and rows are kept to: centres are never wider, rows never fewer. The layout as it is stands among them.
 * @param frame makes the framing with a setting. @param kind under which the decisions stand. @param mostRows that may be decided.
 */
export function layoutsOf(
  now: Setting,
  limits: { readonly kind: string; readonly leastCentres: number; readonly mostRows: number; readonly step: number },
  frame: (setting: Setting) => { readonly rod: Rod; readonly framing: readonly RunFraming[] },
): readonly Layout[] {
  return settingsOf(now, limits)
    .map((setting): Layout => {
      const { rod, framing } = frame(setting);
      return {
        spacers: spacersOf(framing, rod, limits.step).length,
        studs: framing.reduce((sum, run) => sum + run.studs.length, 0),
        noggins: framing.reduce((sum, run) => sum + run.noggins.length, 0),
        decisions: KEYS.filter((key) => setting[key] !== now[key]).map((key) => ({
          kind: limits.kind,
          key,
          value: setting[key],
        })),
      };
    })
    .sort(
      (a, b) =>
        a.spacers - b.spacers || a.studs + a.noggins - b.studs - b.noggins || a.decisions.length - b.decisions.length,
    );
}

const KEYS = ['method', 'centres', 'datum', 'nogginRows'] as const;

function settingsOf(now: Setting, { leastCentres, mostRows }: Parameters<typeof layoutsOf>[1]): readonly Setting[] {
  const closer = USUAL_CENTRES.filter((c) => c < now.centres && c >= leastCentres);
  const rows = Array.from({ length: MORE_ROWS + 1 }, (_, i) => now.nogginRows + i).filter((n) => n <= mostRows);
  return [now.centres, ...closer].flatMap((centres) =>
    (rows.length > 0 ? rows : [now.nogginRows]).flatMap((nogginRows): Setting[] => [
      // The datum means nothing where the gaps are equal, so it stays as it is.
      { centres, nogginRows, method: 'equal', datum: now.datum },
      { centres, nogginRows, method: 'module', datum: 'left' },
      { centres, nogginRows, method: 'module', datum: 'right' },
    ]),
  );
}
