import { expect, test } from 'vitest';
import { decisionName } from '../../../app/facts/decision-name';
import { gathered } from '../../../app/facts/gather';
import { design, newJob, rooms } from '../../../src/flow';
import { addWall } from '../../../src/job/edits';
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

test('every decision of every room has a name', () => {
  for (const room of rooms)
    for (const [key, { label }] of Object.entries(room.fields))
      expect(name(`/unit/elements/${room.kind}/${key}`)).toBe(label === room.label ? label : `${room.label}, ${label}`);
});
