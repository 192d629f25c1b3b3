import type { Browser, Storage, Tabs } from 'webextension-polyfill';

declare global {
  /** The part of Chromium's extension API that the tests call, in the extension's own pages and background. */
  const chrome: Pick<Browser, 'tabs' | 'windows'> & {
    readonly runtime: Pick<Browser['runtime'], 'lastError' | 'getContexts' | 'sendMessage' | 'getManifest'>;
    readonly storage: {
      readonly sync: Storage.StorageArea;
      readonly session: Storage.StorageArea;
      readonly local: Storage.StorageArea & {
        readonly QUOTA_BYTES: number;
        getBytesInUse(keys: null): Promise<number>;
      };
    };
    readonly contextMenus: {
      update(id: string, changes: object, callback: () => void): void;
      /** Chromium lets an extension send itself an event. */
      readonly onClicked: {
        dispatch(
          click: { menuItemId: string; frameId: number; selectionText: string; pageUrl: string },
          tab: Tabs.Tab,
        ): void;
      };
    };
  };
}
