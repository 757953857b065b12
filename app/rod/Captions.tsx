import type { Layout } from './layout';
import type { Strip } from './strips';

const CAPTION: Readonly<Record<Strip['lane'], string>> = {
  front: 'front',
  skin: 'skin',
  timber: 'timber',
  behind: 'behind',
};

/** What each lane is of, beside it. */
export function Captions({ layout }: { readonly layout: Layout | null }) {
  return (
    <div className="rod-captions" aria-hidden="true">
      {layout?.plan ? <span style={{ top: layout.plan.top, height: layout.plan.height }}>top</span> : null}
      {layout?.lanes.map(({ strip, top, height }) => (
        <span key={strip.lane} style={{ top, height }}>
          {CAPTION[strip.lane]}
        </span>
      ))}
    </div>
  );
}
