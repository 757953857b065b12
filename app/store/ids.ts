/** A new random id of 32 hexadecimal digits. `crypto.randomUUID` is missing on pages that are not served securely. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
