interface End {
  readonly kind: string;
  readonly toReturn: boolean;
  readonly deflectionDeg: number;
  readonly neighbour?: string;
}

interface Runs {
  readonly runs: readonly { readonly id: string; readonly crossLines: readonly { readonly why: string }[] }[];
}

/**
 * Whether what stands behind the neighbour comes up to an outside corner from the other side, with no join or bare length before it: so that
 * a worktop, and its bearer, runs on into the corner.
 */
export function meetsBehind({ runs }: Runs, end: End, side: 'left' | 'right'): boolean {
  if (end.kind !== 'corner' || end.toReturn || end.deflectionDeg <= 0) return false;
  const theirs = runs.find((r) => r.id === end.neighbour)?.crossLines ?? [];
  return (side === 'left' ? theirs[theirs.length - 1] : theirs[0])?.why === 'end';
}
