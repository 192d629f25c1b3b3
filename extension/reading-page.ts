/** What is selected in a page, and what the page shows: read there by the scripts of seen/, which the browser runs in its frames. */
import { runInPage } from './browser.js';
import type { PageSeen } from './seen/page.js';
import type { Selected } from './seen/selection.js';

/** What is selected in a frame; undefined where nothing is. It rejects where the browser lets nobody in. */
export async function selectedIn(tabId: number, frameId: number | 'all'): Promise<Selected | undefined> {
  const [first] = (await runInPage(tabId, frameId, 'seen/read-selection.js')) as Selected[];
  return first;
}

/** What each frame of a page shows, its own first. It rejects where the browser lets nobody in. */
export async function seenIn(tabId: number): Promise<PageSeen[]> {
  return (await runInPage(tabId, 'all', 'seen/read-page.js')) as PageSeen[];
}
