/** Saved kits: drafts with names, no two of them the same. */
import type { Draft } from '../widget/index.js';

export interface Kit {
  readonly name: string;
  readonly draft: Draft;
  /** What the person noted of it. */
  readonly notes?: string;
  /** Words to find it by. */
  readonly tags?: readonly string[];
  /** The day it was last saved, as YYYY-MM-DD. */
  readonly saved?: string;
}

/** The kits with one saved, in place of one that has its name. */
export function withKit(kits: readonly Kit[], kit: Kit): readonly Kit[] {
  return [...withoutKit(kits, kit.name), kit];
}

export function withoutKit(kits: readonly Kit[], name: string): readonly Kit[] {
  return kits.filter((kit) => kit.name !== name);
}

/** The kits with others added: none is replaced, and one that is there already is not added again. `same` counts those. */
export function withKits(
  kits: readonly Kit[],
  more: readonly Kit[],
): { readonly kits: readonly Kit[]; readonly same: number } {
  const all = [...kits];
  const taken = new Set(kits.map(({ name }) => name));
  const there = new Set(kits.map(sign));
  /** The number that each name was last given. */
  const numbers = new Map<string, number>();
  let same = 0;
  for (const kit of more) {
    if (there.has(sign(kit))) {
      same += 1;
      continue;
    }
    there.add(sign(kit));
    const name = freeOf(taken, kit.name, numbers);
    taken.add(name);
    all.push({ ...kit, name });
  }
  return { kits: all, same };
}

function sign({ name, draft }: Kit): string {
  return JSON.stringify([name, draft]);
}

/** The name, or where another kit has it, the name and a number: "Humblefern 2". */
export function freeName(kits: readonly Kit[], name: string): string {
  return freeOf(new Set(kits.map((kit) => kit.name)), name);
}

function freeOf(taken: ReadonlySet<string>, name: string, numbers = new Map<string, number>()): string {
  if (!taken.has(name)) return name;
  let number = numbers.get(name) ?? 2;
  while (taken.has(`${name} ${number}`)) number += 1;
  numbers.set(name, number + 1);
  return `${name} ${number}`;
}

export type KitOrder = 'name' | 'newest';

/** In the order of their names, "Kit 2" before "Kit 10", or the ones saved last first. */
export function inOrder(kits: readonly Kit[], order: KitOrder): readonly Kit[] {
  const { compare } = new Intl.Collator(undefined, { numeric: true });
  const byName = (a: Kit, b: Kit) => compare(a.name, b.name);
  return order === 'name'
    ? [...kits].sort(byName)
    : [...kits].sort((a, b) => (b.saved ?? '').localeCompare(a.saved ?? '') || byName(a, b));
}

/** Those that have all the words somewhere: in the name, the tags, the notes or the list. Capitals and accents make no difference. */
export function kitsWith(kits: readonly Kit[], words: string): readonly Kit[] {
  const wanted = folded(words).split(/\s+/).filter(Boolean);
  if (wanted.length === 0) return kits;
  return kits.filter(({ name, notes = '', tags = [], draft }) => {
    const all = folded([name, notes, ...tags, draft.text].join('\n'));
    return wanted.every((word) => all.includes(word));
  });
}

function folded(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}
