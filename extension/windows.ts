/** What the browser's memory holds for each of its windows, and how it is forgotten. */
import { removeStored, storedKeys } from './browser.js';

const PRIVATE = 'private.';

/** Where something of a window is kept while the browser runs. */
export function keyOf(what: 'draft' | 'selection', windowId: number, isPrivate = false): string {
  return `${isPrivate ? PRIVATE : ''}${what}.${windowId}`;
}

/** A window has closed; with the last private one goes all that came of them. */
export async function forgetWindow(windowId: number, anyPrivateLeft: boolean): Promise<void> {
  const gone = [keyOf('draft', windowId), keyOf('draft', windowId, true), keyOf('selection', windowId)];
  const more = anyPrivateLeft ? [] : (await storedKeys('session')).filter((key) => key.startsWith(PRIVATE));
  await removeStored('session', [...gone, ...more]);
}
