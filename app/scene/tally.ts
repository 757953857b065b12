import { useEffect } from 'react';

/**
 * Counts on the picture itself how often the components of the view were drawn by React (`data-renders`): turning the view
 * must not add to it. Call it in every component of the view.
 */
export function useTally(find: () => HTMLElement | SVGElement | null | undefined): void {
  useEffect(() => {
    const picture = find();
    if (picture) picture.dataset.renders = String(Number(picture.dataset.renders ?? 0) + 1);
  });
}
