import { cautionsOf } from '../../src/flow';
import { useDesign } from '../store/hooks';

/** What can hurt somebody in making and fitting the unit. */
export function Cautions() {
  const cautions = cautionsOf(useDesign());
  return (
    <section className="facts" aria-labelledby="cautions-title">
      <h3 id="cautions-title">Cautions</h3>
      <ul className="cautions">
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}
