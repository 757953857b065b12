/** What a finding is about: a part's mark, a run's letter, or a path into the job. */
export interface Subject {
  readonly part?: string;
  readonly run?: string;
  readonly path?: string;
}

/** A result of a check. `stop`: it can't be built so; `warn`: it will show or cost; `note`: worth knowing. */
export interface Finding {
  readonly severity: 'stop' | 'warn' | 'note';
  readonly rule: string;
  readonly subject: Subject;
  readonly message: string;
  /** The number found and the number allowed, mm unless the message says otherwise. */
  readonly value?: number;
  readonly limit?: number;
  readonly source: string;
  readonly remedy: string;
  readonly caution?: string;
}
