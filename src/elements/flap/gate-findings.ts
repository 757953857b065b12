import { tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { Gap } from './gap';
import { between, FINGERS, subjectOf } from './words';

/** A gate lower than this is none (common practice, no source). */
export const LEAST_GATE = 100;

/** What is said of a gate: how it opens, and what it meets. */
export function gateFindings(
  gap: Gap,
  inTheWay: readonly { readonly run: string }[],
  sheet: { readonly length: number; readonly width: number },
): readonly Finding[] {
  const { gate } = gap;
  const subject = subjectOf(gap);
  const [wide, high] = [gate.to - gate.from, gate.high - gate.low];
  const out = Math.max(0, wide - (gate.face - gap.back));
  const swings: Finding = {
    severity: 'note',
    rule: 'gate-swings',
    subject,
    value: wide,
    message: `The gate ${between(gap)}, ${tenth(wide)} mm wide, opens to the back: open, it stands ${tenth(out)} mm out behind the jamb.`,
    source: 'geometry of the gate',
    remedy: 'Keep that floor clear behind the gap.',
    caution: FINGERS,
  };
  const hits = inTheWay.map(
    ({ run }): Finding => ({
      severity: 'warn',
      rule: 'gate-hits-run',
      subject,
      value: wide,
      message: `The gate ${between(gap)} needs ${tenth(wide)} mm of floor to open to the back; run ${run} stands in it.`,
      source: 'geometry of the plan',
      remedy: 'Hang it at the other side, move the flap along, or leave the gate out.',
    }),
  );
  const [longer, shorter] = [Math.max(wide, high), Math.min(wide, high)];
  const big: Finding = {
    severity: 'warn',
    rule: 'gate-larger-than-sheet',
    subject,
    value: longer > sheet.length ? longer : shorter,
    limit: longer > sheet.length ? sheet.length : sheet.width,
    message: `The gate ${between(gap)} is ${tenth(wide)} × ${tenth(high)} mm; the sheet is ${tenth(sheet.length)} × ${tenth(sheet.width)} mm.`,
    source: 'sheet size from the stock book',
    remedy: 'Choose a larger sheet.',
  };
  return [swings, ...hits, ...(longer > sheet.length || shorter > sheet.width ? [big] : [])];
}

export const noGate = (gap: Gap, value: number): Finding => ({
  severity: 'stop',
  rule: 'gate-no-height',
  subject: subjectOf(gap),
  value,
  limit: LEAST_GATE,
  message: `Between ${tenth(gap.gate.low)} mm above the floor and the bearers ${tenth(Math.max(0, value))} mm are left for the gate ${between(gap)}; ${LEAST_GATE} mm is the least.`,
  source: 'common practice, no source',
  remedy: 'Raise the unit, or lower the gate or the plinth blocks. The gate is left out.',
});
