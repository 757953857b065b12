import { boundsOf } from '../../base/outline';
import { pastCorners } from '../../base/place';
import { lying } from '../../base/stuff';
import { tenth } from '../../base/tenth';
import { SAME_LENGTH } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { PartDraft } from '../../vocabulary/part';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { fields } from './fields';

/** Fixings go this far below the upper edge, clear of the moulding of a usual skirting (common practice, no source). */
const FIXING_BELOW_EDGE = 30;

/** Ready-moulded skirting between the plinth blocks. */
export const skirting: Room<typeof fields> = {
  kind: 'skirting',
  label: 'Skirting',
  group: 'front',
  layer: 'skirting',
  fields,
  demands({ moulding }, book) {
    const { max } = boundsOf(book.item('moulding', moulding).section);
    return { layer: { name: 'skirting', on: 'cladding', thickness: max[1] }, heights: { skirting: max[0] } };
  },
  backing: (_, { rod }) =>
    rod.runs.flatMap((run) =>
      run.bays.map(
        (bay): Backing => ({
          kind: 'noggin',
          run: run.id,
          z: rod.heights.skirting - FIXING_BELOW_EDGE,
          from: bay.footFrom,
          to: bay.footTo,
          reason: 'skirting',
        }),
      ),
    ),
  parts,
  /** Its ends are the blocks' edges, marked already. */
  marks: () => [],
};

function parts({ moulding }: DecisionsOf<typeof fields>, { rod, book }: Bench): Made {
  const { section } = book.item('moulding', moulding);
  const { inner, outer } = rod.layers.skirting;
  const drafts: PartDraft[] = [];
  const findings: Finding[] = [];
  for (const run of rod.runs)
    for (const bay of run.bays) {
      const clear = bay.footTo - bay.footFrom;
      const past = pastCorners(run, { from: bay.footFrom, to: bay.footTo, inner, outer });
      if (clear > 0 && past > SAME_LENGTH) findings.push(pastMitre(run.id, bay.index + 1, past));
      else if (clear > 0)
        drafts.push({
          kind: 'skirting',
          code: 'SK',
          name: 'skirting',
          run: run.id,
          material: moulding,
          finish: 'paint',
          from: 'finished',
          edges: [],
          grooves: [],
          where: `bay ${bay.index + 1}`,
          ...lying(run, section, { from: bay.footFrom, to: bay.footTo, d: inner, z: 0 }),
        });
      else
        findings.push({
          severity: 'stop',
          rule: 'blocks-overlap',
          subject: { run: run.id, path: '/unit/elements/plinth/overhang' },
          value: clear,
          limit: 0,
          message: `The plinth blocks of bay ${bay.index + 1} in run ${run.id} overlap by ${tenth(-clear)} mm; there is no room for skirting.`,
          source: 'geometry of the setting-out',
          remedy: 'Narrower blocks, or fewer bays.',
        });
    }
  const blocks = rod.heights.plinth ?? 0;
  if (drafts.length > 0 && rod.heights.skirting > blocks + SAME_LENGTH)
    findings.push(aboveBlocks(rod.heights.skirting, blocks));
  const proud = outer - (rod.layers.plinth?.outer ?? outer);
  if (proud > 0)
    findings.push({
      severity: 'warn',
      rule: 'skirting-proud',
      subject: { path: '/unit/elements/skirting/moulding' },
      value: outer - inner,
      limit: outer - inner - proud,
      message: `The skirting stands ${tenth(proud)} mm proud of the plinth blocks: its ends will show.`,
      source: 'common practice, no source',
      remedy: 'Choose thicker blocks or thinner skirting.',
    });
  return { drafts, findings };
}

/** Where a corner is sharp and its boards narrow, the piece beside them would run into the neighbour's. */
const pastMitre = (run: string, bay: number, value: number): Finding => ({
  severity: 'stop',
  rule: 'skirting-past-mitre',
  subject: { run, path: '/unit/elements/pillar/cornerWidth' },
  value,
  limit: 0,
  message: `The skirting of bay ${bay} in run ${run} would run ${tenth(value)} mm past the mitre of the corner.`,
  source: 'geometry of the corner',
  remedy: 'Widen the corner boards, or turn the corner less. This piece is left out.',
});

/** Skirting that rises above the blocks shows its cut ends. */
const aboveBlocks = (value: number, limit: number): Finding => ({
  severity: 'warn',
  rule: 'skirting-above-block',
  subject: { path: '/unit/elements/skirting/moulding' },
  value,
  limit,
  message: `The skirting is ${tenth(value)} mm high and the plinth blocks ${tenth(limit)} mm: its ends show above them.`,
  source: 'common practice, no source',
  remedy: 'Choose lower skirting or higher blocks.',
});
