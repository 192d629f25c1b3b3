/** What a person takes for granted of every trip, and how they read units. */
import * as z from 'zod/mini';
import { MEAL_STYLES, SEASONS, UNIT_SYSTEMS } from '../core/index.js';
import { onStored, readStored, store } from './browser.js';

const KEY = 'defaults';
const SYNCED_KEY = 'defaultsSynced';

/** The languages that the elements speak, with the regions that settle US and imperial units. */
export const LANGUAGES = ['en-US', 'en-GB', 'en', 'de', 'es', 'fr'] as const;

const defaultsSchema = z.object({
  people: z.catch(z.string(), ''),
  days: z.catch(z.string(), ''),
  mealStyle: z.catch(z.enum(['', ...MEAL_STYLES]), ''),
  season: z.catch(z.enum(['', ...SEASONS]), ''),
  units: z.catch(z.enum(['', ...UNIT_SYSTEMS]), ''),
  language: z.catch(z.enum(['', ...LANGUAGES]), ''),
});

/** As set, '' where nothing is. */
export type Defaults = z.infer<typeof defaultsSchema>;

/** The parts that are of a trip, those that are set. */
export function tripPart({ people, days, mealStyle, season }: Defaults): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries({ people, days, mealStyle, season }).filter(([, value]) => value !== ''));
}

/** Whether the person wants the same defaults in all their browsers. */
export async function areSynced(): Promise<boolean> {
  return (await readStored('local', SYNCED_KEY)) === true;
}

/** It rejects where the store cannot be read. */
export async function readDefaults(): Promise<Defaults> {
  const kept = (await readStored((await areSynced()) ? 'sync' : 'local', KEY)) ?? {};
  return defaultsSchema.parse(typeof kept === 'object' ? kept : {});
}

/** It rejects where the store is full or refused. */
export async function storeDefaults(defaults: Defaults, synced: boolean): Promise<void> {
  await store(synced ? 'sync' : 'local', KEY, defaults);
  await store('local', SYNCED_KEY, synced);
}

/** Calls back when they may have changed, in whichever page of the extension or, where they are synced, in another browser. */
export function onDefaults(listener: () => void): void {
  onStored('local', KEY, listener);
  onStored('local', SYNCED_KEY, listener);
  onStored('sync', KEY, listener);
}
