/** The one file that touches the browser's API. */
import browser from 'webextension-polyfill';

/** A click on a menu item over a selection. */
export interface SelectionClick {
  /** Id of the item. */
  readonly item: string;
  readonly tabId: number;
  readonly windowId: number;
  readonly frameId: number;
  /** The selection as the browser tells it; some lose its line breaks. */
  readonly selectionText: string;
}

/** A text of _locales. */
export function message(name: string, ...details: string[]): string {
  return browser.i18n.getMessage(name, details);
}

export function onInstalled(listener: () => void): void {
  browser.runtime.onInstalled.addListener(listener);
}

/** Puts items into the menu over a selection, instead of any that an earlier version left there. */
export async function setSelectionItems(items: readonly { id: string; title: string }[]): Promise<void> {
  await browser.contextMenus.removeAll();
  for (const item of items) browser.contextMenus.create({ ...item, contexts: ['selection'] });
}

export function onSelectionItem(listener: (click: SelectionClick) => Promise<void>): void {
  browser.contextMenus.onClicked.addListener(({ menuItemId, frameId = 0, selectionText = '' }, tab) => {
    if (tab?.id === undefined || tab.windowId === undefined) return;
    void listener({ item: String(menuItemId), tabId: tab.id, windowId: tab.windowId, frameId, selectionText });
  });
}

/** The person may change its keys; the browser counts it as a click. */
export function onPanelCommand(listener: (windowId: number) => Promise<void>): void {
  browser.commands.onCommand.addListener((command, tab) => {
    if (command === 'open-panel' && tab?.windowId !== undefined) void listener(tab.windowId);
  });
}

/**
 * Runs a function that stands alone in a frame of the page, or in each frame that can be read; it gives what came of each, and rejects where the
 * browser lets nobody in.
 */
export async function runInPage<Args extends unknown[], T>(
  tabId: number,
  frameId: number | 'all',
  func: (...args: Args) => T,
  ...args: Args
): Promise<T[]> {
  const target = frameId === 'all' ? { tabId, allFrames: true } : { tabId, frameIds: [frameId] };
  const outcomes = await browser.scripting.executeScript({ target, func: func, args });
  return outcomes.flatMap(({ result }) => (result === undefined || result === null ? [] : [result as T]));
}

/** The tab that the person looks at in this window. */
export async function currentTabId(): Promise<number | undefined> {
  const [tab] = await browser.tabs.query({ active: true, currentWindow: true });
  return tab?.id;
}

/** Chrome's side panel, which the polyfill does not know. */
interface SidePanel {
  open(where: { windowId: number }): Promise<void>;
}

/**
 * Opens the panel beside the page, or the full page in a tab where the browser opens none.
 * The browser allows it only within the click itself: call it before anything is waited for.
 */
export async function openPanel(windowId: number): Promise<void> {
  const { sidePanel } = browser as { sidePanel?: SidePanel };
  try {
    if (sidePanel) await sidePanel.open({ windowId });
    else await browser.sidebarAction.open();
  } catch {
    await openPage(windowId);
  }
}

/** Opens the full page in a tab. */
export async function openPage(windowId?: number): Promise<void> {
  const url = browser.runtime.getURL('page/index.html');
  await browser.tabs.create(windowId === undefined ? { url } : { windowId, url });
}

export async function currentWindowId(): Promise<number> {
  const { id } = await browser.windows.getCurrent();
  return id ?? browser.windows.WINDOW_ID_CURRENT;
}

/** Kept on this computer, while the browser runs, or in step between the browsers that share an account. */
type Area = 'local' | 'session' | 'sync';

export async function readStored(area: Area, key: string): Promise<unknown> {
  return (await browser.storage[area].get(key))[key];
}

/** It rejects where the store is full or refused. */
export async function store(area: Area, key: string, value: unknown): Promise<void> {
  await browser.storage[area].set({ [key]: value });
}

export async function removeStored(area: Area, key: string): Promise<void> {
  await browser.storage[area].remove(key);
}

/** Calls back with each new value, whichever page of the extension stored it. */
export function onStored(area: Area, key: string, listener: (value: unknown) => void): void {
  browser.storage[area].onChanged.addListener((changes) => {
    const value: unknown = changes[key]?.newValue;
    if (value !== undefined) listener(value);
  });
}
