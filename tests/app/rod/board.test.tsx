import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { Board } from '../../../app/rod/Board';
import { layOut } from '../../../app/rod/layout';
import type { Strip } from '../../../app/rod/strips';
import { figure, length } from '../../../app/shell/format';

const block = { mark: 'A-ST4', name: 'stud', from: 1181, to: 1219, low: 38, high: 1022 };
const stroke = (id: string, x: number, part: string | null, ...reasons: string[]) => ({
  id,
  lane: 'timber' as const,
  x,
  reasons,
  part,
});
const strips: readonly Strip[] = [
  {
    lane: 'timber',
    blocks: [block],
    widths: [
      { from: 800, to: 1181 },
      { from: 1219, to: 1221 },
    ],
    strokes: [stroke('a', 1200, 'A-ST4', 'stud: sheet joint', 'stud: pillar'), stroke('b', 1600.25, null, 'join')],
  },
];
const nothing = (): void => undefined;

function drawn(selected: string | null): string {
  const job = { units: 'mm', tools: { roundingStep: 0.5 } } as const;
  const format = (mm: number) => figure(mm, job);
  return renderToStaticMarkup(
    <Board
      layout={layOut(
        { length: 3600 },
        strips,
        { width: 1000, digit: 7, sign: 4 },
        { height: 1100, frameHeight: 1060 },
        format,
        [],
      )}
      name="Marks of Run A"
      format={format}
      full={(mm) => length(mm, job)}
      current="a"
      selected={selected}
      picked={selected === block.mark ? block : undefined}
      onSteer={nothing}
      onHold={nothing}
      onPoint={nothing}
      onPick={nothing}
    />,
  );
}

const buttons = (markup: string): string[] => markup.match(/<g [^>]*role="button"[^>]*>/g) ?? [];

test('each mark is a button that says where it is and why', () => {
  const [first, second] = buttons(drawn(null));
  expect(first).toContain('aria-label="1200 mm stud: sheet joint; stud: pillar"');
  expect(second).toContain('aria-label="1600.5 mm join"');
  expect(buttons(drawn(null))).toHaveLength(2);
});

test('the tab key stops at one mark only; only marks of a part can be pressed', () => {
  const [first, second] = buttons(drawn(null));
  expect(first).toContain('tabindex="0"');
  expect(second).toContain('tabindex="-1"');
  expect(first).toContain('aria-pressed="false"');
  expect(second).not.toContain('aria-pressed');
});

test('what is picked out is marked as such, through every lane', () => {
  const markup = drawn('A-ST4');
  expect(buttons(markup)[0]).toContain('aria-pressed="true"');
  expect(markup).toContain('rod-block-picked');
  expect(markup).toContain('rod-extent');
  expect(drawn(null)).not.toContain('rod-extent');
});

test('widths are written where there is room, with a stroke at each end, and figures to the step', () => {
  const markup = drawn(null);
  expect(markup.match(/class="rod-dimension"/g)).toHaveLength(1);
  expect(markup).toMatch(/class="rod-width"[^>]*>381</);
  expect(markup.match(/class="rod-width"/g)).toHaveLength(1);
  expect(markup).toContain('>1600.5<');
});
