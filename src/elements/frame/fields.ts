import { choice, count, length, stock } from '../../base/fields';

/** Softwood front frame: plates, studs, noggins. Defaults: common practice, no source, unless named. */
export const fields = {
  timber: stock({
    of: 'timber',
    label: 'Frame timber',
    default: 'sawn-38x63',
    help: 'Used for plates, studs and noggins alike.',
  }),
  lay: choice({
    label: 'Studs laid',
    options: [
      { value: 'edge', label: 'on edge (deep)' },
      { value: 'flat', label: 'on flat (shallow)' },
    ],
    default: 'edge',
    help: 'On edge the wider side goes back into the unit; on flat it lies in the plane of the front.',
  }),
  centres: length({
    label: 'Stud centres, at most',
    min: 150,
    max: 900,
    default: 400,
    help: '400 or 600 are usual; 406.7 suits 1220 sheets.',
  }),
  method: choice({
    label: 'Studs set out',
    options: [
      { value: 'module', label: 'on the module' },
      { value: 'equal', label: 'equally' },
    ],
    default: 'module',
    help: 'On the module: whole centres from one end, an odd gap last; where a pillar or joint takes a line’s place, that gap is divided equally. Equally: equal gaps no wider than the centres.',
  }),
  datum: choice({
    label: 'Module from the',
    options: [
      { value: 'left', label: 'left end' },
      { value: 'right', label: 'right end' },
    ],
    default: 'left',
    help: 'The end from which the module is measured, as seen from the front.',
    when: { field: 'method', is: ['module'] },
  }),
  nogginRows: count({
    label: 'Noggin rows',
    min: 0,
    max: 4,
    default: 1,
    help: 'Equally spaced rows besides those that a fixing asks for.',
  }),
  cableWay: length({
    label: 'Cable way through noggins',
    min: 0,
    max: 60,
    default: 0,
    help: 'A hole of this diameter up through the middle of every noggin; 0: none. A third of the depth at most. Wiring is for a licensed electrician.',
  }),
} as const;
