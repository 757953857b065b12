import { type ReactNode, useEffect, useState } from 'react';

/** At most so long until something is done that was put off until the page has nothing else to do, ms. */
const AT_MOST = 2000;

/** Does something when the page has nothing else to do. */
export function whenIdle(act: () => void): void {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(act, { timeout: AT_MOST });
  else setTimeout(act, 200);
}

/** Code that is fetched once, when it is needed or before. */
export interface Code<Part> {
  /** What has come already. */
  readonly part: Part | undefined;
  /** Rejects where it can't be had; another try may have more luck. */
  fetch(): Promise<Part>;
}

export function codeOf<Part>(load: () => Promise<{ readonly default: Part }>): Code<Part> {
  let part: Part | undefined;
  let coming: Promise<Part> | undefined;
  const keep = (code: { readonly default: Part }): Part => {
    part = code.default;
    return part;
  };
  const giveUp = (reason: unknown): never => {
    coming = undefined;
    throw reason;
  };
  return {
    get part() {
      return part;
    },
    fetch() {
      coming ??= load().then(keep).catch(giveUp);
      return coming;
    },
  };
}

interface Props<Part> {
  readonly code: Code<Part>;
  /** Stands there until it has come. */
  readonly waiting: string;
  readonly children: (part: Part) => ReactNode;
}

/**
 * A part of the screen whose code comes after the rest; at once where it is there. React's own way lets what is waited for stand for 0.3 s at least,
 * and waits even for code that is there.
 */
export function Late<Part>({ code, waiting, children }: Props<Part>) {
  const [come, setCome] = useState(code.part !== undefined);
  const [failed, setFailed] = useState<{ readonly reason: unknown } | null>(null);
  useEffect(() => {
    if (!come)
      code.fetch().then(
        () => setCome(true),
        (reason: unknown) => setFailed({ reason }),
      );
  }, [come, code]);
  if (failed) throw failed.reason;
  const { part } = code;
  return come && part !== undefined ? children(part) : <p className="waiting">{waiting}</p>;
}
