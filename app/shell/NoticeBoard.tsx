import { app } from '../store/app';
import { useApp } from '../store/hooks';

/** What there is to say; trouble is read out at once. */
export function NoticeBoard() {
  const notice = useApp((state) => state.notice);
  return (
    // Trouble is an alert of its own; a live region round it would have it read out twice.
    <div className="notices" aria-live={notice?.tone === 'trouble' ? 'off' : 'polite'}>
      {notice ? (
        <div className={`notice ${notice.tone}`} role={notice.tone === 'trouble' ? 'alert' : undefined}>
          <div>
            <p>{notice.text}</p>
            {notice.lines && notice.lines.length > 0 ? (
              <ul>
                {notice.lines.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            ) : null}
          </div>
          <button type="button" onClick={() => app.getState().notify(null)}>
            Dismiss
          </button>
        </div>
      ) : null}
    </div>
  );
}
