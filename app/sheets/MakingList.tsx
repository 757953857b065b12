import type { ListName } from '../store/view';
import { FixingMaps } from './FixingMaps';
import { FixingsList } from './FixingsList';
import { SiteList } from './SiteList';
import { SpacersList } from './SpacersList';

/** One of the lists about the making. */
export default function MakingList({ list }: { readonly list: Exclude<ListName, 'parts'> }) {
  switch (list) {
    case 'fixings':
      return <FixingsList />;
    case 'spacers':
      return <SpacersList />;
    case 'maps':
      return <FixingMaps />;
    case 'site':
      return <SiteList />;
  }
}
