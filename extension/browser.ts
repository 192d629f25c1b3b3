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
  /** The page is a file of this computer. */
  readonly isFile: boolean;
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
  browser.contextMenus.onClicked.addListener(({ menuItemId, frameId = 0, selectionText = '', pageUrl = '' }, tab) => {
    if (tab?.id === undefined || tab.windowId === undefined) return;
    void listener({
      item: String(menuItemId),
      tabId: tab.id,
      windowId: tab.windowId,
      frameId,
      selectionText,
      isFile: pageUrl.startsWith('file:'),
    });
  });
}

/** The person may change its keys; the browser counts it as a click. */
export function onPanelCommand(listener: (windowId: number, tabId: number | undefined) => Promise<void>): void {
  browser.commands.onCommand.addListener((command, tab) => {
    if (command === 'open-panel' && tab?.windowId !== undefined) void listener(tab.windowId, tab.id);
  });
}

/**
 * Runs a script of the extension's in a frame of the page, or in each frame that can be read; it gives what each came to, the page's own frame first,
 * and rejects where the browser lets nobody in.
 */
export async function runInPage(tabId: number, frameId: number | 'all', file: string): Promise<unknown[]> {
  const target = frameId === 'all' ? { tabId, allFrames: true } : { tabId, frameIds: [frameId] };
  const outcomes = await browser.scripting.executeScript({ target, files: [file] });
  return outcomes
    .sort((a, b) => a.frameId - b.frameId)
    .flatMap(({ result }): unknown[] => (result === undefined || result === null ? [] : [result]));
}

/** The tab that the person looks at in this window; its address where the browser tells it. */
export async function currentTab(): Promise<{ readonly id: number; readonly url: string | undefined } | undefined> {
  const [tab] = await browser.tabs.query({ active: true, currentWindow: true });
  return tab?.id === undefined ? undefined : { id: tab.id, url: tab.url };
}

/** Whether the browser lets the extension read files of this computer. */
export async function mayReadFiles(): Promise<boolean> {
  return browser.extension.isAllowedFileSchemeAccess();
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

export interface ThisWindow {
  readonly id: number;
  /** The browser forgets what is done in it. */
  readonly isPrivate: boolean;
}

/** The window that a page of the extension is in. */
export async function thisWindow(): Promise<ThisWindow> {
  const { id, incognito } = await browser.windows.getCurrent();
  return { id: id ?? browser.windows.WINDOW_ID_CURRENT, isPrivate: incognito };
}

/** Calls back with each window that has closed, and whether a private one is still open. */
export function onWindowClosed(listener: (windowId: number, anyPrivateLeft: boolean) => Promise<void>): void {
  browser.windows.onRemoved.addListener((windowId) => {
    void browser.windows.getAll().then((open) =>
      listener(
        windowId,
        open.some(({ id, incognito }) => incognito && id !== windowId),
      ),
    );
  });
}

/** Kept on this computer, while the browser runs, or in step between the browsers that share an account. */
type Area = 'local' | 'session' | 'sync';

export async function readStored(area: Area, key: string): Promise<unknown> {
  return (await browser.storage[area].get(key))[key];
}

/** Several at once; a key that nothing is stored under is not in what comes back. */
export async function readAllStored(area: Area, keys: readonly string[]): Promise<Readonly<Record<string, unknown>>> {
  return browser.storage[area].get([...keys]);
}

/** It rejects where the store is full or refused. */
export async function store(area: Area, key: string, value: unknown): Promise<void> {
  await storeAll(area, { [key]: value });
}

/** All of it or nothing; it rejects where the store is full or refused. */
export async function storeAll(area: Area, values: Readonly<Record<string, unknown>>): Promise<void> {
  await browser.storage[area].set(values);
}

export async function removeStored(area: Area, keys: string | string[]): Promise<void> {
  await browser.storage[area].remove(keys);
}

export async function storedKeys(area: Area): Promise<string[]> {
  return Object.keys(await browser.storage[area].get(null));
}

/** Calls back with each new value, whichever page of the extension stored it. */
export function onStored(area: Area, key: string, listener: (value: unknown) => void): void {
  onAnyStored(area, (values) => {
    if (values[key] !== undefined) listener(values[key]);
  });
}

/** Calls back with all new values that were stored at once, those that are gone as undefined. */
export function onAnyStored(area: Area, listener: (values: Readonly<Record<string, unknown>>) => void): void {
  browser.storage[area].onChanged.addListener((changes) =>
    listener(Object.fromEntries(Object.entries(changes).map(([key, { newValue }]) => [key, newValue]))),
  );
}
