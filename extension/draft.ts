/**
 * What is typed, kept for each window while the browser runs, and the last of them from one start to the next. What is typed in a private window is
 * kept nowhere but in the browser's memory, until the last private window closes.
 */
import * as z from 'zod/mini';
import { EMPTY_DRAFT, type Draft } from '../widget/draft.js';
import { onStored, readStored, store, thisWindow, type ThisWindow } from './browser.js';
import { draftSchema } from './draft-schema.js';
import { keyOf } from './windows.js';

const KEY = 'draft';
/** The last one of another window, which a later one replaced. */
const BEFORE_KEY = 'draftBefore';

/** This page of the extension, among those that keep the same draft. */
const HERE = crypto.randomUUID();

const keptSchema = z.object({
  by: z.string(),
  windowId: z._default(z.number(), -1),
  stroke: z._default(z.number(), 0),
  draft: draftSchema,
});
type Kept = z.infer<typeof keptSchema>;

/** Strokes count on from page to page, so that of two drafts the later is known. */
let stroke = 0;
/** What was the last draft before this window kept one. */
let last: Kept | undefined;
let replaced: Draft | undefined;
/** Asked for once: within the stroke there is no time to wait. */
let here: ThisWindow | undefined;

/**
 * What was typed in this window, or last in any; nothing where nothing was. It rejects where the browser's store cannot be read.
 */
export async function readDraft(): Promise<Draft | undefined> {
  const { id, isPrivate } = (here = await thisWindow());
  const own = keptIn(await readStored('session', keyOf('draft', id, isPrivate)).catch(() => undefined));
  if (isPrivate) {
    stroke = own?.stroke ?? 0;
    return own?.draft;
  }
  last = keptIn(await readStored('local', KEY));
  const noted = readLastStroke();
  // A popup that closed within the stroke left its last one here.
  if (noted && noted.stroke > (last?.stroke ?? -1)) last = noted;
  const shown = own && last?.windowId !== id ? own : last;
  stroke = Math.max(last?.stroke ?? 0, own?.stroke ?? 0);
  const before = keptIn(await readStored('local', BEFORE_KEY))?.draft;
  replaced = before && !own && !isSame(before, shown?.draft) ? before : undefined;
  return shown?.draft;
}

/** What another window had typed when a later one took its place as the last; to bring back. */
export function replacedDraft(): Draft | undefined {
  return replaced;
}

/** It rejects where the browser's store is full or refused. */
export async function keepDraft(draft: Draft): Promise<void> {
  stroke += 1;
  const { id, isPrivate } = here ?? (await thisWindow());
  const kept = { by: HERE, windowId: id, stroke, draft };
  if (isPrivate) return store('session', keyOf('draft', id, isPrivate), kept);
  noteLastStroke(kept);
  const other = last;
  last = kept;
  // The memory of the browser may be full: the last one is on the disk all the same.
  const inMemory = store('session', keyOf('draft', id, isPrivate), kept).catch(() => undefined);
  if (other && other.windowId !== id && !isEmpty(other.draft) && !isSame(other.draft, draft))
    await store('local', BEFORE_KEY, other);
  await store('local', KEY, kept);
  await inMemory;
}

/** Calls back with each draft that another page of the extension keeps for this window. */
export async function onDraftElsewhere(take: (draft: Draft) => void): Promise<void> {
  const { id, isPrivate } = here ?? (await thisWindow());
  const see = (value: unknown, mine: boolean) => {
    const kept = keptIn(value);
    if (!kept || kept.by === HERE) return;
    stroke = Math.max(stroke, kept.stroke);
    if (!isPrivate) last = kept;
    if (mine && kept.windowId === id) take(kept.draft);
  };
  onStored('session', keyOf('draft', id, isPrivate), (value) => see(value, true));
  if (!isPrivate) onStored('local', KEY, (value) => see(value, false));
}

function keptIn(value: unknown): Kept | undefined {
  return keptSchema.safeParse(value).data;
}

export function isEmpty({ text, pot, stove }: Draft): boolean {
  return text.trim() === EMPTY_DRAFT.text && Object.keys({ ...pot, ...stove }).length === 0;
}

function isSame(a: Draft, b: Draft | undefined): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** A popup that closes within the stroke takes its unfinished writes with it: the page's own store, which waits for nothing, has the stroke all the same. */
function noteLastStroke(kept: Kept): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(kept));
  } catch {
    // Full or forbidden: the browser's store has the draft, or says that it has not.
  }
}

function readLastStroke(): Kept | undefined {
  try {
    return keptIn(JSON.parse(localStorage.getItem(KEY) ?? 'null'));
  } catch {
    return undefined;
  }
}
