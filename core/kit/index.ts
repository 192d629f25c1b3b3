import { MISSING, valueOf, type Given } from '../model/given.js';
import type { Evidence } from '../model/finding.js';
import type { Item } from '../model/item.js';
import type { Counted, Fuel, Kit, Piece, Stove, Thing, Vessel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import type { Reading } from '../model/reading.js';
import type { InputProblem } from '../model/report.js';
import type { GivenPot, GivenStove } from '../input/pot.js';
import { burnersIn } from './burners.js';
import { netFuel } from './fuel.js';
import { withinLimits } from './limits.js';
import { capacityOf, eachOf, takesFlame } from './vessel.js';

const VESSELS = new Set<Item['kind']>(['pot', 'mug', 'kettle', 'pan']);
const NO_ARMS = {
  armCount: MISSING,
  armInnerMm: MISSING,
  heightMm: MISSING,
  footMm: MISSING,
  powerW: MISSING,
} as const;

/**
 * Sorts what is carried by what it is for. `winter` chooses between alternatives by season.
 * A figure that no such thing can have is left out and told.
 */
export function kitFromReading(
  text: string,
  reading: Reading,
  winter: boolean,
): { kit: Kit; problems: InputProblem[] } {
  const problems: InputProblem[] = [];
  const carried = reading.items
    .map((item, index) => ({ item: withinLimits(item, problems), thing: thingOf(text, reading, item, index) }))
    .filter(({ item }) => item.carried && (item.onlyIn === undefined || (item.onlyIn === 'winter') === winter));
  const of = (...kinds: Item['kind'][]) => carried.filter(({ item }) => kinds.includes(item.kind));
  const pieces = (...kinds: Item['kind'][]) => of(...kinds).map(({ item, thing }) => pieceOf(item, thing));

  const stoves = of('stove').map(({ item, thing }) => stoveOf(item, thing, lineOf(text, reading, item)));
  const lids = pieces('lid');
  const integratedLines = new Set(
    of('stove').flatMap(({ item }) => (valueOf(item.stoveType) === 'integrated' ? [item.line] : [])),
  );
  const vessels = carried
    .filter(
      ({ item }) =>
        VESSELS.has(item.kind) || (valueOf(item.stoveType) === 'integrated' && item.capacitiesMl.length > 0),
    )
    .flatMap(({ item, thing }) => vesselsOf(item, thing, integratedLines.has(item.line)))
    .sort(largestFirst);
  const pans = vessels.filter(({ kind }) => kind === 'pan');
  const lidded = vessels.map((vessel) => withLid(vessel, lids, pans));
  const kit: Kit = {
    onePot: false,
    vessels: lidded,
    pots: cookedIn(lidded),
    stoves,
    fuels: of('fuel').map(({ item, thing }) => fuelOf(item, thing, stoves)),
    lids,
    windscreens: pieces('windscreen'),
    waterCarriers: pieces('bottle', 'bladder'),
    eatWare: pieces('bowl', 'mug'),
    gear: pieces('utensil', 'other-cook'),
  };
  return { kit, problems };
}

/** A kit of one typed pot and, where it was typed, its stove. */
export function kitFromPot(pot: GivenPot, stove: GivenStove | undefined): Kit {
  const thing: Thing = { item: null, name: pot.name, evidence: { quote: pot.name, found: 'typed' } };
  const measures = {
    statedCapacityMl: pot.capacity,
    diameterMm: pot.diameter,
    baseDiameterMm: pot.baseDiameter,
    heightMm: pot.height,
    boxMm: MISSING,
  };
  const vessel: Vessel = {
    ...thing,
    kind: 'pot',
    quantity:
      pot.quantity.grounds === 'missing'
        ? {
            grounds: 'assumed',
            value: 1,
            because: phrase`one pot was typed`,
            replaceWith: phrase`give the number of pots`,
          }
        : pot.quantity,
    perPerson: false,
    perGroup: false,
    capacityMl: capacityOf(measures),
    ...measures,
    earHeightMm: pot.earHeight,
    massG: pot.mass,
    material: pot.material,
    bail: pot.bail,
    lid: pot.lid,
    handles: pot.handles,
    lockedToBurner: stove !== undefined && valueOf(stove.type) === 'integrated',
  };
  const vessels = [vessel];
  const stoves: Stove[] = stove === undefined ? [] : [typedStove(stove, vessel)];
  return {
    onePot: true,
    vessels,
    pots: vessels,
    stoves,
    fuels: [],
    lids: [],
    windscreens: [],
    waterCarriers: [],
    eatWare: [],
    gear: [],
  };
}

/** By capacity; of alike ones by what else decides, so that the order of the lines does not. */
function largestFirst(a: Vessel, b: Vessel): number {
  const by = [
    (vessel: Vessel) => valueOf(vessel.capacityMl) ?? -1,
    (vessel: Vessel) => (vessel.kind === 'pot' ? 1 : 0),
    (vessel: Vessel) => (valueOf(vessel.lid) === true ? 1 : 0),
    (vessel: Vessel) => valueOf(vessel.baseDiameterMm) ?? valueOf(vessel.diameterMm) ?? 0,
    (vessel: Vessel) => valueOf(vessel.diameterMm) ?? 0,
    (vessel: Vessel) => valueOf(vessel.heightMm) ?? 0,
    (vessel: Vessel) => (takesFlame(vessel) ? 1 : 0),
  ];
  return by.map((value) => value(b) - value(a)).find((difference) => difference !== 0) ?? 0;
}

/** Pots; where there is none, the largest other vessel is what they cook in. */
function cookedIn(vessels: readonly Vessel[]): readonly Vessel[] {
  const pots = vessels.filter((vessel) => vessel.kind === 'pot');
  if (pots.length > 0) return pots;
  const others = vessels.filter((vessel) => vessel.kind !== 'pan' && takesFlame(vessel));
  return others.filter((vessel, i) => i === 0 || (valueOf(vessel.capacityMl) ?? -1) === valueOf(others[0]!.capacityMl));
}

function thingOf(text: string, reading: Reading, item: Item, index: number): Thing {
  const line = reading.lines[item.line - 1];
  const name = text.slice(...item.span);
  const evidence: Evidence = {
    line: item.line,
    span: item.span,
    quote: name === '' && line ? text.slice(...line.span).trim() : name,
    found: 'in-list',
  };
  return { item: index, name, evidence };
}

function vesselsOf(item: Item, thing: Thing, onIntegratedLine: boolean): Vessel[] {
  const capacities: readonly Given<number>[] = item.capacitiesMl.length > 0 ? item.capacitiesMl : [MISSING];
  const one = capacities.length === 1;
  return capacities.map((statedCapacityMl) => {
    // Of a set, the one diameter, height and mass that the line gives cannot be said to be any vessel's own.
    const own = <T>(given: Given<T>): Given<T> => (one ? given : MISSING);
    const measures = {
      statedCapacityMl,
      diameterMm: own(item.diameterMm),
      baseDiameterMm: own(item.baseDiameterMm),
      heightMm: own(item.heightMm),
      boxMm: own(item.boxMm),
    };
    return {
      ...thing,
      kind: item.kind === 'mug' || item.kind === 'kettle' || item.kind === 'pan' ? item.kind : 'pot',
      quantity: eachOf(item.quantity, capacities.length),
      perPerson: item.perPerson,
      perGroup: item.perGroup === true,
      capacityMl: capacityOf(measures),
      ...measures,
      earHeightMm: MISSING,
      massG: massOfOne(item, one),
      material: item.material,
      bail: item.bail,
      lid: item.lid,
      handles: handlesOf(item.handles),
      lockedToBurner: onIntegratedLine && item.kind !== 'mug',
    };
  });
}

function massOfOne(item: Item, one: boolean): Given<number> {
  const count = valueOf(item.quantity) ?? 1;
  if (!one || item.massG.grounds === 'missing') return MISSING;
  if (count === 1 || item.massBasis === 'each') return item.massG;
  return item.massBasis === 'line'
    ? { grounds: 'worked-out', value: item.massG.value / count, from: phrase`the line's mass for ${count}`, cites: [] }
    : MISSING;
}

function handlesOf(handles: Given<boolean>): Given<number> {
  return handles.grounds === 'missing' ? MISSING : ({ ...handles, value: handles.value ? 2 : 0 } as Given<number>);
}

/** A lid of its own, a lid elsewhere on the list, or a pan wide enough to cover it. */
function withLid(vessel: Vessel, lids: readonly Piece[], pans: readonly Vessel[]): Vessel {
  if (vessel.lid.grounds !== 'missing') return vessel;
  const width = valueOf(vessel.diameterMm);
  const covers = (given: Given<number>) => width === undefined || given.grounds === 'missing' || given.value >= width;
  const lid = lids.find((piece) => covers(piece.diameterMm));
  const pan = pans.find((other) => width !== undefined && (valueOf(other.diameterMm) ?? 0) >= width);
  const cover = lid ?? pan;
  if (cover === undefined) return vessel;
  const from = phrase`“${cover.evidence.quote}” on line ${cover.evidence.line!}`;
  return {
    ...vessel,
    lid: {
      grounds: 'worked-out',
      value: true,
      from,
      cites: [],
      ...(cover.evidence.span ? { span: cover.evidence.span } : {}),
    },
  };
}

function lineOf(text: string, reading: Reading, item: Item): string {
  const line = reading.lines[item.line - 1];
  return line === undefined ? '' : text.slice(...line.span);
}

function countOf(item: Item): Counted {
  return { quantity: item.quantity, perPerson: item.perPerson, perGroup: item.perGroup === true };
}

function stoveOf(item: Item, thing: Thing, line: string): Stove {
  return {
    ...thing,
    ...countOf(item),
    places: burnersIn(line),
    type: item.stoveType,
    form: item.stoveForm,
    burnerMm: item.burnerMm,
    armSpanMm: item.supportsMm,
    ...NO_ARMS,
  };
}

/** A typed stove stands under the typed pot: one under each of several alike. */
function typedStove(stove: GivenStove, { quantity, perPerson, perGroup }: Counted): Stove {
  return {
    item: null,
    name: stove.name,
    evidence: { quote: stove.name, found: 'typed' },
    quantity,
    perPerson,
    perGroup,
    places: 1,
    type: stove.type,
    form: stove.form,
    burnerMm: stove.burnerDiameter,
    armCount: stove.armCount,
    armInnerMm: stove.armInner,
    armSpanMm: stove.armSpan,
    heightMm: stove.height,
    footMm: stove.footDiameter,
    powerW: stove.powerW,
  };
}

function fuelOf(item: Item, thing: Thing, stoves: readonly Stove[]): Fuel {
  const type = item.fuelType.grounds === 'missing' ? fuelOfOnlyStove(stoves) : item.fuelType;
  const { gasMix: mix, gasShares: shares } = item;
  return { ...thing, ...countOf(item), type, mix, shares, netG: netFuel(item, valueOf(type)) };
}

/** A fuel that the line does not name is what the one stove burns. */
function fuelOfOnlyStove(stoves: readonly Stove[]): Fuel['type'] {
  const [stove, ...others] = stoves;
  const type = stove === undefined || others.length > 0 ? undefined : valueOf(stove.type);
  if (type === undefined) return MISSING;
  return {
    grounds: 'worked-out',
    value: type === 'integrated' ? 'gas' : type,
    from: phrase`what the stove burns`,
    cites: [],
  };
}

function pieceOf(item: Item, thing: Thing): Piece {
  return {
    ...thing,
    kind: item.kind,
    ...(item.role === undefined ? {} : { role: item.role }),
    ...countOf(item),
    capacityMl: item.capacitiesMl[0] ?? MISSING,
    diameterMm: item.diameterMm,
    material: item.material,
  };
}
