/** A file name that every system takes: letters, digits, dashes; never empty. */
export function fileName(title: string, ending: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80)
    .toLowerCase();
  return `${plain || 'job'}.${ending}`;
}

/** Hands a file to the browser's downloads. */
export function download(content: string | Uint8Array<ArrayBuffer>, name: string, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // A minute is ample for the browser to take the blob over (a guess on the safe side).
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
