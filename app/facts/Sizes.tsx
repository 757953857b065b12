import { amount, change, length, unbroken, weight } from '../shell/format';
import { useDesign } from '../store/hooks';
import { Figure } from './Figure';
import { useBefore } from './useBefore';

/** Over all: how big, how heavy, how many. */
export function Sizes() {
  const { totals, job } = useDesign();
  const before = useBefore()?.totals;
  const mm = (value: number) => length(value, job);
  const count = (value: number) => String(value);
  const by = (now: number, then: number | undefined, show: (value: number) => string) =>
    then === undefined ? null : change(now, then, show);
  return (
    <section className="facts" aria-labelledby="sizes-title">
      <h3 id="sizes-title">Over all</h3>
      <dl>
        <Figure
          name="Length"
          value={mm(totals.overall.length)}
          by={by(totals.overall.length, before?.overall.length, mm)}
        />
        <Figure
          name="Depth"
          value={mm(totals.overall.depth)}
          by={by(totals.overall.depth, before?.overall.depth, mm)}
        />
        <Figure
          name="Height"
          value={mm(totals.overall.height)}
          by={by(totals.overall.height, before?.overall.height, mm)}
        />
        <Figure name="Weight" value={weight(totals.weightKg)} by={by(totals.weightKg, before?.weightKg, weight)} />
        <Figure name="Parts" value={count(totals.parts)} by={by(totals.parts, before?.parts, count)} />
      </dl>
    </section>
  );
}

/** How much of each material the parts hold, net. */
export function Materials() {
  const { totals } = useDesign();
  const before = useBefore()?.totals;
  return (
    <section className="facts" aria-labelledby="materials-title">
      <h3 id="materials-title">Materials in the parts</h3>
      <dl>
        {totals.materials.map(({ material, name, unit, amount: now }) => {
          const show = (value: number) => amount(value, unit);
          const then = before?.materials.find((other) => other.material === material)?.amount ?? 0;
          return (
            <Figure
              key={material}
              name={unbroken(name)}
              value={show(now)}
              by={before ? change(now, then, show) : null}
            />
          );
        })}
      </dl>
      <p className="aside">Net, before cutting: what is lost at the saw comes on top.</p>
    </section>
  );
}
