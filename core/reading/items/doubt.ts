import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import type { Measure } from '../quantities/measures.js';
import { assumed, type Draft } from './draft.js';
import { basisOf } from './mass.js';
import { inParentheses } from './clauses.js';
import { termsOf, type Stretch } from './stretch.js';

/** A cook pot holds at least this, mL: common practice. Less is a cup, or a slip of the unit. */
const LEAST_POT_ML = 200;

/** The heaviest can of gas that is carried, g, full: common practice. More on one line is several. */
const HEAVIEST_CAN_G = 720;

/** Turns what the text gives, and a careful reader doubts, into a guess with its reason. */
export function doubt(stretch: Stretch, draft: Draft): void {
  draft.capacitiesMl = draft.capacitiesMl.map((given) => doubtful(given, capacityDoubt(stretch, draft, given)));
  draft.massG = doubtful(draft.massG, massDoubt(stretch, draft, draft.massG));
  draft.fuelMassG = doubtful(draft.fuelMassG, fuelDoubt(stretch, draft, draft.fuelMassG));
  severalCans(stretch, draft);
  tabletsTogether(stretch, draft);
}

interface Doubt {
  readonly because: string;
  readonly replaceWith: string;
}

function doubtful(given: Given<number>, reason: Doubt | undefined): Given<number> {
  if (given.grounds !== 'stated' || given.most !== undefined || reason === undefined) return given;
  return assumed(given.value, reason.because, reason.replaceWith, given.span);
}

const QUERIED: Doubt = {
  because: phrase`the text itself puts a question mark to it`,
  replaceWith: phrase`write it without "?"`,
};

function capacityDoubt(stretch: Stretch, draft: Draft, given: Given<number>): Doubt | undefined {
  const measure = measureOf(stretch, given);
  if (measure === undefined || given.grounds !== 'stated') return undefined;
  if (isQueried(stretch, measure)) return QUERIED;
  if (measure.unit.id === 'pint' && measure.unsure === true)
    return {
      because: phrase`a pint is 473 ml in the US and 568 ml in Britain; the text does not say which`,
      replaceWith: phrase`write the millilitres`,
    };
  if (measure.unit.id === 'cup' && draft.kind === 'kettle' && isOfDrink(stretch, draft))
    return {
      because: phrase`a coffee maker’s cup may be 150 ml; it is taken as a measuring cup`,
      replaceWith: phrase`write the millilitres`,
    };
  if (draft.kind === 'pot' && given.value < LEAST_POT_ML)
    return {
      because: phrase`smaller than any cook pot: a cup, or a slip of the unit`,
      replaceWith: phrase`write the millilitres`,
    };
  return undefined;
}

/** "Coffee pot": a vessel named by what is made in it. */
function isOfDrink(stretch: Stretch, draft: Draft): boolean {
  return termsOf(stretch, 'food').some((term) => term.first >= draft.noun[0] && term.last <= draft.noun[1]);
}

function massDoubt(stretch: Stretch, draft: Draft, given: Given<number>): Doubt | undefined {
  const measure = measureOf(stretch, given);
  if (measure === undefined) return undefined;
  if (isQueried(stretch, measure)) return QUERIED;
  const lid = termsOf(stretch, 'kind').find((term) => term.value === 'lid' && term.first === measure.last + 2);
  const weighed =
    lid !== undefined &&
    stretch.measures.some((other) => other.unit.dimension === 'mass' && other.first === lid.last + 1);
  return weighed && draft.noun[1] >= 0 && inParentheses(stretch, draft.noun[1], measure.first)
    ? {
        because: phrase`taken without the lid, whose mass stands beside it`,
        replaceWith: phrase`write the mass of the pot alone`,
      }
    : undefined;
}

function fuelDoubt(stretch: Stretch, draft: Draft, given: Given<number>): Doubt | undefined {
  const measure = measureOf(stretch, given);
  if (measure === undefined) return undefined;
  if (isQueried(stretch, measure)) return QUERIED;
  return measure.unit.dimension === 'ounce' && draft.fuelType.grounds === 'missing'
    ? {
        because: phrase`ounces of an unnamed fuel are taken by mass`,
        replaceWith: phrase`write the grams, or the millilitres`,
      }
    : undefined;
}

/** More grams than any one can weighs: the scale had several on it, whatever the count says. Bottles go by kilograms. */
function severalCans(stretch: Stretch, draft: Draft): void {
  const { fuelMassG: net, fuelType } = draft;
  if (draft.kind !== 'fuel' || fuelType.grounds === 'missing' || fuelType.value !== 'gas') return;
  if (net.grounds !== 'stated' || net.value <= HEAVIEST_CAN_G || draft.massG.grounds !== 'missing') return;
  const measure = measureOf(stretch, net);
  const each = ['x', '×'].includes(stretch.tokens[(measure?.first ?? 0) - 1]?.fold ?? '');
  if (measure?.unit.id !== 'g' || each) return;
  draft.fuelMassG = { grounds: 'missing' };
  draft.massG = assumed(
    net.value,
    phrase`more than one can weighs; taken as several full cans together`,
    phrase`write the grams of gas in each can and how many`,
    net.span,
  );
  draft.massBasis = 'line';
}

/** The heaviest tablet of fuel, g: common practice. */
const HEAVIEST_TABLET_G = 30;

/** "6 tablets 84 g": more than one tablet weighs, and as much as they do together. */
function tabletsTogether(stretch: Stretch, draft: Draft): void {
  const { fuelMassG: net, fuelType, quantity } = draft;
  if (fuelType.grounds === 'missing' || fuelType.value !== 'solid-fuel') return;
  if (net.grounds !== 'stated' || quantity.grounds !== 'stated' || net.value <= HEAVIEST_TABLET_G) return;
  const each = net.value / quantity.value;
  const measure = measureOf(stretch, net);
  if (each > HEAVIEST_TABLET_G || measure === undefined || basisOf(stretch, measure) === 'each') return;
  const at = stretch.tokens.findIndex(({ start }) => start === quantity.span?.[0]);
  const counted = [...termsOf(stretch, 'tablets'), ...termsOf(stretch, 'fuelTypes')].some(
    (term) => term.first === at + 1,
  );
  if (counted && quantity.value > 1)
    draft.fuelMassG = {
      grounds: 'worked-out',
      value: each,
      from: phrase`the line's mass for ${quantity.value}`,
      cites: [],
    };
}

function measureOf(stretch: Stretch, given: Given<number>): Measure | undefined {
  if (given.grounds !== 'stated' || given.span === undefined) return undefined;
  const [start, end] = given.span;
  return stretch.measures.find(
    (measure) =>
      (stretch.tokens[measure.first]?.start ?? -1) <= start && (stretch.tokens[measure.last]?.end ?? -1) >= end,
  );
}

function isQueried(stretch: Stretch, measure: Measure): boolean {
  return stretch.tokens[measure.last + 1]?.fold === '?';
}
