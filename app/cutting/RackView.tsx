import { useState } from 'react';
import { readRack } from '../../src/cut';
import type { Offcut } from '../../src/vocabulary/cut-plan';
import { download } from '../effects/download';
import { issueLines } from '../effects/issue-lines';
import { Table } from '../sheets/Table';
import { Dialog } from '../shell/Dialog';
import { FileButton } from '../shell/FileButton';
import { Scrolled } from '../shell/Scrolled';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import { rack, useCutting } from './board';
import { OffcutForm } from './OffcutForm';
import { Printed } from './Printed';
import { takenInWords } from './rack';
import { stuffName } from './stuff';
import type { Say } from './words';

/** A bigger file holds no rack. */
const MOST_BYTES = 5_000_000;

/** The joiner's own offcuts: they go with no job, and are used first by the next one. */
export function RackView({ say, unit }: { readonly say: Say; readonly unit: string }) {
  const offcuts = useCutting((state) => state.rack);
  const items = useApp((state) => state.document.stock.items);
  const [shown, setShown] = useState<Offcut | 'new' | null>(null);
  const close = () => setShown(null);
  const sizeOf = ({ length, width }: Offcut) =>
    [length, ...(width === undefined ? [] : [width])].map(say).join(' × ') + unit;
  return (
    <section className="parts" aria-labelledby="rack-title">
      <div className="parts-head">
        <h2 id="rack-title">Offcut rack</h2>
        <p>{offcuts.length} in this browser, kept with you and not with the job; used before anything is bought</p>
        <div className="tools">
          <button type="button" onClick={() => setShown('new')}>
            Add an offcut
          </button>
          {offcuts.length > 0 ? (
            <Printed label="Print labels" title="Offcut labels">
              <ul className="labels">
                {offcuts.map((offcut) => (
                  <li key={offcut.mark}>
                    <b>{offcut.mark}</b>
                    <span>{stuffName(offcut.material, items)}</span>
                    <span className="size">{sizeOf(offcut)}</span>
                    {offcut.note ? <small>{offcut.note}</small> : null}
                  </li>
                ))}
              </ul>
            </Printed>
          ) : null}
          <RackFile offcuts={offcuts} />
        </div>
      </div>
      <Scrolled label="Rows: Offcut rack">
        {offcuts.length === 0 ? (
          <p className="said">The rack is empty. When a plan is cut, what it leaves is put in here.</p>
        ) : (
          <Table
            headings={[
              { title: 'Mark' },
              { title: 'Stuff' },
              { title: 'Size', number: true },
              { title: 'Note' },
              { title: 'Change' },
            ]}
            label="Offcuts"
          >
            {offcuts.map((offcut) => (
              <tr key={offcut.mark}>
                <th scope="row">{offcut.mark}</th>
                <td>{stuffName(offcut.material, items)}</td>
                <td className="number">{sizeOf(offcut)}</td>
                <td>{offcut.note ?? ''}</td>
                <td className="doings">
                  <button type="button" aria-label={`Change ${offcut.mark}`} onClick={() => setShown(offcut)}>
                    Change
                  </button>
                  <button
                    type="button"
                    aria-label={`Throw out ${offcut.mark}`}
                    onClick={() => void rack.change(`Throw out ${offcut.mark}`, { out: [offcut.mark] })}
                  >
                    Throw out
                  </button>
                </td>
              </tr>
            ))}
          </Table>
        )}
      </Scrolled>
      {shown ? (
        <Dialog title={shown === 'new' ? 'Add an offcut' : `Change ${shown.mark}`} onClose={close}>
          <OffcutForm offcut={shown === 'new' ? null : shown} onDone={close} />
        </Dialog>
      ) : null}
    </section>
  );
}

/** The rack as a file: to another browser, or for the command line. */
function RackFile({ offcuts }: { readonly offcuts: readonly Offcut[] }) {
  const take = async (file: File) => {
    const say = (lines: readonly string[]) =>
      app.getState().notify({ tone: 'trouble', text: `“${file.name}” holds no rack. Nothing is put in.`, lines });
    if (file.size > MOST_BYTES) return say([`It holds ${file.size} bytes; a rack has at most ${MOST_BYTES}.`]);
    const read = readRack(await file.text());
    if (!read.ok) return say(issueLines(read.issues));
    await rack.change(`Take in ${file.name}`, { in: read.value }, takenInWords);
  };
  return (
    <>
      <button
        type="button"
        onClick={() => download(`${JSON.stringify(offcuts, null, 2)}\n`, 'offcuts.json', 'application/json')}
      >
        Save the rack
      </button>
      <FileButton label="Take in a file" of="Rack file to take in" onFile={(file) => void take(file)} />
    </>
  );
}
