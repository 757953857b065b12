/** Where a text stops being JSON. Line and column count from 1. */
export interface Fault {
  readonly line: number;
  readonly column: number;
  readonly message: string;
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const WORD = /true|false|null/y;
const SPACE = /[ \t\n\r]*/y;

/** The place after the text in quotes that begins at `start`; null where none does or it has no end. By hand: it may be millions long. */
function endOfString(text: string, start: number): number | null {
  if (text[start] !== '"') return null;
  for (let at = start + 1; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return at + 1;
    if (code < 0x20) return null;
    if (code !== 0x5c) continue;
    ESCAPE.lastIndex = at;
    if (!ESCAPE.test(text)) return null;
    at = ESCAPE.lastIndex - 1;
  }
  return null;
}

/**
 * The first place where a text is not JSON (RFC 8259), or null when it is. The machine's own parser gives no position that can be
 * relied on, so this reads the text a second time once that parser has refused it. Time is linear; no nesting is too deep for it.
 */
export function faultOf(text: string): Fault | null {
  const open: ('{' | '[')[] = [];
  let at = 0;
  const take = (pattern: RegExp): boolean => {
    pattern.lastIndex = at;
    if (!pattern.test(text)) return false;
    at = pattern.lastIndex;
    return true;
  };
  const string = (): boolean => {
    const end = endOfString(text, at);
    at = end ?? at;
    return end !== null;
  };
  const sign = (wanted: string): boolean => {
    if (text[at] !== wanted) return false;
    at += 1;
    return true;
  };
  const name = (): string | null => {
    take(SPACE);
    if (!string()) return text[at] === '"' ? 'a finished text' : 'a name in double quotes';
    take(SPACE);
    return sign(':') ? null : '":"';
  };
  const fault = (wanted: string): Fault => placeOf(text, at, wanted);

  for (;;) {
    take(SPACE);
    if (text[at] === '{' || text[at] === '[') {
      const bracket = text[at] as '{' | '[';
      at += 1;
      take(SPACE);
      if (!sign(bracket === '{' ? '}' : ']')) {
        open.push(bracket);
        const missing = bracket === '{' ? name() : null;
        if (missing) return fault(missing);
        continue;
      }
    } else if (!string() && !take(NUMBER) && !take(WORD)) {
      return fault(text[at] === '"' ? 'a finished text' : 'a value');
    }
    // A value has ended: close what it closes, until another value must follow.
    for (;;) {
      take(SPACE);
      const within = open[open.length - 1];
      if (within === undefined) return at === text.length ? null : fault('the end of the file');
      if (sign(',')) {
        const missing = within === '{' ? name() : null;
        if (missing) return fault(missing);
        break;
      }
      const close = within === '{' ? '}' : ']';
      if (!sign(close)) return fault(`"," or "${close}"`);
      open.pop();
    }
  }
}

function placeOf(text: string, at: number, wanted: string): Fault {
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  const column = at - before.lastIndexOf('\n');
  const found =
    at < text.length ? JSON.stringify(String.fromCodePoint(text.codePointAt(at) ?? 0)) : 'the end of the file';
  return { line, column, message: `line ${line}, column ${column}: found ${found} where ${wanted} should be` };
}
