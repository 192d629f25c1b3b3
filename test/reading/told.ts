import { valueOf, type Given } from '../../core/model/given.js';
import type { Item } from '../../core/model/item.js';

/**
 * An item as a short record: only what is said of it. A guess carries a tilde, a range an en dash, a count of one is
 * left out and an unknown count is "?". Figures are rounded to whole mL, g and mm.
 */
export function told(item: Item): Record<string, unknown> {
  const out: Record<string, unknown> = { kind: item.kindBecause === undefined ? item.kind : `~${item.kind}` };
  const put = (name: string, given: Given<unknown>) => {
    const said = show(given);
    if (said !== undefined) out[name] = said;
  };
  const count = valueOf(item.quantity);
  if (count !== 1) out['n'] = show(item.quantity) ?? '?';
  if (item.capacitiesMl.length > 0) out['ml'] = item.capacitiesMl.map(show);
  put('g', item.massG);
  put('d', item.diameterMm);
  put('h', item.heightMm);
  put('box', item.boxMm);
  put('size', item.sizeMm);
  put('burner', item.burnerMm);
  put('supports', item.supportsMm);
  put('material', item.material);
  put('bail', item.bail);
  put('lid', item.lid);
  put('handles', item.handles);
  put('stove', item.stoveType);
  put('form', item.stoveForm);
  put('fuel', item.fuelType);
  put('mix', item.gasMix);
  put('shares', item.gasShares);
  put('net', item.fuelMassG);
  put('liquid', item.fuelVolumeMl);
  if (item.role !== undefined) out['role'] = item.role;
  if (item.onlyIn !== undefined) out['onlyIn'] = item.onlyIn;
  if (item.perPerson) out['perPerson'] = true;
  if (item.perGroup) out['perGroup'] = true;
  if (!item.carried) out['carried'] = false;
  return out;
}

function show(given: Given<unknown>): unknown {
  const value = valueOf(given);
  if (value === undefined) return undefined;
  const tidy = typeof value === 'number' ? Math.round(value) : value;
  const words = typeof tidy === 'string' ? tidy : JSON.stringify(tidy);
  if (given.grounds === 'assumed') return `~${words}`;
  if (given.grounds === 'stated' && typeof given.most === 'number') return `${words}–${Math.round(given.most)}`;
  return tidy;
}
