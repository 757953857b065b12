import type { Vec2 } from '../../vocabulary/geometry';
import { type Ink, PEN_MM } from './ink';
import { CAPITALS, textWidth } from './lettering';

/** Pale enough that figures and arrises read on it, and that a grey print stays clear. */
const TIMBER = '#f2e2c4';
const INK = '#111';
const FILL = { paper: '#fff', timber: TIMBER, ink: INK, none: 'none' } as const;

/** Dash lengths as multiples of the pen's width (ISO 128-2: dash 12, gap 3, long dash 24, dot 0.5; from memory). */
const DASHES = { dashed: [12, 3], chain: [24, 3, 0.5, 3] } as const;

/** Escapes text for an XML text node or attribute; signs that XML 1.0 can't hold become U+FFFD. */
export function escapeXml(text: string): string {
  return [...text]
    .map((sign) => (isXmlSign(sign.codePointAt(0) ?? 0) ? sign : '\ufffd'))
    .join('')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

/** XML 1.0 (fifth edition), production 2, Char; line ends and tabs are left out too, since every text here is one line. */
function isXmlSign(code: number): boolean {
  return (
    (code >= 0x20 && code <= 0xd7ff) || (code >= 0xe000 && code <= 0xfffd) || (code >= 0x10000 && code <= 0x10ffff)
  );
}

/** A hundredth of a millimetre of paper is finer than any pen. */
const n = (value: number): string => String(Math.round(value * 100) / 100 + 0);

/** One SVG element. `toSheet` turns paper mm (y up) into the sheet's own mm (y down). */
export function svgOf(ink: Ink, toSheet: (p: Vec2) => Vec2): string {
  if (ink.kind === 'text') {
    const [x, y] = toSheet(ink.at).map(n) as [string, string];
    const turned = ink.turned ? ` transform="rotate(-90 ${x} ${y})"` : '';
    const tooLong = ink.atMost !== undefined && textWidth(ink.text, ink.height) > ink.atMost;
    const squeezed = tooLong ? ` textLength="${n(ink.atMost!)}" lengthAdjust="spacingAndGlyphs"` : '';
    const size = n(ink.height / CAPITALS);
    const anchor = ink.anchor === 'start' ? '' : ` text-anchor="${ink.anchor}"`;
    return `<text x="${x}" y="${y}" font-size="${size}"${anchor}${turned}${squeezed}>${escapeXml(ink.text)}</text>`;
  }
  if (ink.kind === 'circle') {
    const [x, y] = toSheet(ink.at).map(n) as [string, string];
    return `<circle cx="${x}" cy="${y}" r="${n(ink.radius)}" fill="none" stroke="${INK}" stroke-width="${PEN_MM[ink.pen]}"/>`;
  }
  const d = ink.points.map((p, i) => `${i === 0 ? 'M' : 'L'}${toSheet(p).map(n).join(' ')}`).join('');
  const stroke = ink.pen === 'none' ? '' : ` stroke="${INK}" stroke-width="${PEN_MM[ink.pen]}"`;
  const pen = ink.pen === 'none' ? 0 : PEN_MM[ink.pen];
  const dashes =
    ink.style === 'continuous' ? '' : ` stroke-dasharray="${DASHES[ink.style].map((k) => n(k * pen)).join(' ')}"`;
  const part = ink.part === undefined ? '' : ` data-part="${escapeXml(ink.part)}"`;
  return `<path d="${d}${ink.closed ? 'Z' : ''}" fill="${FILL[ink.fill]}"${stroke}${dashes}${part}/>`;
}
