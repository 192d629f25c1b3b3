import type { Words } from './words.js';

/** Every language but English, loaded from beside the module when it is wanted. A further one is a line here as well. */
export const ON_DEMAND: Readonly<Record<string, () => Promise<Words>>> = {
  da: async () => (await import('./da.js')).da,
  de: async () => (await import('./de.js')).de,
  es: async () => (await import('./es.js')).es,
  fr: async () => (await import('./fr.js')).fr,
  it: async () => (await import('./it.js')).it,
  ja: async () => (await import('./ja.js')).ja,
  nl: async () => (await import('./nl.js')).nl,
  no: async () => (await import('./no.js')).no,
  pl: async () => (await import('./pl.js')).pl,
  pt: async () => (await import('./pt.js')).pt,
  ru: async () => (await import('./ru.js')).ru,
  sv: async () => (await import('./sv.js')).sv,
};
