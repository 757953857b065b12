import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { elevationOf } from '../../src/drawings/elevation';
import { layOut } from '../../src/exports/sheet/layout';
import { boxOf, textWidth } from '../../src/exports/sheet/lettering';
import { type SheetInfo, sheetSvg } from '../../src/exports/svg';
import type { Stroke } from '../../src/vocabulary/drawing';
import { byHand } from '../drawings/fixture';
import { goldens } from '../tools/goldens';
import { findTool } from '../tools/outside';
import { rectangle } from './rectangle';

const INFO: SheetInfo = { job: 'Job', unit: 'Unit', units: 'mm' };

const texts = (svg: string): string[] => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((found) => found[1]);
const header = (svg: string) =>
  /<svg [^>]*width="(\d+)mm" height="(\d+)mm" viewBox="0 0 (\d+) (\d+)"/.exec(svg)?.slice(1).map(Number);

describe('a sheet', () => {
  // Paper left for the drawing: ISO 5457:1999 spaces (A4 277 × 180 …, A3 390 × 277) less the title block and margins.
  it.each([
    [100, 60, 'A4', '1:1', [297, 210]],
    [300, 200, 'A3', '1:1', [420, 297]],
    [390, 350, 'A3', '1:2', [420, 297]],
    [1800, 1000, 'A4', '1:10', [297, 210]],
    [3600, 1050, 'A3', '1:10', [420, 297]],
    [4800, 1050, 'A4', '1:20', [297, 210]],
    [7000, 1050, 'A3', '1:20', [420, 297]],
    [10000, 1050, 'A2', '1:20', [594, 420]],
    [15000, 1050, 'A1', '1:20', [841, 594]],
    [30000, 1050, 'A1', '1:50', [841, 594]],
  ])('holds %d × %d mm on %s at %s', (width, height, sheet, scale, [w, h]) => {
    const svg = sheetSvg(rectangle(width, height), INFO);
    expect(header(svg)).toEqual([w, h, w, h]);
    expect(texts(svg)).toContain(`${scale} on ${sheet}`);
  });

  it('comes off a roll when no sheet can hold it', () => {
    const svg = sheetSvg(rectangle(120000, 1000), INFO);
    expect(header(svg)).toEqual([1240, 297, 1240, 297]);
    expect(texts(svg)).toContain('1:100 on roll 297');
  });

  it('takes a larger scale where figures would have to be led far away to be read', () => {
    // Thirty spans of 200: 4 mm of paper at 1:50, 10 mm at 1:20, 20 mm at 1:10, for a figure of about 16 mm.
    const strokes = Array.from({ length: 30 }, (_, i): Stroke => {
      const [a, b] = [i * 200, (i + 1) * 200];
      return { kind: 'dimension', from: [a, 0], to: [b, 0], axis: 'horizontal', offsetMm: -10, text: '7 55/64"' };
    });
    const crowded = rectangle(6000, 1000, strokes);
    expect([10, 20, 50].map((scale) => layOut(crowded, scale).crowded)).toEqual([false, true, true]);
    expect(texts(sheetSvg(rectangle(6000, 1000), INFO))).toContain('1:20 on A3');
    expect(texts(sheetSvg(crowded, INFO))).toContain('1:10 on A1');
  });

  it('keeps to the scale that a drawing is made for', () => {
    expect(texts(sheetSvg({ ...rectangle(1800, 1000), scale: 20 }, INFO))).toContain('1:20 on A4');
    expect(texts(sheetSvg({ ...rectangle(30000, 1000), scale: 20 }, INFO))).toContain('1:20 on roll 297');
  });

  it('draws true to scale: 1800 mm at 1:10 are 180 mm of paper', () => {
    const path = /<path d="M([\d.]+) ([\d.]+)L([\d.]+) [\d.]+L[\d.]+ ([\d.]+)/.exec(
      sheetSvg(rectangle(1800, 1000), INFO),
    )!;
    const [x0, y0, x1, y1] = path.slice(1).map(Number);
    expect(x1 - x0).toBeCloseTo(180, 2);
    expect(y0 - y1).toBeCloseTo(100, 2);
  });

  it('has the border of ISO 5457:1999: 20 left, 10 else, line 0.7', () => {
    expect(sheetSvg(rectangle(1800, 1000), INFO)).toContain(
      '<path d="M20 200L287 200L287 10L20 10Z" fill="none" stroke="#111" stroke-width="0.7"/>',
    );
  });

  it('has the mandatory fields of ISO 7200:2004 in the title block, and leaves open what it is not told', () => {
    const captions = [
      'Owner',
      'Identification number',
      'Date of issue',
      'Sheet',
      'Title',
      'Approved by',
      'Created by',
      'Type of document',
    ];
    const bare = texts(sheetSvg(rectangle(1800, 1000), INFO));
    expect(bare).toEqual(
      expect.arrayContaining([...captions, 'Job', 'A-front', 'Run A: front elevation', 'millimetres', '1']),
    );
    const told = {
      owner: 'Workshop',
      creator: 'M. Aker',
      approvedBy: 'A. Nother',
      date: '2024-05-01',
      number: 'TB-7',
      sheetNumber: '3',
    };
    expect(texts(sheetSvg(rectangle(1800, 1000), { ...INFO, ...told }))).toEqual(
      expect.arrayContaining(Object.values(told)),
    );
    expect(bare).not.toEqual(expect.arrayContaining(['2024-05-01']));
  });

  it('escapes names', () => {
    const svg = sheetSvg(rectangle(1800, 1000), {
      ...INFO,
      job: '<script>alert("x")</script> & co',
      unit: 'bell\u0007 \ud800',
    });
    expect(svg).not.toContain('<script');
    expect(texts(svg)).toContain('&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; co');
    expect(texts(svg)).toContain('bell\ufffd \ufffd');
  });

  it('squeezes what is too long for its field', () => {
    const svg = sheetSvg(rectangle(1800, 1000), { ...INFO, job: 'A very long name '.repeat(12).trim() });
    expect(svg).toMatch(/textLength="117.6" lengthAdjust="spacingAndGlyphs">A very long/);
  });

  it('letters a mark smaller where it does not fit otherwise, down to its least, clear of the outline', () => {
    const mark: Stroke = {
      kind: 'text',
      at: [900, 500],
      text: 'A-ST1',
      heightMm: 2.5,
      leastMm: 1.8,
      anchor: 'middle',
      turned: true,
      room: [800, 38],
    };
    const inked = (scale: number) => layOut(rectangle(1800, 1000, [mark]), scale);
    const heights = (scale: number) => inked(scale).ink.flatMap((ink) => (ink.kind === 'text' ? ink.height : []));
    expect([10, 20, 50].map(heights)).toEqual([[2.5], [1.8], []]);
    const ground = inked(20).ink.find((ink) => ink.kind === 'path' && ink.fill === 'timber');
    const [letters] = inked(20).ink.filter((ink) => ink.kind === 'text');
    const box = boxOf(letters);
    if (ground?.kind !== 'path') throw new Error('the small mark has no ground');
    expect(Math.min(...ground.points.map((p) => p[0]))).toBeLessThan(box.min[0]);
    expect(Math.max(...ground.points.map((p) => p[1]))).toBeGreaterThan(box.max[1]);
  });

  it('says in its notes what fits nowhere, and other notes beside the title block, inside the frame', () => {
    const mark: Stroke = {
      kind: 'text',
      at: [900, 500],
      text: 'A-NG1',
      heightMm: 2.5,
      leastMm: 1.8,
      anchor: 'middle',
      turned: false,
      room: [20, 38],
      otherwise: 'A-NG1 at 38 to 58, 511 up',
    };
    const notes = ['Noggin heights are to their undersides.', 'A long note that goes on and on. '.repeat(6).trim()];
    const svg = sheetSvg({ ...rectangle(1800, 1000, [mark]), notes }, INFO);
    const joined = texts(svg).join(' ');
    expect(joined).toContain(notes[0]);
    expect(joined).toContain(notes[1]);
    expect(joined).toContain('Too small to be marked here: A-NG1 at 38 to 58, 511 up.');
    const [width, , , height] = header(svg)!;
    const lines = [...svg.matchAll(/<text x="25" y="([\d.]+)" [^>]*>([^<]*)<\/text>/g)];
    expect(lines.length).toBeGreaterThan(5);
    for (const [, y, text] of lines) {
      expect(25 + textWidth(text, 2.5)).toBeLessThan(width - 10 - 180);
      expect(Number(y)).toBeLessThan(height - 10);
    }
  });

  it('keeps the drawing clear of notes that are higher than the title block', () => {
    const notes = Array.from({ length: 30 }, (_, i) => `Note ${i + 1}.`);
    expect(header(sheetSvg({ ...rectangle(1800, 1000), notes }, INFO))![0]).toBeGreaterThan(297);
  });

  it('uses no smaller sheet than it may', () => {
    expect(texts(sheetSvg(rectangle(1800, 1000), INFO, 'A3'))).toContain('1:10 on A3');
  });

  it('leaves a mark out where it does not fit its timber, and centres it where it does', () => {
    const mark: Stroke = {
      kind: 'text',
      at: [900, 500],
      text: 'A-ST1',
      heightMm: 2.5,
      anchor: 'middle',
      turned: false,
      room: [400, 38],
    };
    expect(layOut(rectangle(1800, 1000, [mark]), 20).ink.some((ink) => ink.kind === 'text')).toBe(false);
    const text = layOut(rectangle(1800, 1000, [mark]), 10).ink.find((ink) => ink.kind === 'text')!;
    expect(text).toMatchObject({ at: [90, 48.75] });
  });
});

describe('the SVG as others read it', () => {
  const xmllint = findTool('xmllint');
  const readers: readonly [string, string][] = [
    ...goldens()
      .filter(({ file }) => file.endsWith('.svg'))
      .map(({ file, make }): [string, string] => [file, make()]),
    ['names in need of escaping', sheetSvg(elevationOf(byHand, 'A', 'front'), { ...INFO, job: byHand.job.name })],
  ];
  it.skipIf(!xmllint)(
    `is well-formed XML for xmllint${xmllint ? '' : ' (skipped: xmllint is not on this machine)'}`,
    () => {
      for (const [name, svg] of readers) {
        const read = spawnSync(xmllint!, ['--noout', '-'], { input: svg, encoding: 'utf8' });
        expect(`${name}: ${read.status} ${read.stderr}`).toBe(`${name}: 0 `);
      }
    },
  );
});
