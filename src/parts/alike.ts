import type { Alike, Part } from '../vocabulary/part';

/** Identical parts together, in the order of the first of each: same name, material, size to a hundredth, ends, edges, grooves, flutes' stops, holes, other work, mitred with neighbours or not, and stuff left on. */
export function alike(parts: readonly Part[]): readonly Alike[] {
  const groups = new Map<string, { marks: string[]; part: Part }>();
  for (const part of parts) {
    const key = likeness(part);
    const group = groups.get(key);
    if (group) group.marks.push(part.mark);
    else groups.set(key, { marks: [part.mark], part });
  }
  return [...groups.values()];
}

/** All that decides how a part is cut, as text. Numbers to a hundredth, so that the noise of the last digits doesn't part twins. */
function likeness(part: Part): string {
  const {
    kind,
    name,
    material,
    section,
    size,
    shortPoint,
    ends,
    edges,
    grooves,
    work = [],
    oversize = [],
    meets,
    shape,
  } = part;
  const holes = shape.kind === 'board' ? shape.holes : [];
  const stopped = shape.kind === 'stick' ? shape.stopped : undefined;
  const cut = [
    kind,
    name,
    material,
    section,
    size,
    shortPoint,
    ends,
    edges,
    grooves,
    holes,
    stopped,
    work,
    oversize,
    meets,
  ];
  return JSON.stringify(cut, (_, value) => (typeof value === 'number' ? Math.round(value * 100) / 100 + 0 : value));
}
