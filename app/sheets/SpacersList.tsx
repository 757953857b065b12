import { exactLength, figure } from '../shell/format';
import { useDesign } from '../store/hooks';
import { useMaking } from '../store/making';
import type { Heading } from './columns';
import { Sheet } from './Sheet';
import { Table } from './Table';

const HEADINGS: readonly Heading[] = [
  { title: 'Cut to', number: true },
  { title: 'Exact', number: true },
  { title: 'Used', full: 'How many times', number: true },
  { title: 'From' },
  { title: 'Where' },
];

/** Blocks against which the frames are built: one for each different clear gap. */
export function SpacersList() {
  const { job } = useDesign();
  const { spacers } = useMaking();
  const stock = new Map(job.stock.items.map(({ id, name }) => [id, name]));
  const uses = spacers.reduce((sum, { times }) => sum + times, 0);
  return (
    <Sheet title="Spacers" told={`${spacers.length} different, used ${uses} times; offcuts of the frame timber do`}>
      <Table headings={HEADINGS}>
        {spacers.map((spacer) => (
          <tr key={`${spacer.stock} ${spacer.length}`}>
            <th scope="row" className="number">
              {figure(spacer.shopLength, job)}
            </th>
            <td className="number">{exactLength(spacer.length, job.units)}</td>
            <td className="number">{spacer.times}</td>
            <td>{stock.get(spacer.stock) ?? spacer.stock}</td>
            <td>{spacer.where.join('; ')}</td>
          </tr>
        ))}
      </Table>
    </Sheet>
  );
}
