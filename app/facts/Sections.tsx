import { teamKg, teamRule } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import type { Breach, Section } from '../../src/vocabulary/section';
import { joinWords } from '../decisions/join-edits';
import { figure, length, weight } from '../shell/format';
import { goToDecision } from '../shell/go-to';
import { useDesign } from '../store/hooks';

/** What the people of a job may lift together, and by which rule. */
export function teamWords({ people, liftKg }: Design['job']['carry']): string {
  return `${people} × ${liftKg} kg: ${teamRule(people)} (HSE L23, for teams). Not a legal limit.`;
}

/** A rule broken, in words with its numbers. */
function breachWords({ what, value, limit, source }: Breach, made: Design): string {
  const show = what === 'weight' ? weight : (mm: number) => length(mm, made.job);
  return `${what}: ${show(value)} of ${show(limit)} (${source})`;
}

function Row({ section, made, team }: { readonly section: Section; readonly made: Design; readonly team: number }) {
  const { size, weightKg, breaches, id, parts } = section;
  const [long, deep, high] = [size.length, size.depth, size.height].map((mm) => figure(mm, made.job));
  return (
    <>
      <tr>
        <th scope="row">{id}</th>
        <td className="number">{parts.length}</td>
        <td className={weightKg > team ? 'number over' : 'number'}>{weight(weightKg)}</td>
      </tr>
      <tr className="sizes">
        <td colSpan={3}>
          {long} × {deep} × {high}
        </td>
      </tr>
      {breaches.length > 0 ? (
        <tr className="breaches">
          <td colSpan={3}>
            {breaches.map((breach) => (
              <p key={breach.what}>{breachWords(breach, made)}</p>
            ))}
          </td>
        </tr>
      ) : null}
    </>
  );
}

/** What is carried in one piece each, what it weighs against what the people may lift, and where it is joined. */
export function Sections() {
  const made = useDesign();
  const { sections, joins, job, parts } = made;
  const team = teamKg(job.carry);
  const loose = parts.filter(({ fitted }) => fitted === 'site');
  const looseKg = loose.reduce((sum, part) => sum + part.weightKg, 0);
  return (
    <section className="facts" aria-labelledby="sections-title">
      <h3 id="sections-title">
        Sections <span className="count">{sections.length}</span>
      </h3>
      <table className="sections">
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col" className="number">
              Parts
            </th>
            <th scope="col" className="number">
              Weight
            </th>
          </tr>
          <tr className="sizes">
            <th scope="col" colSpan={3}>
              Length × depth × height
            </th>
          </tr>
        </thead>
        <tbody>
          {sections.map((section) => (
            <Row key={section.id} section={section} made={made} team={team} />
          ))}
          {loose.length > 0 ? (
            <tr>
              <th scope="row">loose, fitted on site</th>
              <td className="number">{loose.length}</td>
              <td className="number">{weight(looseKg)}</td>
            </tr>
          ) : null}
        </tbody>
      </table>
      <p className="aside">
        The people may lift {weight(team)} together. {teamWords(job.carry)}
      </p>
      {joins.length > 0 ? (
        <ul className="joins" aria-label="Joins">
          {joins.map((join) => (
            <li key={join.id}>{joinWords(join, made, (mm) => length(mm, job))}</li>
          ))}
        </ul>
      ) : null}
      <button type="button" className="quiet" onClick={() => goToDecision('/unit/joins/by')}>
        Decide where it is taken apart
      </button>
    </section>
  );
}
