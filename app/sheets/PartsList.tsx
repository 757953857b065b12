import { useMemo, useState } from 'react';
import { alike } from '../../src/flow';
import type { Alike, Part } from '../../src/vocabulary/part';
import { Choice } from '../shell/Choice';
import { Pages } from '../shell/Pages';
import { Scrolled } from '../shell/Scrolled';
import { useApp, useDesign } from '../store/hooks';
import { ONE_BY_ONE, TOGETHER } from './columns';
import { fittedOf, fittedTogether } from './fitted';
import { AlikeRow, PartRow } from './rows';
import { Table } from './Table';

/** Rows shown at a time: a browser lays out this many without delay. */
export const ROWS = 250;

type Way = 'single' | 'together';
const ways: readonly { readonly value: Way; readonly label: string }[] = [
  { value: 'single', label: 'One by one' },
  { value: 'together', label: 'Alike together' },
];

/** The row in which a part stands, one by one or among those cut alike; -1 where it is not listed. */
const rowOf = (mark: string, rows: readonly Part[] | readonly Alike[]): number =>
  rows.findIndex((row) => ('marks' in row ? row.marks.includes(mark) : row.mark === mark));

/** Every thing to cut, in the order in which it is made, one by one or like ones together; choosing a row picks the part out. */
export function PartsList() {
  const { parts, job } = useDesign();
  const selected = useApp((state) => state.view.selected);
  const [way, setWay] = useState<Way>('single');
  const [asked, setPage] = useState(0);
  const lots = useMemo(() => alike(parts), [parts]);
  const names = useMemo(() => new Map(job.stock.items.map(({ id, name }) => [id, name])), [job.stock]);
  const fitted = useMemo(() => new Map(parts.map((part) => [part.mark, fittedOf(part)])), [parts]);
  // What has been picked out elsewhere is turned to, once: from there the pages are turned by hand.
  const [turnedTo, setTurnedTo] = useState<string | null>(null);
  if (selected !== turnedTo) {
    setTurnedTo(selected);
    const at = selected === null ? -1 : rowOf(selected, way === 'single' ? parts : lots);
    if (at >= 0) setPage(Math.floor(at / ROWS));
  }
  const pages = Math.max(1, Math.ceil((way === 'single' ? parts : lots).length / ROWS));
  const page = Math.min(asked, pages - 1);
  const here = <T,>(rows: readonly T[]): readonly T[] => rows.slice(page * ROWS, (page + 1) * ROWS);
  const material = (id: string) => names.get(id) ?? id;
  return (
    <section className="parts" aria-labelledby="parts-title">
      <div className="parts-head">
        <h2 id="parts-title">Parts list</h2>
        <p>
          {parts.length} parts{way === 'together' ? `, ${lots.length} different` : ''}; sizes in{' '}
          {job.units === 'mm' ? 'mm' : 'inches'}
        </p>
        <Choice legend="How the parts are listed" name="parts-way" value={way} options={ways} onValue={setWay} />
        <Pages label="Pages of the parts list" page={page} pages={pages} onPage={setPage} />
      </div>
      <Scrolled label="Rows of the parts list">
        {way === 'single' ? (
          <Table headings={ONE_BY_ONE}>
            {here(parts).map((part) => (
              <PartRow
                key={part.mark}
                part={part}
                job={job}
                material={material(part.material)}
                fitted={fittedOf(part)}
                picked={part.mark === selected}
              />
            ))}
          </Table>
        ) : (
          <Table headings={TOGETHER}>
            {here(lots).map((lot) => (
              <AlikeRow
                key={lot.part.mark}
                alike={lot}
                job={job}
                material={material(lot.part.material)}
                fitted={fittedTogether(lot.marks.map((mark) => fitted.get(mark) ?? ''))}
                picked={selected !== null && lot.marks.includes(selected)}
              />
            ))}
          </Table>
        )}
      </Scrolled>
    </section>
  );
}
