import { message, openPanel, setSelectionItems, type SelectionClick } from './browser.js';
import { handOver } from './handover.js';
import { selectedIn } from './reading-page.js';

export async function fillMenu(): Promise<void> {
  await setSelectionItems([
    { id: 'list', title: message('menuKitList') },
    { id: 'pot', title: message('menuPot') },
  ]);
}

/** Opens the panel with what is selected in the page. */
export async function giveSecondOpinion(click: SelectionClick): Promise<void> {
  const { item, tabId, windowId, frameId, selectionText } = click;
  // First, and not waited for: a panel opens only within the click itself.
  const opening = openPanel(windowId);
  const part = await selectedIn(tabId, frameId).catch(() => undefined);
  const entrance = item === 'pot' ? 'pot' : 'list';
  await handOver({ windowId, entrance, text: part?.text ?? selectionText, asTold: part === undefined });
  await opening;
}
