/** Saved kits: drafts with names, no two of them the same. */
import type { Draft } from '../widget/index.js';

export interface Kit {
  readonly name: string;
  readonly draft: Draft;
}

/** The kits with a draft saved under a name, in place of one that has it. */
export function withKit(kits: readonly Kit[], name: string, draft: Draft): readonly Kit[] {
  return [...withoutKit(kits, name), { name, draft }];
}

export function withoutKit(kits: readonly Kit[], name: string): readonly Kit[] {
  return kits.filter((kit) => kit.name !== name);
}

/** The kits with others added: none is replaced, and one that is there already is not added again. */
export function withKits(kits: readonly Kit[], more: readonly Kit[]): readonly Kit[] {
  return more.reduce((all, kit) => {
    const there = all.some(
      (other) => other.name === kit.name && JSON.stringify(other.draft) === JSON.stringify(kit.draft),
    );
    return there ? all : [...all, { ...kit, name: freeName(all, kit.name) }];
  }, kits);
}

/** The name, or where another kit has it, the name and a number: "Humblefern 2". */
export function freeName(kits: readonly Kit[], name: string): string {
  const taken = new Set(kits.map((kit) => kit.name));
  let free = name;
  for (let number = 2; taken.has(free); number += 1) free = `${name} ${number}`;
  return free;
}
