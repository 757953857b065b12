import type { Decision, Field, StockField } from '../../src/vocabulary/field';
import type { Job } from '../../src/vocabulary/job';
import { useApp } from '../store/hooks';
import { ChoiceInput, CountInput, LengthInput, LengthsInput, NumberInput, SwitchInput } from './inputs';

interface Props {
  readonly field: Field;
  readonly value: Decision;
  readonly onValue: (value: Decision) => void;
  readonly path: string;
  /** Told what is typed as it is typed, where it is typed at all. */
  readonly onTyping?: (value: Decision | undefined) => void;
}

/** What the stock book, or the tools, offer for a field. */
function offered(job: Job, field: StockField): readonly { readonly value: string; readonly label: string }[] {
  const things = field.of === 'cutter' ? job.tools.cutters : job.stock.items.filter((item) => item.kind === field.of);
  const options = things.map(({ id, name }) => ({ value: id, label: name }));
  return field.optional ? [{ value: '', label: 'none' }, ...options] : options;
}

function StockInput({
  field,
  value,
  onValue,
  path,
}: Omit<Props, 'field' | 'onTyping'> & { readonly field: StockField }) {
  const job = useApp((state) => state.document);
  return (
    <ChoiceInput
      label={field.label}
      help={field.help}
      value={String(value)}
      options={offered(job, field)}
      onValue={onValue}
      path={path}
    />
  );
}

/** The input for one decision, by the kind of its field. */
export function FieldInput({ field, value, onValue, path, onTyping }: Props) {
  switch (field.kind) {
    case 'length':
      return <LengthInput field={field} value={Number(value)} onValue={onValue} path={path} onTyping={onTyping} />;
    case 'number':
      return <NumberInput field={field} value={Number(value)} onValue={onValue} path={path} />;
    case 'count':
      return <CountInput field={field} value={Number(value)} onValue={onValue} path={path} onTyping={onTyping} />;
    case 'lengths':
      return <LengthsInput field={field} value={Array.isArray(value) ? value : []} onValue={onValue} path={path} />;
    case 'switch':
      return <SwitchInput label={field.label} help={field.help} value={value === true} onValue={onValue} path={path} />;
    case 'choice':
      return (
        <ChoiceInput
          label={field.label}
          help={field.help}
          value={String(value)}
          options={field.options}
          onValue={onValue}
          path={path}
        />
      );
    case 'stock':
      return <StockInput field={field} value={value} onValue={onValue} path={path} />;
  }
}
