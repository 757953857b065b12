import { describe, expect, it } from 'vitest';
import { rooms } from '../../src/flow';
import { bookOf } from '../../src/job/book';
import { layOut } from '../../src/setting-out/lay-out';
import { setOut } from '../../src/setting-out/rod';
import type { JoinMark } from '../../src/vocabulary/job';
import { openingOf } from '../elements/behind-job';
import { jobOf, type Said } from '../elements/job-of';

/** A unit laid out in one piece; and joined, once by what was said of the whole, once all anew. */
function laid(said: Said, joins: readonly JoinMark[]) {
  const job = jobOf(said);
  const book = bookOf(job);
  const order = { rooms, job, book };
  const rodWith = setOut(
    job,
    rooms.map((room) => room.demands(job.unit.elements[room.kind], book)),
  );
  const whole = layOut(order, rodWith([]));
  const rod = rodWith(joins);
  const number = (kind: string) => rooms.findIndex((room) => room.kind === kind);
  return { whole, joined: layOut(order, rod, whole), anew: layOut(order, rod), of: number };
}

const socket = (x: number) => openingOf({ name: 'socket', x, z: 75, width: 60, height: 40 });

describe('a unit laid out once more with joins', () => {
  // Five bays in 3600 between pillars of 140: the second begins at 832, with room for a strip of 40 there; a pillar's middle is at 2146.
  const STRIP = { run: 1, x: 852 };

  it('is as if it were laid out anew, and asks only rooms that mind', () => {
    const { whole, joined, anew, of } = laid({ runs: [{ length: 3600 }] }, [{ run: 1, x: 2146 }]);
    expect(joined.rod.runs[0].joins).toHaveLength(1);
    expect(joined.rod.runs[0].joins[0].behind).toBe('pillar');
    expect(joined).toEqual(anew);
    for (const kind of ['pillar', 'panel', 'skirting'])
      expect(joined.said[of(kind)].made, kind).toBe(whole.said[of(kind)].made);
    expect(joined.said[of('frame')].made).not.toEqual(whole.said[of('frame')].made);
  });

  it('asks the panels again where a strip covers the join', () => {
    const { whole, joined, anew, of } = laid(
      { runs: [{ length: 3600 }], elements: { panel: { rows: 2, rail: true } } },
      [STRIP],
    );
    expect(joined.rod.runs[0].joins[0].behind).toBe('cover');
    expect(joined).toEqual(anew);
    // The rail stops at the strip.
    expect(joined.said[of('panel')].made).not.toEqual(whole.said[of('panel')].made);
  });

  it('cuts the skirting anew where an opening has lost its place to a join', () => {
    const { whole, joined, anew, of } = laid({ runs: [{ length: 3600 }], openings: [socket(900)] }, [STRIP]);
    expect(whole.openings).toHaveLength(1);
    expect(joined.openings).toHaveLength(0);
    expect(joined).toEqual(anew);
    expect(joined.said[of('skirting')].made).not.toEqual(whole.said[of('skirting')].made);
  });
});
