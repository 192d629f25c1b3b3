import type { FuelType, GasMix, GearRole, ItemKind, Material, StoveForm, StoveType } from '../../model/item.js';
import type { Season, Snow, Wind } from '../../model/trip.js';

/**
 * Words and phrases, in lower case, as a list in one string: `'pot, saucepan | pots, saucepans'`.
 *
 * - Commas part the entries; spaces stay inside a phrase ("coffee pot"). A hyphen counts as a space: write the space.
 * - Before `|` stand forms of one, after it forms of many. Without `|`, or on both sides of it, the number does not matter.
 * - `~topf` also ends a longer word (Kochtopf), `titan~` also begins one (Titantopf), `~x~` stands anywhere in one.
 * - Case and accents need no care: "creme" matches "crème"; but write the accents, so that an exact match can win.
 * - The longest phrase wins: "pot lifter" beats "pot". Of two words of a compound the longer ending wins ("~nachttopf" beats "~topf").
 * - In a language written without spaces every entry matches anywhere; the longest wins.
 */
export type Forms = string;

/** What a table's column holds. */
export type ColumnMeaning =
  | 'item'
  | 'quantity'
  /** Mass of one piece. */
  | 'each'
  /** Mass of the row. */
  | 'total'
  /** Mass, of one or of all. */
  | 'mass'
  | 'capacity'
  /** Dimensions. */
  | 'size'
  /** The unit of the figure beside it. */
  | 'unit'
  | 'category'
  | 'material'
  | 'owner'
  | 'notes'
  /** Price, link, brand, photo, packed: of no use here. */
  | 'ignore';

/** What a section of a list is about. Only cook and water lend their context; things named in the others are not cook kit. */
export type SectionMeaning =
  | 'cook'
  | 'water'
  | 'fuel'
  | 'food'
  | 'clothes'
  | 'sleep'
  | 'wash'
  | 'medicine'
  | 'car'
  /** Games, music, reading, tags: what is never cook kit, whatever its name. */
  | 'play'
  /** Tools, electronics, papers, light, odds and ends. */
  | 'other';

/** Why a named thing is not in the kit. */
export type AwayReason =
  /** At home, left behind, stays in the car. */
  | 'left'
  /** A wish list, to buy some day. */
  | 'wished'
  /** Replaced, sold, broken, given away, returned, the old one. */
  | 'replaced'
  /** Forbidden: do not bring. */
  | 'forbidden'
  /** Decided against: not needed, pointless, a waste of weight. */
  | 'unneeded'
  /** Somebody else's, or only compared with. */
  | 'compared';

/** Which dimension a number is. */
export type DimensionMeaning =
  | 'diameter'
  | 'height'
  | 'base'
  /** Width of the flame: burner head, fire chamber. */
  | 'burner'
  /** What a pot stands on: arms, ring, supports. */
  | 'supports'
  /** A length that says nothing here: blade, hose, cord, gap. */
  | 'ignore';

/** Names of the units, whose symbols (ml, g, oz, in …) every language shares. */
export type UnitName =
  | 'millilitre'
  | 'centilitre'
  | 'decilitre'
  | 'litre'
  | 'fluid-ounce'
  | 'cup'
  | 'pint'
  | 'quart'
  | 'gallon'
  | 'gram'
  | 'decagram'
  | 'hectogram'
  /** The pound of metric countries: Pfund, pond. */
  | 'half-kilo'
  | 'kilogram'
  | 'ounce'
  | 'pound'
  | 'millimetre'
  | 'centimetre'
  | 'metre'
  | 'inch'
  | 'foot'
  | 'degree-c'
  | 'degree-f';

/** Everything the reader must know of one language. Words only; the rules are in `core/reading`. */
export interface Words {
  /** BCP 47 tag: "en". */
  readonly language: string;
  /** Its own name. */
  readonly name: string;
  /** The mark between units and tenths in this language. */
  readonly decimal: '.' | ',';
  /** True where words are written without spaces between them. */
  readonly unspaced?: true;
  /** Short words that tell the language of a text (the, and, with). At least ten, and as few as possible that other languages share. */
  readonly tellTale: Forms;

  /** Nouns by kind. A word that means a kind only beside another word is a phrase here ("hot pot"). */
  readonly kinds: Readonly<Record<ItemKind, Forms>>;
  /** Nouns of containers (bottle, can, canister, bag) whose kind hangs on what is in them: fuel, water, or something else. */
  readonly containers: {
    /** Rigid: bottle, flask, jug. Of fuel: fuel; else a bottle. */
    readonly rigid: Forms;
    /** Soft: bag, sack, pouch. Of water or in a water section: a bladder; else nothing. */
    readonly soft: Forms;
    /** can, canister, cartridge: of gas: fuel; of food, spray or a lamp: nothing. */
    readonly can: Forms;
  };
  /** Words that stand for the thing named before, with a figure of their own: (the 0.8 l) one. */
  readonly pronoun?: Forms;
  /** Words that look like kit and are not: potato, pants, toothbrush mug, flower pot, can opener, "pot of". They take nothing, and hide what is inside them. */
  readonly notKit: Forms;
  /** Words that, right after the name of a thing, make it something else that is not kit: (pot) scrubber, (stove) bag, (bottle) opener. */
  readonly tails: Forms;
  /** Words that, right before the name of a thing, make it something else that is not kit: housse de (popote), bag for. */
  readonly heads: Forms;
  /** Words after which a thing is only mentioned: for (the stove), in (the pot), fits (the mug). */
  readonly asides: Forms;
  /** Of those, the words before a thing that another is made to go with: (stove) for (230 g canisters), (pot) fits (a 110 g canister). */
  readonly fits?: Forms;
  /** True where the main noun comes first (bouteille d'alcool), so that a noun after it only describes it. */
  readonly headFirst?: true;
  /** Words that turn any fuel, can or bottle of the same clause to another use: lantern, lamp, car, spray, food, wipes, pee. */
  readonly otherUse: Forms;
  /** Words for food and drink as served, which turn a vessel beside them into a measure: soup, noodles, tea, jam. */
  readonly food: Forms;
  /** Words for water, as an amount or in a name: water, drinking. */
  readonly water: Forms;

  readonly materials: Readonly<Record<Material, Forms>>;
  /** Words that tell what a stove burns, beside the word for stove: gas, canister, spirit, twig. */
  readonly stoveTypes: Readonly<Record<StoveType, Forms>>;
  readonly stoveForms: Readonly<Record<StoveForm, Forms>>;
  /** Names of pans that in a size of litres are pots: (2) pans (1.5 l). */
  readonly saucepans?: Forms;
  /** Names of windscreens that a jacket bears too: a windscreen only beside a stove or in the kitchen. */
  readonly jackets?: Forms;
  /** Names of fuels that make an item on their own ("meths 300 ml") or beside a container. */
  readonly fuelTypes: Readonly<Record<FuelType, Forms>>;
  /** Of those names, the ones that are fuel only where nothing else is named: tablets, tabs. */
  readonly tablets?: Forms;
  readonly gasMixes: Readonly<Record<GasMix, Forms>>;
  /** What an other-cook item is for. */
  readonly roles: Readonly<Record<GearRole, Forms>>;
  /** A wire or swinging handle over the top. */
  readonly bail: Forms;
  /** Vessels that hang by a bail by their nature: billy, котелок. */
  readonly hung?: Forms;
  /** Any other handle. */
  readonly handles: Forms;
  /** Adjectives that say it has a lid: lidded. */
  readonly lidded: Forms;

  /** Number words from 0: each entry `[value, forms]`. Articles that count (a, ein) stand under `article`. */
  readonly numbers: readonly (readonly [number, Forms])[];
  readonly article: Forms;
  /** Words that a noun follows (the, my, this): after one of them "in" is no inch, and "instead of the" speaks of the noun. */
  readonly determiners?: Forms;
  /** Counting words after a number: pcs, pieces, Stück. */
  readonly pieces: Forms;
  /** After the number of parts of a set: (3) piece, teilig. */
  readonly parts?: Forms;
  /** After the number of flames of one stove: (2) burner, flammig. */
  readonly flames?: Forms;
  /** Words before a count: qty, count, number, how many. */
  readonly countLabels: Forms;
  /** Two: pair, a couple of. */
  readonly pair: Forms;
  /** A package that holds several: pack of, set of, box of. */
  readonly packOf: Forms;
  /** A set as a whole: set, nesting, kit. */
  readonly set: Forms;
  /** After a figure: of one piece. */
  readonly each: Forms;
  /** After a figure: of all pieces together. */
  readonly together: Forms;
  /** For each person: per person, each, one each, everyone brings. Used after a thing, and in section heads. */
  readonly perPerson: Forms;
  /** Shared by everybody: shared, group, between us. */
  readonly shared: Forms;
  /** Before a number of people who share one: per, between, for every. */
  readonly perGroup: Forms;

  /** no, without, none, not any. */
  readonly no: Forms;
  /** yes (a value that says the thing is there). */
  readonly yes: Forms;
  /** Follows a thing that is not there: missing, lost. */
  readonly missing: Forms;
  readonly with: Forms;
  readonly and: Forms;
  readonly or: Forms;
  /** Between the ends of a range: to. */
  readonly to: Forms;
  /** Before something that holds only on a condition: if, only if, when. */
  readonly if: Forms;
  /** roughly, about: before a figure. */
  readonly about: Forms;
  readonly away: Readonly<Record<AwayReason, Forms>>;
  /** Verbs of who takes things along: I take (a pot), we carried (two), it consists of. */
  readonly carries?: Forms;
  /** A can of which half is gone. */
  readonly halfFull?: Forms;
  /** Before what several things named before have in common: (two pots), both (with lids). */
  readonly both?: Forms;
  /** May or may not come: optional, maybe, if there is room. Still in the kit. */
  readonly optional: Forms;

  /** A full can, gross: full, new, gross. */
  readonly gross: Forms;
  readonly net: Forms;
  readonly empty: Forms;
  /** Before or after a figure of what a vessel holds: holds, takes, capacity, volume, to the brim. */
  readonly holds: Forms;
  /** Before or after a mass: weighs, weight. */
  readonly weighs: Forms;
  readonly dimensions: Readonly<Record<DimensionMeaning, Forms>>;
  /** Words that tie an amount to time or use, so that it is no size of a thing: per day, a day, per litre, to boil. */
  readonly rate: Forms;

  readonly columns: Readonly<Record<ColumnMeaning, Forms>>;
  readonly sections: Readonly<Record<SectionMeaning, Forms>>;
  /** Words of a line that sums up: total, subtotal, all, adds up to, base weight. */
  readonly totals: Forms;

  /** Words of units beyond the shared symbols: litre, litres, ounce, pouce. */
  readonly units: Readonly<Partial<Record<UnitName, Forms>>>;
  /** Beside a unit: which pint, quart, gallon or fluid ounce it is. */
  readonly us: Forms;
  readonly imperial: Forms;
  /** Spellings that make the rest of the text's pints and gallons imperial: litre, aluminium, colour. */
  readonly imperialSigns: Forms;

  readonly trip: {
    /** After a number: people, students, of us. */
    readonly people: Forms;
    /** Of those, the words that leave open who they are: they may count all that others count one by one. */
    readonly anyone: Forms;
    /** Before a number, when nothing else follows it: for, party of. */
    readonly peopleBefore: Forms;
    /** A word that says how many: `[people, forms]`: solo, on my own, zu zweit. */
    readonly party: readonly (readonly [number, Forms])[];
    /** Words for being out, beside which a number of people or days is the trip's: trip, tour, on skis. */
    readonly outing: Forms;
    /** Words that put a sentence into another trip's time: last summer, years ago. */
    readonly past: Forms;
    /** Words near metres or feet that make them a way up or down, or an upper bound, and no altitude: elevation gain, below. */
    readonly climb: Forms;
    /** Parts of a party that each cook on their own, `[people, forms]`, 0 where the word leaves open how many: cook group, pair. Counted: (2) cook groups (of 4). */
    readonly cookGroup: readonly (readonly [number, Forms])[];
    /** For each such part, `[people, forms]`: per cook group, each patrol, per pair. */
    readonly eachGroup: readonly (readonly [number, Forms])[];
    /** Who writes, where others are named beside: me (and my dad). */
    readonly self: Forms;
    /** Who goes along, one or several: wife, son | mates. "With two mates" they are three. */
    readonly companion: Forms;
    readonly day: Forms;
    readonly night: Forms;
    readonly week: Forms;
    /** After a number: months of 30 days, a guess. */
    readonly monthLong: Forms;
    /** Stretches of days that are not the trip's: between shops, of food, a can lasts. */
    readonly notDays: Forms;
    /** Words that say how many days: `[days, forms]`: overnighter, weekend, day walk. */
    readonly span: readonly (readonly [number, Forms])[];
    readonly seasons: Readonly<Record<Season, Forms>>;
    /** After the number of a month, where months are numbered (月). */
    readonly monthMark?: Forms;
    /** January to December. */
    readonly months: readonly Forms[];
    /** Monday to Sunday; none where the signs mean other things too. Two of them make a span: Fri–Sun. */
    readonly weekday: readonly Forms[];
    /** The trip needs snow melted. */
    readonly meltsSnow: Forms;
    readonly snow: Readonly<Record<Snow, Forms>>;
    /** "no snow". */
    readonly noSnow: Forms;
    /** Before a number or after it: minus, below zero. One that is a unit as well stands only after it: (10) below. */
    readonly minus: Forms;
    /** Words by which a number without a unit is a temperature: lows, coldest night. */
    readonly lows: Forms;
    /** Words near a temperature that make it the trip's: expected, lows, at night, coldest. */
    readonly cold: Forms;
    /** Words near a temperature that make it a rating of gear: comfort, rated, bag, quilt. */
    readonly rated: Forms;
    /** Words near metres or feet that make them an altitude: camp, pass, altitude, above sea level. */
    readonly altitude: Forms;
    readonly fireAllowed: Forms;
    readonly fireForbidden: Forms;
    readonly cookOnFire: Forms;
    /** Cooking in a tent, a porch, a vestibule, a hut or a van, and what hangs a stove in one. */
    readonly cookInside: Forms;
    /** A gas canister that is turned over in use. */
    readonly turnedOver: Forms;
    readonly wind: Readonly<Record<Wind, Forms>>;
    /** The list is for young people: scouts, pupils. */
    readonly youth: Forms;
    /** Real cooking; cooked in the pot; only boiling. */
    readonly scratch: Forms;
    readonly simmer: Forms;
    readonly boilOnly: Forms;
  };
}
