import { useMaking } from '../store/making';
import type { Heading } from './columns';
import { fixingAmount } from './fixing-amount';
import { Sheet } from './Sheet';
import { Table } from './Table';

const HEADINGS: readonly Heading[] = [
  { title: 'Fixing' },
  { title: 'Wanted', number: true },
  { title: 'Spare', full: 'Allowance on top', number: true },
  { title: 'Packs', full: 'Packs, tubes or bottles that hold both', number: true },
  { title: 'In the book', full: 'Whether the stock book has it' },
];

/** Fixings of the whole unit, with an allowance, in packs as they are bought. */
export function FixingsList() {
  const { fixings } = useMaking();
  return (
    <Sheet title="Fixings" told="for the whole unit; each part’s own stand on its card">
      {fixings.totals.length === 0 ? <p className="said">No part says how it is fixed.</p> : null}
      <Table headings={HEADINGS}>
        {fixings.totals.map((line) => (
          <tr key={`${line.item ?? ''} ${line.name} ${line.unit}`}>
            <th scope="row" className="fixing">
              {line.name}
              <details>
                <summary>{line.rules.length === 1 ? 'its rule' : `its ${line.rules.length} rules`}</summary>
                <ul>
                  {line.rules.map((rule) => (
                    <li key={rule}>{rule}</li>
                  ))}
                </ul>
              </details>
            </th>
            <td className="number">{fixingAmount(line.amount, line.unit)}</td>
            <td className="number">{fixingAmount(line.spare, line.unit)}</td>
            <td className="number">{line.packs > 0 ? line.packs : '–'}</td>
            <td>{line.item === undefined ? 'to be bought in' : 'yes'}</td>
          </tr>
        ))}
      </Table>
    </Sheet>
  );
}
