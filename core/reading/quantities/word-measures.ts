import type { UnitName } from '../../data/words/words.js';
import type { Term } from '../text/terms.js';
import type { Token } from '../text/tokens.js';
import type { Measure, MeasureContext } from './measures.js';
import { halfAfter } from './halves.js';
import { factorOf, toScale } from './scale.js';
import { unitByName } from './units.js';

/** "half a pint", "two litres", "pint pot", "un litre et demi": a number in words, or none, before the name of a unit. */
export function wordMeasures(
  tokens: readonly Token[],
  terms: readonly Term[],
  unitTerms: ReadonlyMap<number, Term>,
  found: readonly Measure[],
  context: MeasureContext,
  joiners: ReadonlyMap<number, Term>,
  halves: ReadonlyMap<number, Term>,
): Measure[] {
  const measures: Measure[] = [];
  for (const term of unitTerms.values()) {
    if (found.some((measure) => measure.first <= term.first && measure.last >= term.first)) continue;
    const unit = unitByName(term.value as UnitName);
    if (unit.dimension === 'temperature') continue;
    const article = terms.find((other) => other.role === 'article' && other.last === term.first - 1);
    const hyphen = tokens[term.first - 1]?.fold === '-' && tokens[term.first]?.gap === 0 ? 1 : 0;
    const end = article?.first ?? term.first - hyphen;
    const word = terms.find((other) => other.role === 'number' && other.last === end - 1 && Number(other.value) > 0);
    const vessel = terms.some(
      (other) => other.role === 'kind' && other.first === term.last + 1 && tokens[other.first]?.gap !== 2,
    );
    const named = vessel && unit.dimension === 'volume' && unit.id !== 'cup';
    const halved = article !== undefined && halfAfter(term.last, joiners, halves, tokens) !== undefined;
    if (word === undefined && !named && !halved) continue;
    const system = unit.metric === true ? 'metric' : unit.id === 'pint' ? context.pints : context.system;
    const first = word?.first ?? term.first;
    measures.push({
      first,
      last: term.last,
      unit,
      values: [toScale(word === undefined ? 1 : Number(word.value), unit, factorOf(unit, system))],
      at: [first],
      joined: 'one',
      system,
      ...(unit.metric === true || context.systemKnown ? {} : { unsure: true as const }),
    });
  }
  return measures;
}
