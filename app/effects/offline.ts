/** Lets the built app open without a network. Says nothing when the browser won't: the app works without. */
export async function keepOfflineCopy(): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  try {
    await navigator.serviceWorker.register('./sw.js');
  } catch {
    // A page that is not served securely, or storage that is forbidden: there is no offline copy, and no harm done.
  }
}
