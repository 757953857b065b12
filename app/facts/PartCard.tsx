import type { EndCut, Part } from '../../src/vocabulary/part';
import { angle, exactLength, exactSize, length, weight } from '../shell/format';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';

const cuts: Readonly<Record<EndCut['kind'], string>> = {
  square: 'square',
  mitre: 'mitred',
  bevel: 'bevelled',
  compound: 'compound cut',
};

/** An end in the words of the saw: what it looks like, what the scales are set to, which side stays long. */
function endWords({ kind, angleDeg, sawDeg, tiltDeg, longSide }: EndCut): string {
  if (kind === 'square') return 'square';
  const settings = [
    sawDeg === 0 ? '' : `saw at ${angle(sawDeg)}`,
    tiltDeg === 0 ? '' : `blade tilted ${angle(tiltDeg)}`,
  ];
  const side = longSide === 'none' ? '' : `longer at the ${longSide}`;
  return [`${cuts[kind]} ${angle(angleDeg)}`, ...settings, side].filter(Boolean).join(', ');
}

const Row = ({ name, children }: { readonly name: string; readonly children: React.ReactNode }) => (
  <div className="figure">
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);

function Work({ part, units }: { readonly part: Part; readonly units: 'mm' | 'inch' }) {
  const mm = (value: number) => length(value, units);
  const edges = part.edges.map(({ edge, work, angleDeg, cutter }) =>
    [`${edge} ${work}`, angleDeg === undefined ? '' : angle(angleDeg), cutter ?? ''].filter(Boolean).join(', '),
  );
  return (
    <>
      <Row name="Edges">{edges.length === 0 ? 'square' : edges.join('; ')}</Row>
      {part.grooves.length > 0 ? (
        <Row name="Grooves">
          <ol className="grooves">
            {part.grooves.map(({ centre, width, depth }) => (
              <li key={centre}>
                centre at {mm(centre)}, {mm(width)} wide, {mm(depth)} deep
              </li>
            ))}
          </ol>
        </Row>
      ) : null}
    </>
  );
}

/** All that is to be known of the part picked out. */
export function PartCard() {
  const selected = useApp((state) => state.view.selected);
  const { parts, job, rod } = useDesign();
  const part = parts.find(({ mark }) => mark === selected);
  if (!part) return null;
  const { units } = job;
  const { length: long, width, thickness } = part.size;
  const material = job.stock.items.find(({ id }) => id === part.material)?.name ?? part.material;
  const exact = exactSize([long, width, thickness], units);
  return (
    <section className="facts card" aria-labelledby="card-title">
      <h3 id="card-title">
        <span className="mark">{part.mark}</span> {part.name}
      </h3>
      <dl>
        <Row name="Material">{material}</Row>
        <Row name="Cut to">
          <strong>{length(part.shopLength, units)}</strong>
        </Row>
        <Row name="Exact size">{exact}</Row>
        {part.shortPoint < part.size.length ? (
          <Row name="Short point">{exactLength(part.shortPoint, units)}</Row>
        ) : null}
        <Row name="First end">{endWords(part.ends[0])}</Row>
        <Row name="Second end">{endWords(part.ends[1])}</Row>
        <Work part={part} units={units} />
        <Row name="Place">
          {[rod.runs.find(({ id }) => id === part.run)?.name ?? part.run, part.where].filter(Boolean).join(', ')}
        </Row>
        <Row name="Weight">{weight(part.weightKg)}</Row>
      </dl>
      <button type="button" className="quiet" onClick={() => app.getState().select(null)}>
        Put the card away
      </button>
    </section>
  );
}
