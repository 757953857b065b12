import { expect, test } from 'vitest';
import { decisionName, shownAt } from '../../../app/facts/decision-name';
import { gathered } from '../../../app/facts/gather';
import { defaultsOf } from '../../../src/base/fields';
import { design, newJob, rooms } from '../../../src/flow';
import { addWall } from '../../../src/job/edits';
import { bayFields } from '../../../src/job/fields-making';
import type { Finding } from '../../../src/vocabulary/finding';

const finding = (severity: Finding['severity'], rule: string, message: string): Finding => ({
  severity,
  rule,
  subject: {},
  message,
  source: '',
  remedy: '',
});

test('findings of one rule and severity stand together where the first stands, and none is lost', () => {
  const all = [
    finding('stop', 'no-room', 'a'),
    finding('stop', 'too-short', 'b'),
    finding('stop', 'no-room', 'c'),
    finding('warn', 'no-room', 'd'),
    finding('stop', 'no-room', 'e'),
  ];
  const lots = gathered(all).map(({ first, others }) => [first, ...others].map(({ message }) => message));
  expect(lots).toEqual([['a', 'c', 'e'], ['b'], ['d']]);
  expect(gathered([])).toEqual([]);
});

const job = addWall(newJob('Names'), { name: 'back wall', directionDeg: 90, leanDeg: 0 });
const { runs } = design(job).rod;
const name = (path: string) => decisionName(path, job, runs);

test('a path is said as the page names it', () => {
  expect(name('/unit/plan/runs/0/length')).toBe('Run A, Length');
  expect(name('/unit/plan/runs/0/rhythm')).toBe('Run A, Bays in this run');
  expect(name('/unit/plan/runs')).toBe('Plan');
  expect(name('/unit/plan/leftEnd/length')).toBe('Left end, Return length');
  expect(name('/unit/depth')).toBe('Heights and depth, Depth of the top');
  expect(name('/survey/walls/0')).toBe('back wall');
  expect(name('/survey/levels')).toBe('Floor levels');
  expect(name('/survey/levels/2/height')).toBe('Floor level 3, Floor level');
  expect(name('/tools/sawKerf')).toBe('Workshop, Saw kerf');
  expect(name('/stock/items/3')).toBeNull();
});

test('what is made and fitted is said by its own name', () => {
  const fitted = {
    ...job,
    unit: {
      ...job.unit,
      openings: [
        { name: 'Till', run: 1, through: 'top', use: 'pipe', x: 400, z: 100, width: 60, height: 60 },
        { name: '', run: 1, through: 'front', use: 'socket', x: 900, z: 300, width: 145, height: 85 },
      ],
      bays: [{ ...defaultsOf(bayFields), run: 1, bay: 2 }],
    },
  } as const;
  const said = (path: string) => decisionName(path, fitted, runs);
  expect(said('/unit/openings/0')).toBe('Till');
  expect(said('/unit/openings/1/x')).toBe('Opening 2, Middle, along');
  expect(said('/unit/bays/0/count')).toBe('Run A, bay 2, How many');
  expect(said('/unit/bays')).toBe('Single bays');
  expect(said('/unit/joins')).toBe('Taken apart');
  expect(said('/unit/plan/runs/0/flap/width')).toBe('Run A, Flap');
  expect(said('/carry/people')).toBe('The way in, People who carry');
  expect(said('/fit/scribe')).toBe('Allowances for the room, Left on to scribe');
});

test('a join by hand has a name of its own; one that was worked out is decided by the way it is found', () => {
  const path = '/unit/joins/at/1/x';
  const byHand = { ...job, unit: { ...job.unit, joins: { by: 'hand', at: [] } } } as const;
  expect(decisionName(path, byHand, runs)).toBe('Join 2, Join at');
  expect(shownAt(path, byHand)).toBe(path);
  for (const by of ['least', 'none'] as const) {
    const found = { ...job, unit: { ...job.unit, joins: { by } } };
    expect(shownAt(path, found)).toBe('/unit/joins/by');
    expect(decisionName(path, found, runs)).toBe('Taken apart');
    expect(shownAt('/unit/openings/1', found)).toBe('/unit/openings/1');
  }
});

test('every decision of every room has a name', () => {
  for (const room of rooms)
    for (const [key, { label }] of Object.entries(room.fields))
      expect(name(`/unit/elements/${room.kind}/${key}`)).toBe(label === room.label ? label : `${room.label}, ${label}`);
});
