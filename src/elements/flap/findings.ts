import { tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';
import type { Rod } from '../../vocabulary/rod';
import { type Decisions, type Gap, passageOf } from './gap';
import { between, FINGERS, subjectOf } from './words';

/** Less than this people pass sideways (common practice, no source). */
const LEAST_PASSAGE = 600;
/** Clear width of new doors in buildings other than dwellings, straight on; 750 in existing ones. */
const DOOR_PASSAGE = 800;
const DOORS =
  'Approved Document M volume 2, table 2: clear width of doors, 800 mm in new and 750 in existing buildings (second-hand)';

/** What one may be asked to lift at arm's length to shoulder height, kg: HSE lifting filter, men 5, women 3. */
const ARMS_LENGTH_KG = 5;

/** What is said of a flap that hangs. */
export function flapFindings(gap: Gap, rod: Rod, flapKg: number, longest: number): readonly Finding[] {
  const long = gap.to - gap.from - 2 * gap.clear;
  const subject = subjectOf(gap);
  const held = flapKg / 2;
  const centre = rod.top.overhang - rod.depth / 2;
  const behind = Math.max(gap.back - centre, centre - gap.face);
  const heavy: Finding = {
    severity: 'warn',
    rule: 'flap-heavy',
    subject,
    value: held,
    limit: ARMS_LENGTH_KG,
    message: `The flap ${between(gap)} weighs ${tenth(flapKg)} kg; the hands take half of it, ${tenth(held)} kg, at arm's length to shoulder height. ${ARMS_LENGTH_KG} kg there is the most for men by the lifting filter, 3 for women.`,
    source: 'HSE lifting filter (from memory); not a legal limit',
    remedy: 'A narrower gap, a thinner or lighter top, or a spring or counterweight.',
    caution: FINGERS,
  };
  const tips: Finding = {
    severity: 'warn',
    rule: 'flap-tips',
    subject,
    value: behind,
    limit: 0,
    message: `The middle of the flap ${between(gap)} lies ${tenth(behind)} mm beyond its bearers, which reach from front to back as far as the frames do: left to itself it tips.`,
    source: 'geometry of the flap',
    remedy:
      'Carry the top on cross frames behind, for the jambs and bearers to reach back; else a catch must hold it down.',
    caution: FINGERS,
  };
  const tooLong: Finding = {
    severity: 'warn',
    rule: 'flap-longer-than-stock',
    subject,
    value: long,
    limit: longest,
    message: `The flap ${between(gap)} is ${tenth(long)} mm long; the longest stock is ${tenth(longest)} mm.`,
    source: 'stock length from the stock book',
    remedy: 'A narrower gap, or longer stock.',
  };
  const opens: Finding = {
    severity: 'note',
    rule: 'flap-opens',
    subject,
    value: rod.height + long,
    message: `Lifted, the flap ${between(gap)} stands ${tenth(long)} mm above the top, to ${tenth(rod.height + long)} mm above the floor, beside its hinges.`,
    source: 'geometry of the flap',
    remedy: 'Keep lamps, shelves and taps clear of it there.',
    caution: FINGERS,
  };
  return [
    ...(held > ARMS_LENGTH_KG ? [heavy] : []),
    ...(behind > 0 ? [tips] : []),
    ...(long > longest ? [tooLong] : []),
    opens,
  ];
}

/** The way through when all is open, against doors. */
export function passage(gap: Gap, { stop }: Decisions): readonly Finding[] {
  const value = passageOf(gap, stop);
  if (value >= DOOR_PASSAGE) return [];
  const narrow = value < LEAST_PASSAGE;
  return [
    {
      severity: narrow ? 'warn' : 'note',
      rule: 'flap-passage',
      subject: subjectOf(gap),
      value,
      limit: narrow ? LEAST_PASSAGE : DOOR_PASSAGE,
      message: `Open, the gap ${between(gap)} is ${tenth(Math.max(0, value))} mm clear between ${gap.flap.gate ? 'bearers, open gate and stop' : 'the bearers'}. ${narrow ? `${LEAST_PASSAGE} mm is the least to walk through; doors` : 'Doors'} have ${DOOR_PASSAGE} mm, 750 in existing buildings.`,
      source: narrow ? `common practice, no source; ${DOORS}` : DOORS,
      remedy: 'Widen the gap. Where people in wheelchairs serve or pass, local rules come first.',
    },
  ];
}
