import type { GasId, GasShares } from '../../model/item.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from './stretch.js';

/** The gases of one label with their shares, and the tokens that say them. */
export interface Label {
  readonly first: number;
  readonly last: number;
  /** Undefined where they do not add up. */
  readonly shares: GasShares | undefined;
}

interface Share {
  readonly at: number;
  /** The last token of it: the number, or its per cent sign. */
  readonly last: number;
  readonly value: number;
}

/** What shares may add up to, in per cent: labels round. */
const LEAST_SUM = 97;
const MOST_SUM = 103;
/** Tokens between a gas or a share and the next of the same label. */
const REACH = 3;

const NONE: readonly Label[] = [];

/**
 * The mixes that a row gives with their shares, in the order of the text: "70 % butane, 30 % propane", "propane 30 butane 70", "butane/propane 70/30",
 * "isobutane with 20 % propane". One share fewer than gases leaves the rest to the gas without.
 */
export function labelsOf(stretch: Stretch): readonly Label[] {
  const gases = termsOf(stretch, 'gasMixes').filter((term) => term.value !== 'winter');
  if (gases.length < 2) return NONE;
  const shares = sharesIn(stretch);
  const labels: Label[] = [];
  for (const group of groupsOf([...gases, ...shares])) {
    const named = gases.filter((gas) => group.first <= gas.first && gas.last <= group.last);
    const said = shares.filter((share) => group.first <= share.at && share.last <= group.last);
    if (named.length > 1 && said.length > 0) labels.push({ ...group, shares: addedUp(named, said) });
  }
  return labels;
}

/** Numbers with a per cent sign, and numbers that a slash, a colon or a hyphen ties: "70/30". */
function sharesIn({ tokens }: Stretch): Share[] {
  const shares: Share[] = [];
  for (const [at, { number }] of tokens.entries()) {
    if (number === undefined || !(number.value > 0 && number.value <= 100)) continue;
    if (tokens[at + 1]?.fold === '%') shares.push({ at, last: at + 1, value: number.value });
    else if (isTied(tokens, at, 1) || isTied(tokens, at, -1)) shares.push({ at, last: at, value: number.value });
  }
  return shares;
}

function isTied(tokens: Stretch['tokens'], at: number, step: 1 | -1): boolean {
  return '/:-'.includes(tokens[at + step]?.fold ?? ' ') && tokens[at + 2 * step]?.type === 'number';
}

/** Stretches of tokens in which gases and shares stand close together. */
function groupsOf(parts: readonly (Term | Share)[]): { first: number; last: number }[] {
  const places = parts
    .map((part) => ({ first: 'at' in part ? part.at : part.first, last: part.last }))
    .sort((a, b) => a.first - b.first);
  const groups: { first: number; last: number }[] = [];
  for (const place of places) {
    const group = groups.at(-1);
    if (group !== undefined && place.first - group.last <= REACH) group.last = place.last;
    else groups.push({ ...place });
  }
  return groups;
}

/** The shares of a label, as parts of 1. */
function addedUp(gases: readonly Term[], shares: readonly Share[]): GasShares | undefined {
  const sum = shares.reduce((total, { value }) => total + value, 0);
  const pairs: [GasId, number][] = [];
  if (gases.length > 1 && shares.length === gases.length && sum >= LEAST_SUM && sum <= MOST_SUM)
    for (const [i, gas] of gases.entries()) pairs.push([gas.value as GasId, (shares[i]?.value ?? 0) / sum]);
  else if (gases.length === 2 && shares.length === 1 && sum < 100) {
    const [own, rest] = [...gases].sort((a, b) => distance(a, shares[0]!) - distance(b, shares[0]!));
    pairs.push([own!.value as GasId, sum / 100], [rest!.value as GasId, 1 - sum / 100]);
  }
  if (pairs.length === 0 || new Set(pairs.map(([gas]) => gas)).size < pairs.length) return undefined;
  return Object.fromEntries(pairs.map(([gas, share]) => [gas, Math.round(share * 1e4) / 1e4]));
}

/** A share stands rather before its gas than after it: "isobutane, 20 % propane". */
function distance(gas: Term, share: Share): number {
  return gas.first > share.last ? gas.first - share.last : share.at - gas.last + 0.5;
}
