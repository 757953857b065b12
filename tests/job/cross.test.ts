import { describe, expect, it } from 'vitest';
import { rooms } from '../../src/elements/index.ts';
import { makeReader } from '../../src/job/read.ts';
import { newJob } from '../../src/job/start.ts';
import { writeJob } from '../../src/job/write.ts';
import { edited, type Loose } from './loose.ts';

const read = makeReader(rooms);
const good = writeJob(newJob('Servery', rooms));

function told(change: (job: Loose) => void) {
  const result = read(edited(good, change));
  return result.ok ? [] : result.issues;
}

describe('what one part of a file asks of another', () => {
  it('a stock id must be in the book', () => {
    expect(told((job) => (job.unit.elements.frame.timber = 'sawn-1x1'))).toEqual([
      {
        path: '/unit/elements/frame/timber',
        message:
          'found "sawn-1x1", which is no timber of the book; known are sawn-38x63, sawn-38x89, sawn-47x75, sawn-25x38',
      },
    ]);
  });

  it('and of the kind that is asked for', () => {
    const issues = told((job) => (job.unit.elements.top.hardwood = 'mdf-25'));
    expect(issues).toMatchObject([{ path: '/unit/elements/top/hardwood' }]);
    expect(issues[0]?.message).toMatch(/^found "mdf-25", which is no hardwood of the book; known are oak-32, /);
  });

  it('a cutter must be among the tools, or none where none is allowed', () => {
    expect(told((job) => (job.unit.elements.plinth.cutter = ''))).toEqual([]);
    const message = 'found "ovolo-9", which is no cutter of the book; known are none';
    const wanting = ['pillar/baseCutter', 'pillar/capCutter', 'plinth/cutter'];
    const issues = told((job) => (job.tools.cutters = []));
    expect([...issues].sort((a, b) => a.path.localeCompare(b.path))).toEqual(
      wanting.map((field) => ({ path: `/unit/elements/${field}`, message })),
    );
  });

  it('taking a thing out of the book is told wherever it was used', () => {
    const issues = told((job) => (job.stock.items = job.stock.items.filter((item: Loose) => item.id !== 'mdf-12')));
    expect(issues.map((issue) => issue.path)).toEqual([
      '/unit/elements/cladding/sheet',
      '/unit/elements/panel/railSheet',
    ]);
  });

  it('ids are used once', () => {
    const twice = (list: Loose[]) => list.push(structuredClone(list[0]));
    expect(told((job) => twice(job.stock.items))).toMatchObject([
      {
        path: expect.stringMatching(/^\/stock\/items\/\d+\/id$/),
        message: 'found "mdf-6" again; it is already at /stock/items/0',
      },
    ]);
    expect(told((job) => twice(job.stock.fixings))).toMatchObject([{ path: '/stock/fixings/11/id' }]);
    expect(told((job) => twice(job.tools.cutters))).toMatchObject([{ path: '/tools/cutters/5/id' }]);
  });

  it('an end stands against a wall that was surveyed, or an unnamed one', () => {
    const walls = [{ name: 'bay', directionDeg: 90, leanDeg: 0 }];
    const against = (wall: string | undefined) =>
      told((job) => {
        job.survey.walls = walls;
        job.unit.plan.rightEnd = { kind: 'wall', wall };
      });
    expect(against('bay')).toEqual([]);
    expect(against(undefined)).toEqual([]);
    expect(against('Bay')).toEqual([
      { path: '/unit/plan/rightEnd/wall', message: 'found "Bay", which is no wall of the survey; known are bay' },
    ]);
    expect(told((job) => (job.survey.walls = [...walls, ...walls]))).toEqual([
      { path: '/survey/walls/1/name', message: 'found "bay" again; it is already at /survey/walls/0' },
    ]);
  });

  it('a level lies along a run that is there', () => {
    expect(told((job) => job.survey.levels.push({ run: 2, along: 0, height: 0 }))).toEqual([
      { path: '/survey/levels/0/run', message: 'found 2; allowed is the number of a run, 1 to 1' },
    ]);
    expect(told((job) => job.survey.levels.push({ run: 0, along: 0, height: 0 }))).toMatchObject([
      { path: '/survey/levels/0/run' },
    ]);
  });

  it('a sheet is longer than wide, timber wider than thick, a stock length listed once', () => {
    const at = (id: string, change: (item: Loose) => void) =>
      told((job) => change(job.stock.items.find((item: Loose) => item.id === id))).map((issue) =>
        issue.path.replace(/\d+/, 'n'),
      );
    expect(at('mdf-6', (sheet) => (sheet.width = 2500))).toEqual(['/stock/items/n/width']);
    expect(at('sawn-38x63', (timber) => (timber.thickness = 64))).toEqual(['/stock/items/n/thickness']);
    expect(at('sawn-38x63', (timber) => (timber.lengths[1].length = 2400))).toEqual([
      '/stock/items/n/lengths/1/length',
    ]);
    expect(at('panel-bead-25', (moulding) => (moulding.lengths = []))).toEqual(['/stock/items/n/lengths']);
  });
});

describe('sections', () => {
  const square = [{ to: [20, 0] }, { to: [20, 10] }, { to: [0, 10] }, { to: [0, 0] }];
  const section = (start: unknown, segments: unknown) => {
    const issues = told((job) => {
      job.stock.items.find((item: Loose) => item.id === 'panel-bead-25').section = { start, segments };
    });
    return issues.map(({ path, message }) => `${path.replace(/^.*\/section/, '')} ${message}`).join('; ');
  };

  it('may be a square', () => expect(section([0, 0], square)).toBe(''));
  it('close', () =>
    expect(section([0, 0], square.slice(0, 3))).toBe(
      '/segments/2/to found [0, 10]; a closed section ends where it starts, [0, 0]',
    ));
  it('run counter-clockwise', () => {
    const turned = [{ to: [0, 10] }, { to: [20, 10] }, { to: [20, 0] }, { to: [0, 0] }];
    expect(section([0, 0], turned)).toBe(' runs clockwise; a section runs counter-clockwise round the stuff');
  });
  it('enclose something', () =>
    expect(section([0, 0], [{ to: [20, 0] }, { to: [0, 0] }])).toMatch(/^ encloses nothing/));
  it('do not cross themselves', () => {
    const bow = [{ to: [20, 0] }, { to: [0, 10] }, { to: [20, 15] }, { to: [0, 0] }];
    expect(section([0, 0], bow)).toBe(' a side of the section crosses or touches another');
  });
  it('do not touch themselves', () => {
    const pinched = [{ to: [20, 0] }, { to: [20, 18] }, { to: [10, 0] }, { to: [0, 18] }, { to: [0, 0] }];
    expect(section([0, 0], pinched)).toBe(' a side of the section crosses or touches another');
  });
  it('start from the corner of their back and lower edge', () => {
    const off = [{ to: [40, 5] }, { to: [40, 20] }, { to: [20, 20] }, { to: [20, 5] }];
    expect(section([20, 5], off)).toMatch(/^ its lower edge and its back lie at \[20, 5\]/);
  });
  it('have sides of some length', () =>
    expect(section([0, 0], [{ to: [0, 0] }, ...square])).toBe('/segments/0/to found [0, 0], where the segment starts'));
  it('have arcs that a circle can make', () => {
    const arched = (radius: number) => section([0, 0], square.with(1, { to: [20, 10], radius } as never));
    expect(arched(5)).toBe('');
    expect(arched(-5)).toBe('');
    expect(arched(4.9)).toBe(
      '/segments/1/radius found 4.9; an arc from [20, 0] to [20, 10] needs at least 5.000, or as much below 0 for a hollow',
    );
    expect(arched(0)).toMatch(/^\/segments\/1\/radius found 0; /);
  });
  it('hold points within their range', () =>
    expect(section([0, 0], square.with(0, { to: [-1, 0] }))).toBe(
      '/segments/0/to/0 found -1; allowed is a length from 0 to 400 mm',
    ));
  it('hold points of two numbers', () => {
    expect(section([0], square)).toMatch(/^\/start found a list of 1; allowed is a point/);
    expect(section([0, 0, 0], square)).toMatch(/^\/start found a list of 3; allowed is a point/);
  });
});

describe('cutters', () => {
  const cutter = (start: unknown, segments: unknown) => {
    const issues = told((job) => {
      job.tools.cutters[0] = { ...job.tools.cutters[0], start, segments };
    });
    return issues.map(({ path, message }) => `${path.replace('/tools/cutters/0', '')} ${message}`).join('; ');
  };
  it('may be a quarter round', () => expect(cutter([0, -9], [{ to: [-9, 0], radius: 9 }])).toBe(''));
  it('start on the face', () =>
    expect(cutter([-1, -9], [{ to: [-9, 0] }])).toMatch(/^\/start found \[-1, -9\]; a cut starts on the face/));
  it('end on the edge', () =>
    expect(cutter([0, -9], [{ to: [-9, -1] }])).toMatch(/^\/segments\/0\/to found \[-9, -1\]; a cut ends on the edge/));
  it('keep within the stuff', () =>
    expect(cutter([0, -12], [{ to: [-4, 0], radius: 6.5 }])).toMatch(
      /^\/segments a moulded edge passes \(.*\), outside the stuff/,
    ));
});
