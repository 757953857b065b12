import { rooms } from '../../src/flow';
import { setElement } from '../../src/job/edits';
import type { Decision, Field } from '../../src/vocabulary/field';
import type { Job } from '../../src/vocabulary/job';
import type { Room } from '../../src/vocabulary/room';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import { FieldInput } from './FieldInput';
import { Section } from './Section';

const groups = [
  { group: 'front', title: 'Front' },
  { group: 'frame', title: 'Frame' },
  { group: 'behind', title: 'Behind the front' },
  { group: 'top', title: 'Top' },
] as const;

/** What a room's group says where the job says nothing: the field's own default. */
const decisionIn = (decisions: Job['unit']['elements'][string] | undefined, key: string, field: Field): Decision =>
  decisions?.[key] ?? field.default;

function RoomForm({ room }: { readonly room: Pick<Room, 'kind' | 'label' | 'fields'> }) {
  const decisions = useApp((state) => state.document.unit.elements[room.kind]);
  const shown = Object.entries(room.fields).filter(([, { when }]) => {
    const other = when && room.fields[when.field];
    if (!when || !other) return true;
    const value = decisionIn(decisions, when.field, other);
    return typeof value !== 'object' && when.is.includes(value);
  });
  return (
    <fieldset className="thing">
      <legend>{room.label}</legend>
      {shown.map(([key, field]) => (
        <FieldInput
          key={key}
          field={field}
          value={decisionIn(decisions, key, field)}
          path={`/unit/elements/${room.kind}/${key}`}
          onValue={(value) => app.getState().edit(field.label, (job) => setElement(job, room.kind, key, value))}
        />
      ))}
    </fieldset>
  );
}

/** The rooms' own decisions, made from their fields: nothing here knows what kinds there are. */
export function RoomForms() {
  return groups.map(({ group, title }) => {
    const here = rooms.filter((room) => room.group === group);
    return here.length === 0 ? null : (
      <Section key={group} title={title}>
        {here.map((room) => (
          <RoomForm key={room.kind} room={room} />
        ))}
      </Section>
    );
  });
}
