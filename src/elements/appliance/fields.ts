import { stock } from '../../base/fields';

/** What stands behind the front and is not made here. Default: common practice, no source. */
export const fields = {
  bearer: stock({
    of: 'timber',
    label: 'Sink bearers',
    default: 'sawn-38x63',
    help: 'On edge under the top or worktop, one at each side of the bowl; and behind it where no rail runs there.',
  }),
} as const;
