/** A parsed file as a test sees it: anything at any place. */
// biome-ignore lint/suspicious/noExplicitAny: tests write into foreign files what no type allows
export type Loose = any;

export const loose = (value: object): Loose => value;

/** The text of a file after a change to what it holds. */
export function edited(text: string, change: (file: Loose) => void): string {
  const file: Loose = JSON.parse(text);
  change(file);
  return JSON.stringify(file);
}
