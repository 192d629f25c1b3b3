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
  const { item, tabId, windowId, frameId, selectionText, isFile } = click;
  // First, and not waited for: a panel opens only within the click itself.
  const opening = openPanel(windowId);
  const part = await selectedIn(tabId, frameId).catch(() => undefined);
  await handOver({
    windowId,
    entrance: item === 'pot' ? 'pot' : 'list',
    text: part?.text ?? selectionText,
    asTold: part === undefined,
    headed: part?.headed ?? false,
    partial: part?.partial ?? false,
    isFile,
  });
  await opening;
}

/** Opens the panel, with what is selected in the page where something is. */
export async function openWithSelection(windowId: number, tabId: number | undefined): Promise<void> {
  const opening = openPanel(windowId);
  const part = tabId === undefined ? undefined : await selectedIn(tabId, 'all').catch(() => undefined);
  if (part)
    await handOver({
      windowId,
      entrance: 'list',
      text: part.text,
      asTold: false,
      headed: part.headed,
      partial: part.partial,
    });
  await opening;
}
