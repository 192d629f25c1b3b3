import type { Given } from '../../model/given.js';
import type { Item } from '../../model/item.js';

/**
 * What is read, in one line: "pot 1300 ml 120 g titanium; mug ×2 80 g each". A guess has a tilde; a count of one is left out, an unknown
 * one is "×?"; "no" stands before what is left out and before a lid, bail or handle that is denied.
 */
export function tell(items: readonly Item[]): string {
  return items.map(tellOne).join('; ');
}

function tellOne(item: Item): string {
  const words: string[] = [`${item.carried ? '' : 'no '}${item.kindBecause === undefined ? '' : '~'}${item.kind}`];
  const count = figure(item.quantity);
  if (count === undefined) words.push('×?');
  else if (count !== '1' && count !== '~1') words.push(`×${count}`);
  if (item.perPerson) words.push('a person');
  if (item.perGroup === true) words.push('a group');
  if (item.capacitiesMl.length > 0) words.push(`${item.capacitiesMl.map(figure).join('+')} ml`);
  for (const [given, before, after] of figuresOf(item)) {
    const told = figure(given);
    if (told !== undefined) words.push(`${before}${told}${after}`);
  }
  if (item.boxMm.grounds !== 'missing') words.push(`box ${item.boxMm.value.map(Math.round).join('×')}`);
  for (const [given, name] of [
    [item.lid, 'lid'],
    [item.bail, 'bail'],
    [item.handles, 'handles'],
  ] as const)
    if (given.grounds !== 'missing')
      words.push(`${given.value ? '' : 'no '}${given.grounds === 'assumed' ? '~' : ''}${name}`);
  for (const given of [item.material, item.stoveType, item.stoveForm, item.fuelType, item.gasMix])
    if (given.grounds !== 'missing') words.push(`${given.grounds === 'assumed' ? '~' : ''}${given.value}`);
  if (item.gasShares.grounds !== 'missing')
    for (const [gas, share] of Object.entries(item.gasShares.value)) words.push(`${gas} ${Math.round(100 * share)} %`);
  if (item.role !== undefined) words.push(item.role);
  if (item.onlyIn !== undefined) words.push(`in ${item.onlyIn}`);
  return words.join(' ');
}

/** The figures of an item, with what stands before and after each. */
function figuresOf(item: Item): (readonly [Given<number>, string, string])[] {
  const basis = item.massBasis === 'each' ? ' each' : item.massBasis === 'line' ? ' in all' : '';
  return [
    [item.massG, '', ` g${basis}`],
    [item.fuelMassG, '', ' g net'],
    [item.fuelVolumeMl, '', ' ml liquid'],
    [item.diameterMm, 'Ø', ''],
    [item.baseDiameterMm, 'base ', ''],
    [item.heightMm, 'h', ''],
    [item.sizeMm, 'size ', ''],
    [item.burnerMm, 'burner ', ''],
    [item.supportsMm, 'supports ', ''],
  ];
}

function figure(given: Given<number>): string | undefined {
  if (given.grounds === 'missing') return undefined;
  const most = given.grounds === 'stated' && given.most !== undefined ? `–${Math.round(given.most)}` : '';
  return `${given.grounds === 'assumed' ? '~' : ''}${Math.round(given.value)}${most}`;
}
