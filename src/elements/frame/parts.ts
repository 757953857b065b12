import { rectangle } from '../../base/outline';
import { polygonArea } from '../../base/polygon';
import { lying, type Stuff, standing, straight } from '../../base/stuff';
import { leftOf, tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { CornerFillet, RunFraming } from '../../vocabulary/backing';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Outline } from '../../vocabulary/geometry';
import type { PartDraft } from '../../vocabulary/part';
import type { Rod, RodRun } from '../../vocabulary/rod';
import type { Bench, Made } from '../../vocabulary/room';
import { boredNoggin, isBored, unfit } from './cable-way';
import type { fields } from './fields';
import { filletHolds, nogginHolds, plateHolds, studHolds } from './holds';

type Decisions = Pick<DecisionsOf<typeof fields>, 'cableWay'>;

/** Plates through, studs between the plates, noggins between the studs: butt joints. */
export function parts({ cableWay }: Decisions, { rod, framing, book }: Bench): Made {
  if (rod.frameHeight - rod.frameLow < 3 * rod.timber.face) return { drafts: [], findings: [noHeight(rod)] };
  const section = rectangle(rod.timber.face, rod.timber.depth);
  const made = framing.map((run) =>
    ofRun(rod, section, rod.runs.find((r) => r.id === run.run) as RodRun, run, cableWay),
  );
  const widest = book.item('timber', rod.timber.stock);
  return {
    drafts: made.flat(),
    findings: [...unfit(cableWay, rod.timber), ...tooBig(framing, widest.width, widest.thickness)],
  };
}

/** Nothing more is said of most pieces. */
const NOTHING = {};

/** What the setting-out says of a stud that nothing else asked for. */
const BY_CENTRES = 'centres';

function ofRun(
  rod: Rod,
  section: Outline,
  run: RodRun,
  { plates, studs, noggins, fillets }: RunFraming,
  cableWay: number,
): readonly PartDraft[] {
  const { face, depth, stock } = rod.timber;
  const low = rod.frameLow;
  const high = rod.frameHeight - face;
  const draft = (
    code: string,
    name: string,
    where: string,
    { shape, place }: Stuff,
    holds: PartDraft['holds'],
    { work, byCentres, section: worded }: Pick<PartDraft, 'work' | 'byCentres' | 'section'> = NOTHING,
  ): PartDraft => ({
    kind: 'frame',
    code,
    name,
    where,
    run: run.id,
    material: stock,
    finish: 'bare',
    from: 'framed',
    edges: [],
    grooves: [],
    shape,
    place,
    holds,
    work,
    byCentres,
    section: worded,
  });
  const plate = (where: 'bottom' | 'top', z: number) => {
    const holds = plateHolds(where, face);
    return plates.map(({ from, to }) =>
      draft('PL', 'plate', where, lying(run, section, { from, to, d: -depth, z }), holds),
    );
  };
  const holdsOfStud = studHolds(face);
  return [
    ...plate('bottom', low),
    ...plate('top', high),
    ...studs.map((s) => {
      const stuff = standing(run, section, { x: s.to, d: -depth, low: low + face, high });
      const byCentres = s.reasons.every((reason) => reason === BY_CENTRES);
      return draft('ST', 'stud', s.reasons.join(', '), stuff, holdsOfStud, { byCentres });
    }),
    ...noggins.map((n) => {
      const bored = isBored(n.to - n.from, cableWay, depth) ? boredNoggin(run, n, depth, cableWay) : undefined;
      const stuff = bored ?? lying(run, section, { from: n.from, to: n.to, d: -depth, z: n.low });
      return draft('NG', 'noggin', n.reasons.join(', '), stuff, nogginHolds, bored);
    }),
    ...fillets.map((f) =>
      draft('FI', 'corner fillet', 'corner', fillet(run, f, low, rod.frameHeight), filletHolds(thicknessOf(f)), {
        section: `three-cornered, ${sidesOf(f).map(tenth).join(' × ')} mm`,
      }),
    ),
  ];
}

/** Below this a frame has plates and no studs: the least stud is as long as the timber's face. */
const noHeight = ({ frameHeight, frameLow, timber }: Rod): Finding => ({
  severity: 'stop',
  rule: 'frame-no-height',
  subject: { path: '/unit/height' },
  value: frameHeight - frameLow,
  limit: 3 * timber.face,
  message: `The frame has ${leftOf(frameHeight - frameLow)} of height under the top; two plates and the shortest stud of ${tenth(timber.face)} mm timber need ${tenth(3 * timber.face)} mm.`,
  source: 'geometry of the frame',
  remedy: 'Raise the unit, or choose a thinner top or lighter timber. No frame is made.',
});

const sidesOf = ({ points }: CornerFillet): readonly number[] =>
  points.map((p, i) => Math.hypot(points[(i + 1) % 3][0] - p[0], points[(i + 1) % 3][1] - p[1])).sort((a, b) => b - a);

/** Of a fillet that lies on its longest side. */
const thicknessOf = ({ points }: CornerFillet): number => (2 * Math.abs(polygonArea(points))) / sidesOf({ points })[0];

/** The fillet stands the whole height; its section is the wedge itself, u to the left along the run, v outward. */
function fillet(run: RodRun, { points }: CornerFillet, low: number, high: number): Stuff {
  return standing(run, straight(points.map(([x, d]) => [-x, d] as const)), { x: 0, d: 0, low, high });
}

/**
 * Fillets that can't be ripped from one piece of the frame timber are glued up: the joiner should know. Those of one section, as the two at
 * a sharp corner, are said once.
 */
function tooBig(framing: readonly RunFraming[], width: number, thickness: number): readonly Finding[] {
  const big = framing.flatMap(({ run, fillets }) =>
    fillets
      .map((f) => ({ run, longest: sidesOf(f)[0], across: thicknessOf(f) }))
      .filter((f) => f.across > thickness + SAME_LENGTH || f.longest > width + SAME_LENGTH),
  );
  const alike = new Map<string, typeof big>();
  for (const one of big) {
    const section = `${tenth(one.longest)} × ${tenth(one.across)} mm`;
    alike.set(section, [...(alike.get(section) ?? []), one]);
  }
  return [...alike].map(([section, [first, ...others]]): Finding => {
    const runs = [...new Set([first, ...others].map((one) => one.run))];
    const many = others.length > 0;
    return {
      severity: 'note',
      rule: 'fillet-glued-up',
      subject: { run: first.run },
      value: Math.max(first.across, first.longest),
      limit: width,
      message: `The corner fillet${many ? 's' : ''} of run${runs.length > 1 ? 's' : ''} ${runs.join(' and ')} ${many ? 'are' : 'is'} ${section} in section; the frame timber is ${tenth(width)} × ${tenth(thickness)} mm.`,
      source: 'geometry of the corner',
      remedy: `Glue ${many ? 'each' : 'it'} up from two pieces, or rip it from larger stuff.`,
    };
  });
}
