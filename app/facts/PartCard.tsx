import type { Part } from '../../src/vocabulary/part';
import { fixingAmount } from '../sheets/fixing-amount';
import { exactLength, exactSize, length, unbroken, weight } from '../shell/format';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';
import { useMaking } from '../store/making';
import { edgeWords, endWords } from './end-words';

const Row = ({ name, children }: { readonly name: string; readonly children: React.ReactNode }) => (
  <div className="figure">
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);

function Work({ part, exact }: { readonly part: Part; readonly exact: (mm: number) => string }) {
  const edges = part.edges.map((edge) => edgeWords(edge, exact));
  return (
    <>
      <Row name="Edges">{edges.length === 0 ? 'square' : edges.join('; ')}</Row>
      {part.grooves.length > 0 ? (
        <Row name="Grooves">
          <ol className="grooves">
            {part.grooves.map(({ centre, width, depth, radius }) => (
              <li key={centre}>
                centre at {exact(centre)}, {exact(width)} wide, {exact(depth)} deep, radius {exact(radius)}
              </li>
            ))}
          </ol>
        </Row>
      ) : null}
    </>
  );
}

/** Several sentences in one row of the card. */
function Lines({ name, lines }: { readonly name: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <Row name={name}>
      <ol className="card-list">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
    </Row>
  );
}

/** How the part is fixed, what is left on it, and what else is done to it. */
function Fitting({ part, exact }: { readonly part: Part; readonly exact: (mm: number) => string }) {
  const { fixings } = useMaking();
  const own = fixings.parts.filter((fixing) => fixing.part === part.mark);
  return (
    <>
      <Lines
        name="Left on"
        lines={(part.oversize ?? []).map(
          ({ side, amount, on, reason }) =>
            `+${exact(amount)} ${on === 'width' ? 'in width ' : ''}at the ${side}, ${reason}`,
        )}
      />
      <Lines name="Work" lines={part.work ?? []} />
      <Lines name="Hardware" lines={(part.hardware ?? []).map(({ what, count }) => `${count} × ${what}`)} />
      <Lines
        name="Fixed with"
        lines={own.map(({ name, amount, unit, how }) => `${fixingAmount(amount, unit)} ${name}: ${how}`)}
      />
      <Row name="Fitted">
        {part.fitted === 'site' ? 'on site' : `in the workshop, on ${part.inSection ?? 'the unit'}`}
      </Row>
    </>
  );
}

/** Lengths that differ by less read the same on the card, mm. */
const SHOWN_APART = 0.005;

/** All that is to be known of the part picked out. */
export function PartCard() {
  const selected = useApp((state) => state.view.selected);
  const { parts, job, rod } = useDesign();
  const part = parts.find(({ mark }) => mark === selected);
  if (!part) return null;
  const { length: long, width, thickness } = part.size;
  const material = job.stock.items.find(({ id }) => id === part.material)?.name ?? part.material;
  const exact = (mm: number) => exactLength(mm, job.units);
  const slanted = part.ends.some(({ kind }) => kind !== 'square');
  return (
    <section className="facts card" aria-labelledby="card-title">
      <h3 id="card-title">
        <span className="mark">{part.mark}</span> {part.name}
      </h3>
      <dl>
        <Row name="Material">{unbroken(material)}</Row>
        <Row name="Cut to">
          <strong>{length(part.shopLength, job)}</strong>
          {slanted ? ' to the long point' : null}
        </Row>
        <Row name="Exact size">{exactSize([long, width, thickness], job.units)}</Row>
        {part.section === undefined ? null : <Row name="Section">{part.section}</Row>}
        {part.size.length - part.shortPoint >= SHOWN_APART ? (
          <Row name="Short point">{exact(part.shortPoint)}</Row>
        ) : null}
        <Row name="First end">{endWords(part.ends[0], part.size.width)}</Row>
        <Row name="Second end">{endWords(part.ends[1], part.size.width)}</Row>
        <Work part={part} exact={exact} />
        <Fitting part={part} exact={exact} />
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
