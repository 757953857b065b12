import { lazy, Suspense } from 'react';
import { Choice } from '../shell/Choice';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import type { ListName } from '../store/view';
import { PartsList } from './PartsList';

/** The lists about the making come when one is asked for. */
const MakingList = lazy(() => import('./MakingList'));

const LISTS: readonly { readonly value: ListName; readonly label: string }[] = [
  { value: 'parts', label: 'Parts' },
  { value: 'fixings', label: 'Fixings' },
  { value: 'spacers', label: 'Spacers' },
  { value: 'maps', label: 'Fixing map' },
  { value: 'site', label: 'Site work' },
];

/** What the workshop writes down: one list at a time. */
export function Lists() {
  const list = useApp((state) => state.view.list);
  return (
    <div className="lists">
      <Choice legend="Which list" name="list" value={list} options={LISTS} onValue={app.getState().setList} />
      {list === 'parts' ? (
        <PartsList />
      ) : (
        <Suspense fallback={<p className="waiting">Working out the making…</p>}>
          <MakingList list={list} />
        </Suspense>
      )}
    </div>
  );
}
