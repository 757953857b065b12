import { useState } from 'react';
import { formatLength } from '../../src/base/lengths';
import type { EndCut, Part } from '../../src/vocabulary/part';
import { angle, weight } from '../shell/format';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';

/** Rows shown at a time: a browser lays out this many without delay. */
export const ROWS = 250;

const end = ({ kind, angleDeg }: EndCut): string => (kind === 'square' ? 'square' : `${kind} ${angle(angleDeg)}`);

function Row({
  part,
  material,
  units,
  picked,
}: {
  readonly part: Part;
  readonly material: string;
  readonly units: 'mm' | 'inch';
  readonly picked: boolean;
}) {
  const choose = () => app.getState().select(picked ? null : part.mark, part.run);
  return (
    // The mark's own button serves the keyboard; the rest of the row is a larger target for the mouse.
    <tr className={picked ? 'picked' : undefined} onClick={choose}>
      <th scope="row">
        <button
          type="button"
          aria-pressed={picked}
          onClick={(event) => {
            event.stopPropagation();
            choose();
          }}
        >
          {part.mark}
        </button>
      </th>
      <td>{part.name}</td>
      <td className="number">{formatLength(part.shopLength, units)}</td>
      <td className="number">{formatLength(part.size.width, units)}</td>
      <td className="number">{formatLength(part.size.thickness, units)}</td>
      <td>{end(part.ends[0])}</td>
      <td>{end(part.ends[1])}</td>
      <td>{part.where}</td>
      <td>{material}</td>
      <td className="number">{weight(part.weightKg)}</td>
    </tr>
  );
}

/** Headings, with the unit where the cells below are bare figures. */
const columnsIn = (unit: string): readonly { readonly title: string; readonly number?: boolean }[] => [
  { title: 'Mark' },
  { title: 'Part' },
  { title: `Cut to, ${unit}`, number: true },
  { title: `Width, ${unit}`, number: true },
  { title: `Thickness, ${unit}`, number: true },
  { title: 'First end' },
  { title: 'Second end' },
  { title: 'Where' },
  { title: 'Material' },
  { title: 'Weight', number: true },
];

/** Every thing to cut, in the order in which it is made; choosing a row picks the part out. */
export function PartsList() {
  const { parts, job } = useDesign();
  const selected = useApp((state) => state.view.selected);
  const [asked, setPage] = useState(0);
  const pages = Math.max(1, Math.ceil(parts.length / ROWS));
  const page = Math.min(asked, pages - 1);
  const names = new Map(job.stock.items.map(({ id, name }) => [id, name]));
  return (
    <section className="parts" aria-labelledby="parts-title">
      <div className="parts-head">
        <h2 id="parts-title">Parts list</h2>
        <p>{parts.length} parts</p>
        {pages > 1 ? (
          <nav aria-label="Pages of the parts list">
            <button type="button" disabled={page === 0} onClick={() => setPage(page - 1)}>
              Before
            </button>
            <span>
              Page {page + 1} of {pages}
            </span>
            <button type="button" disabled={page === pages - 1} onClick={() => setPage(page + 1)}>
              Next
            </button>
          </nav>
        ) : null}
      </div>
      {/* A region that scrolls must be reachable by the keyboard. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: see above */}
      <section className="parts-scroll" aria-label="Rows of the parts list" tabIndex={0}>
        <table>
          <thead>
            <tr>
              {columnsIn(job.units === 'mm' ? 'mm' : 'in').map(({ title, number }) => (
                <th key={title} scope="col" className={number ? 'number' : undefined}>
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {parts.slice(page * ROWS, (page + 1) * ROWS).map((part) => (
              <Row
                key={part.mark}
                part={part}
                material={names.get(part.material) ?? part.material}
                units={job.units}
                picked={part.mark === selected}
              />
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}
