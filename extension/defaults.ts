/**
 * What a person takes for granted of every trip, and how they read units. Each field is kept by itself, with the time it was set: of two pages, or of
 * two browsers that share an account, the later one holds, field by field.
 */
import * as z from 'zod/mini';
import { MEAL_STYLES, SEASONS, UNIT_SYSTEMS } from '../core/index.js';
import { onAnyStored, readAllStored, readStored, removeStored, store, storeAll } from './browser.js';

const PREFIX = 'default.';
const SYNCED_KEY = 'defaultsSynced';
/** Where earlier versions kept all fields in one, without times. */
const EARLIER_KEY = 'defaults';

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

const FIELDS = Object.keys(defaultsSchema.shape) as (keyof Defaults)[];
const keyOf = (field: string) => `${PREFIX}${field}`;

/** A value, and when it was set, in ms; 0 where nobody set it. */
const setSchema = z.object({ value: z.string(), at: z.number() });
type Set = z.infer<typeof setSchema>;
type Sets = Readonly<Record<string, Set>>;

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
  const sets = await readSets(await areSynced());
  return defaultsSchema.parse(Object.fromEntries(FIELDS.map((field) => [field, sets[field]?.value ?? ''])));
}

/** Sets some fields and leaves the others. It rejects where the store is full or refused. */
export async function storeDefaults(changed: Partial<Defaults>): Promise<void> {
  const synced = await areSynced();
  const before = await readSets(synced);
  // Later than what it replaces, whatever the clock of another computer said.
  const sets = Object.fromEntries(
    Object.entries(changed).map(([field, value]) => [
      keyOf(field),
      { value, at: Math.max(Date.now(), (before[field]?.at ?? 0) + 1) },
    ]),
  );
  await storeAll('local', sets);
  if (synced) await storeAll('sync', sets);
}

/**
 * Shares the defaults with the person's other browsers, or no longer. Of each field the later value holds from then on in all of them; what is shared no
 * longer is removed from the account, and each browser keeps its own copy.
 */
export async function syncDefaults(synced: boolean): Promise<void> {
  const sets = await readSets(true);
  const all = Object.fromEntries(Object.entries(sets).map(([field, set]) => [keyOf(field), set]));
  if (synced) {
    await storeAll('sync', all);
    await storeAll('local', { ...all, [SYNCED_KEY]: true });
  } else {
    if (await areSynced()) await storeAll('local', all);
    await store('local', SYNCED_KEY, false);
    await removeStored('sync', [...FIELDS.map(keyOf), EARLIER_KEY]);
  }
}

/** Calls back when they may have changed, in whichever page of the extension or, where they are synced, in another browser. */
export function onDefaults(listener: () => void): void {
  for (const area of ['local', 'sync'] as const) {
    onAnyStored(area, (values) => {
      if (Object.keys(values).some((key) => key === SYNCED_KEY || key.startsWith(PREFIX))) listener();
    });
  }
}

/** Of each field the later value of this browser and, where they are synced, of the account. */
async function readSets(synced: boolean): Promise<Sets> {
  const own = await setsIn('local');
  if (!synced) return own;
  const shared = await setsIn('sync');
  return Object.fromEntries(
    FIELDS.flatMap((field) => {
      const [a, b] = [own[field], shared[field]];
      const later = a && b ? (a.at > b.at ? a : b) : (a ?? b);
      return later ? [[field, later]] : [];
    }),
  );
}

async function setsIn(area: 'local' | 'sync'): Promise<Sets> {
  const stored = await readAllStored(area, [...FIELDS.map(keyOf), EARLIER_KEY]);
  const earlier = defaultsSchema.safeParse(stored[EARLIER_KEY]).data;
  return Object.fromEntries(
    FIELDS.flatMap((field): [string, Set][] => {
      const set = setSchema.safeParse(stored[keyOf(field)]);
      if (set.success) return [[field, set.data]];
      return earlier?.[field] ? [[field, { value: earlier[field], at: 1 }]] : [];
    }),
  );
}
