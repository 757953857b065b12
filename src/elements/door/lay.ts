import type { Box } from '../../base/box';
import type { Finding } from '../../vocabulary/finding';
import type { Bench } from '../../vocabulary/room';
import { faultOf } from './fault';
import { type Decisions, fieldOf, frontsOf, type InBay } from './field';
import { poor } from './poor';

/** The fronts of one bay, each in its box. */
export interface Laid extends InBay {
  readonly purpose: 'doors' | 'drawers';
  readonly fronts: readonly Box[];
}

/** Works out the fronts of every bay that wants doors or drawers; where they can't be made a finding says so, with the nearest that can. */
export function layFronts(
  decisions: Decisions,
  { rod, book }: Pick<Bench, 'rod' | 'book'>,
): { readonly laid: readonly Laid[]; readonly findings: readonly Finding[] } {
  const laid: Laid[] = [];
  const findings: Finding[] = [];
  const sheet = book.item('sheet', decisions.sheet);
  const stop = book.item('timber', decisions.stop);
  const { carcass } = rod;
  for (const run of rod.runs)
    for (const bay of run.backBays) {
      const purpose = bay.wish?.purpose;
      if (!bay.wish || !carcass || (purpose !== 'doors' && purpose !== 'drawers')) continue;
      const wished = { purpose, count: bay.wish.count, sheet, frame: rod.timber.depth };
      const lying = (lie: Decisions['lie']): InBay =>
        fieldOf({ ...decisions, lie }, carcass, run, bay, sheet.thickness, stop);
      // To lie between the posts is a remedy only where that can be made.
      const between = (): boolean =>
        decisions.lie === 'overlay' && !faultOf({ ...decisions, lie: 'inset' }, lying('inset'), wished, () => false);
      const one = lying(decisions.lie);
      const refused = faultOf(decisions, one, wished, between);
      if (refused) {
        findings.push(refused);
        continue;
      }
      const fronts = frontsOf(one.field, purpose, bay.wish.count, decisions.gap);
      laid.push({ ...one, purpose, fronts });
      findings.push(...poor(one, purpose, fronts[0], rod, between));
    }
  return { laid, findings };
}
