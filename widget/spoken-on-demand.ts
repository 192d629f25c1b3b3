import type { Words } from './messages/en.js';

/** Every language of the interface but English, loaded from beside the module when an element speaks it. A further one is a line here. */
export const ON_DEMAND: Readonly<Record<string, () => Promise<Words>>> = {
  de: async () => (await import('./messages/german.js')).german,
  es: async () => (await import('./messages/spanish.js')).spanish,
  fr: async () => (await import('./messages/french.js')).french,
};
