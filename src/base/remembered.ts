/**
 * The same work, its last few answers remembered by the reference of what they were worked out from. Older ones are let go: a day's
 * edits must not pile up, and a WeakMap holds on to what it remembers until the next great collection.
 */
export function remembered<K extends object, V>(work: (key: K) => V, kept = 3): (key: K) => V {
  const last: { readonly key: K; readonly value: V }[] = [];
  let oldest = 0;
  return (key) => {
    const known = last.find((one) => one.key === key);
    if (known) return known.value;
    const value = work(key);
    last[oldest] = { key, value };
    oldest = (oldest + 1) % kept;
    return value;
  };
}
