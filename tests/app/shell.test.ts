import { describe, expect, it } from 'vitest';
import { canBeShown, showSubject } from '../../app/facts/subject';
import { change, exactLength, exactSize, figure, length, weight } from '../../app/shell/format';
import { shortcuts } from '../../app/shell/shortcuts';
import { createAppStore } from '../../app/store/store';
import { design, newJob } from '../../src/flow';

const press = (key: string, held: Partial<KeyboardEvent> = {}) =>
  ({ key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...held }) as KeyboardEvent;
const found = (event: KeyboardEvent) => shortcuts.filter(({ matches }) => matches(event));

describe('keys', () => {
  const events: readonly [string, KeyboardEvent][] = [
    ['Undo', press('z', { ctrlKey: true })],
    ['Undo', press('z', { metaKey: true })],
    ['Redo', press('Z', { ctrlKey: true, shiftKey: true })],
    ['Redo', press('y', { ctrlKey: true })],
    ['Save to a file', press('s', { ctrlKey: true })],
    ...shortcuts
      .filter(({ keys }) => !keys.includes('Ctrl'))
      .map(({ label, keys }): [string, KeyboardEvent] => [label, press(keys === 'Esc' ? 'Escape' : keys)]),
  ];

  it.each(events)('%s has a key of its own', (label, event) => {
    expect(found(event).map((shortcut) => shortcut.label)).toEqual([label]);
  });

  it('leaves the browser’s own keys alone', () => {
    for (const key of ['f', 'p', '1', 'd']) expect(found(press(key, { ctrlKey: true }))).toEqual([]);
    expect(found(press('F5'))).toEqual([]);
  });

  it('does what it says', () => {
    const store = createAppStore(newJob('Keys'));
    const run = (key: string) => found(press(key))[0]?.run(store);
    run('7');
    expect(store.getState().view.mode).toBe('framed');
    run('2');
    expect(store.getState().view.camera.request).toBe('plan');
    run('d');
    expect(store.getState().view.showDimensions).toBe(false);
    run('p');
    expect(store.getState().view.pane).toBe('parts');
    // Under the list the rod begins folded away; under the unit it stays as it was.
    run('r');
    expect(store.getState().view.rodFolded).toEqual({ unit: false, assembly: true, parts: false, cutting: true });
    run('c');
    expect(store.getState().view.pane).toBe('cutting');
    run('c');
    expect(store.getState().view.pane).toBe('unit');
    store.getState().select('A-ST1');
    run('Escape');
    expect(store.getState().view.selected).toBeNull();
  });
});

const writes = (units: 'mm' | 'inch', roundingStep = 0.5) => ({ units, tools: { roundingStep } });

describe('figures', () => {
  it('go to the joiner’s step, each from its exact value; inches to 1/64', () => {
    const shown = (step: number) => [400.24, 400.26, 1203.333].map((mm) => figure(mm, writes('mm', step)));
    expect(shown(0.5)).toEqual(['400', '400.5', '1203.5']);
    expect(shown(0.1)).toEqual(['400.2', '400.3', '1203.3']);
    expect(shown(1)).toEqual(['400', '400', '1203']);
    expect(length(400.26, writes('mm'))).toBe('400.5 mm');
    expect(length(1200.15, writes('inch'))).toBe('47 1/4"');
  });

  it('of a part’s own card are not rounded to the step, but to no more than can be cut', () => {
    expect(exactLength(446.6362, 'mm')).toBe('446.64 mm');
    expect(exactSize([446.6362, 30, 15.004], 'mm')).toBe('446.64 × 30 × 15 mm');
    // 446.6362 / 25.4 = 17.58410…
    expect(exactLength(446.6362, 'inch')).toBe('17.584"');
  });

  it('say what an edit changed, and nothing where nothing would be seen', () => {
    const mm = (value: number) => length(value, writes('mm', 0.1));
    expect(change(1050, 1100, mm)).toBe('−50 mm');
    expect(change(1100.5, 1100, mm)).toBe('+0.5 mm');
    expect(change(1100.04, 1100, mm)).toBeNull();
    expect(change(1100, 1100, mm)).toBeNull();
    expect(change(1152.4, 1127, (value) => length(value, writes('inch')))).toBe('+1"');
    expect(change(12.34, 12.3, weight)).toBe('+40 g');
  });

  it('name their unit once', () => {
    expect(exactSize([700.1, 30, 15], 'mm')).toBe('700.1 × 30 × 15 mm');
    expect(exactSize([25.4, 12.7], 'inch')).toBe('1" × 0.5"');
    expect(weight(0.178)).toBe('178 g');
    expect(weight(355.66)).toBe('355.7 kg');
  });
});

describe('the subject of a finding', () => {
  const made = design(newJob('Subject'));
  const part = made.parts.at(-1);

  it('is picked out, with its run on the rod', () => {
    const store = createAppStore(made.job);
    if (!part) throw new Error('A new job makes no parts.');
    showSubject({ part: part.mark }, made.parts, store.getState());
    expect(store.getState().view).toMatchObject({ selected: part.mark, run: part.run });
    showSubject({ run: 'A' }, made.parts, store.getState());
    expect(store.getState().view).toMatchObject({ selected: null, run: 'A' });
  });

  it('leaves everything as it is when the part is no longer there', () => {
    const store = createAppStore(made.job);
    const { view } = store.getState();
    showSubject({ part: 'Z-XX99' }, made.parts, store.getState());
    expect(store.getState().view).toBe(view);
  });

  it('can be shown when it names a part, a run or a decision', () => {
    expect(canBeShown({})).toBe(false);
    expect(canBeShown({ path: '/unit/height' })).toBe(true);
    expect(canBeShown({ run: 'A' })).toBe(true);
  });
});
