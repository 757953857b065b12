import { Fragment } from 'react';
import type { Job } from '../../src/vocabulary/job';
import type { Alike, Part } from '../../src/vocabulary/part';
import { endsBrief } from '../facts/end-words';
import { figure, unbroken, weight } from '../shell/format';
import { app } from '../store/app';
import { markRanges } from './mark-ranges';

interface RowProps {
  readonly job: Job;
  readonly material: string;
  /** On which section, or on site. */
  readonly fitted: string;
  /** Whether the part, or one of those cut alike, is picked out. */
  readonly picked: boolean;
}

interface TakenProps extends Pick<RowProps, 'picked'> {
  readonly part: Part;
  readonly head: string;
  readonly children: React.ReactNode;
}

/** A row that takes its part up, or puts it down again: its head's button by the keyboard, all of it by the mouse. */
function Taken({ part, head, picked, children }: TakenProps) {
  const choose = () => app.getState().select(picked ? null : part.mark, part.run);
  return (
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
          {head}
        </button>
      </th>
      {children}
    </tr>
  );
}

function Cells({ part, material, fitted, job }: { readonly part: Part } & Omit<RowProps, 'picked'>) {
  return (
    <>
      <td className="material">{unbroken(material)}</td>
      <td className="number">{figure(part.shopLength, job)}</td>
      <td className="number">{figure(part.size.width, job)}</td>
      <td className="number">{figure(part.size.thickness, job)}</td>
      <td className="ends">{endsBrief(part.ends)}</td>
      <td className="number">{weight(part.weightKg)}</td>
      <td className="fitted">{fitted}</td>
    </>
  );
}

/** One part. */
export function PartRow({ part, picked, ...rest }: { readonly part: Part } & RowProps) {
  return (
    <Taken part={part} head={part.mark} picked={picked}>
      <td>{part.name}</td>
      <td>{part.where}</td>
      <Cells part={part} {...rest} />
    </Taken>
  );
}

/** Parts that are cut alike; the first of them is the one picked out. */
export function AlikeRow({ alike: { marks, part }, picked, ...rest }: { readonly alike: Alike } & RowProps) {
  return (
    <Taken part={part} head={`${marks.length} off`} picked={picked}>
      <td>{part.name}</td>
      <td className="marks">
        {markRanges(marks).map((range, i) => (
          <Fragment key={range}>
            {i > 0 ? ', ' : ''}
            <span>{range}</span>
          </Fragment>
        ))}
      </td>
      <Cells part={part} {...rest} />
    </Taken>
  );
}
