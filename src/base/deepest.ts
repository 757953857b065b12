/** What is known of a unit's depth; `edge`: rear edge of a worktop behind the front frame's face (negative). */
interface Deep {
  readonly depth: number;
  readonly top: { readonly overhang: number };
  readonly carcass?: { readonly worktop?: { readonly edge: number; readonly leftOut?: true } };
}

/** How deep a unit is behind one run, mm from the front edge of its top to the back edge of the top, or of a worktop that reaches further. */
export function deepestOf({ depth, top, carcass }: Deep, run: { readonly crossLines: readonly unknown[] }): number {
  const worktop = carcass?.worktop;
  const made = worktop && !worktop.leftOut && run.crossLines.length > 0;
  return made ? Math.max(depth, top.overhang - worktop.edge) : depth;
}
