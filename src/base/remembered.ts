/**
 * The same work, its last answers remembered by the reference of what they were worked out from: one, or as many as are `kept`. Older
 * ones are let go: a day's edits must not pile up, and a WeakMap holds on to what it remembers until the next great collection.
 */
export function remembered<K extends object, V>(work: (key: K) => V, kept = 1): (key: K) => V {
  let last: readonly { readonly key: K; readonly value: V }[] = [];
  return (key) => {
    if (last[0]?.key === key) return last[0].value;
    const known = last.find((one) => one.key === key) ?? { key, value: work(key) };
    // The one that was asked for last is let go last.
    last = [known, ...last.filter((one) => one !== known)].slice(0, kept);
    return known.value;
  };
}
