interface Props {
  readonly name: string;
  readonly value: string;
  /** What the last edit changed, or null. */
  readonly by: string | null;
}

/** One fact: its name, its value, and in red-brown what the last edit did to it. */
export function Figure({ name, value, by }: Props) {
  return (
    <div className="figure">
      <dt>{name}</dt>
      <dd>
        {by ? (
          <span className="by">
            <span className="unseen">changed by </span>
            {by}
          </span>
        ) : null}
        <span className="value">{value}</span>
      </dd>
    </div>
  );
}
