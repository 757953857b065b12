import { Dialog } from './Dialog';
import { shortcuts } from './shortcuts';

/** The keys, and how lengths are typed. */
export function Help({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog title="Keys" onClose={onClose}>
      <dl className="keys">
        {shortcuts.map(({ label, keys }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>
              <kbd>{keys}</kbd>
            </dd>
          </div>
        ))}
      </dl>
      <p>
        A field is read when you press Enter or leave it; Escape brings the old value back. Lengths may be typed as
        1203.5, 1.2 m or 47 1/4".
      </p>
    </Dialog>
  );
}
