import { useApp } from '../store/hooks';
import { TOLD_APART } from './surface';

/** What the colours and crosses in the picture mean. */
export function Legend({ stepping }: { readonly stepping: boolean }) {
  const apart = useApp((state) => state.view.apart > 0);
  const site = useApp((state) => state.view.siteShown);
  const rows = [
    ...(stepping ? [{ colour: TOLD_APART.now, words: 'goes on in this step' }] : []),
    ...(!stepping && site ? [{ colour: TOLD_APART.site, words: 'fitted on site' }] : []),
    ...(!stepping && apart ? [{ colour: null, words: 'crosses: centre of gravity, and where to take hold' }] : []),
  ];
  if (rows.length === 0) return null;
  return (
    <ul className="scene-legend" aria-label="Legend">
      {rows.map(({ colour, words }) => (
        <li key={words}>
          {colour ? <span className="swatch" style={{ background: colour }} /> : null}
          {words}
        </li>
      ))}
    </ul>
  );
}
