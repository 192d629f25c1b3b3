import { addSelectionItem, message, openPanel, runInPage, type SelectionClick } from './browser.js';
import { handOver } from './handover.js';
import { readSelection } from './selection.js';

export function addMenu(): void {
  addSelectionItem('kit-list', message('menuKitList'));
}

/** Opens the panel with what is selected in the page. */
export async function giveSecondOpinion({ tabId, windowId, frameId, selectionText }: SelectionClick): Promise<void> {
  // First, and not waited for: a panel opens only within the click itself.
  const opening = openPanel(windowId);
  const read = await runInPage(tabId, frameId, readSelection).catch(() => '');
  await handOver(read === '' ? { text: selectionText, asTold: true } : { text: read, asTold: false });
  await opening;
}
