/**
 * Brings the field of a decision into view and puts the cursor in it: the field of the path itself, else of the nearest place
 * below or above it. Nothing happens when no field is shown for it.
 */
export function goToDecision(path: string): void {
  const fields = [...document.querySelectorAll<HTMLElement>('[data-path]')];
  const of = (field: HTMLElement): string => field.dataset.path ?? '';
  const best =
    fields.find((field) => of(field) === path) ??
    fields.find((field) => of(field).startsWith(`${path}/`)) ??
    fields.find((field) => path.startsWith(`${of(field)}/`));
  if (!best) return;
  for (let fold = best.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
    fold.open = true;
  best.scrollIntoView({ block: 'center' });
  best.focus({ preventScroll: true });
}
