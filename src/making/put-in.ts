import type { Design } from '../vocabulary/design';
import type { Told } from './set-up';
import { sentence } from './step-words';

const THINGS: Readonly<Record<string, string>> = {
  appliance: 'put in the appliance',
  sink: 'hang the sink bowl',
  bin: 'put in the bin',
};

/** What isn't made but goes in at the end: appliances, bowls and bins, in the bays that take them. One refused by a `stop` is left out. */
export function puttingIn({ rod, findings }: Design): readonly Told[] {
  const refused = new Set(
    findings.flatMap(({ severity, subject }) => (severity === 'stop' ? (subject.path ?? []) : [])),
  );
  return rod.runs.flatMap((run) =>
    run.backBays.flatMap(({ bay = 0, wish }): Told[] => {
      const thing = wish && !refused.has(wish.path) ? THINGS[wish.purpose] : undefined;
      if (!thing) return [];
      const licensed =
        wish?.purpose === 'bin'
          ? ''
          : ', by its maker’s instructions; wiring, gas and plumbing are for licensed people';
      return [{ place: 'site', parts: [], what: sentence(`${thing} in bay ${bay + 1} of run ${run.id}${licensed}`) }];
    }),
  );
}
