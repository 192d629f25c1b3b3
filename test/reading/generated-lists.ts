import fc from 'fast-check';
import type { ItemKind } from '../../core/index.js';

/** Lists put together from things with known values, in random layouts, units, languages and noise: the truth is written with them. */

export interface Truth {
  readonly kind: ItemKind;
  readonly quantity: number;
  /** mL; null where the list says nothing. */
  readonly capacityMl: number | null;
  /** g; null where the list says nothing. */
  readonly massG: number | null;
}

export interface GeneratedList {
  readonly text: string;
  readonly truth: readonly Truth[];
}

/** One thing's names: of one and of many. */
type Names = readonly (readonly [one: string, many: string])[];

interface Language {
  readonly decimal: '.' | ',';
  readonly names: Readonly<Partial<Record<ItemKind, Names>>>;
  readonly units: { readonly volume: readonly string[]; readonly mass: readonly string[] };
  readonly heads: readonly [thing: string, quantity: string, mass: string];
  readonly heading: string;
  /** Other things of a pack, some with figures: none of them is cook kit. */
  readonly noise: readonly string[];
}

const METRIC = { volume: ['ml', 'l', 'cl'], mass: ['g', 'kg'] };

const LANGUAGES: Readonly<Record<string, Language>> = {
  en: {
    decimal: '.',
    names: {
      pot: [
        ['titanium pot', 'titanium pots'],
        ['pot', 'pots'],
        ['saucepan', 'saucepans'],
      ],
      mug: [
        ['mug', 'mugs'],
        ['steel mug', 'steel mugs'],
      ],
      kettle: [['kettle', 'kettles']],
      pan: [['frying pan', 'frying pans']],
      stove: [
        ['gas stove', 'gas stoves'],
        ['alcohol stove', 'alcohol stoves'],
      ],
      windscreen: [['windscreen', 'windscreens']],
      bottle: [['water bottle', 'water bottles']],
      bowl: [['bowl', 'bowls']],
      utensil: [
        ['spoon', 'spoons'],
        ['spork', 'sporks'],
      ],
    },
    units: { volume: ['ml', 'l', 'fl oz', 'qt'], mass: ['g', 'kg', 'oz', 'lb'] },
    heads: ['Item', 'Qty', 'Weight'],
    heading: 'Kitchen',
    noise: [
      'Rain jacket',
      'Sleeping bag, 900 g',
      'Head torch with spare batteries',
      'First aid kit',
      'Towel (150 g)',
      'Map 1:50 000',
      'Socks x 3',
    ],
  },
  de: {
    decimal: ',',
    names: {
      pot: [
        ['Topf', 'Töpfe'],
        ['Kochtopf', 'Kochtöpfe'],
      ],
      mug: [
        ['Becher', 'Becher'],
        ['Tasse', 'Tassen'],
      ],
      kettle: [['Wasserkessel', 'Wasserkessel']],
      pan: [['Pfanne', 'Pfannen']],
      stove: [
        ['Gaskocher', 'Gaskocher'],
        ['Spirituskocher', 'Spirituskocher'],
      ],
      windscreen: [['Windschutz', 'Windschutz']],
      bottle: [
        ['Trinkflasche', 'Trinkflaschen'],
        ['Wasserflasche', 'Wasserflaschen'],
      ],
      bowl: [['Schüssel', 'Schüsseln']],
      utensil: [
        ['Löffel', 'Löffel'],
        ['Gabel', 'Gabeln'],
      ],
    },
    units: METRIC,
    heads: ['Gegenstand', 'Anzahl', 'Gewicht'],
    heading: 'Küche',
    noise: [
      'Regenjacke',
      'Schlafsack, 900 g',
      'Stirnlampe mit Ersatzbatterien',
      'Erste-Hilfe-Set',
      'Handtuch (150 g)',
      'Karte 1:50 000',
      'Socken x 3',
    ],
  },
  fr: {
    decimal: ',',
    names: {
      pot: [
        ['casserole', 'casseroles'],
        ['popote', 'popotes'],
      ],
      mug: [
        ['tasse', 'tasses'],
        ['gobelet', 'gobelets'],
      ],
      kettle: [['bouilloire', 'bouilloires']],
      pan: [['poêle', 'poêles']],
      stove: [
        ['réchaud à gaz', 'réchauds à gaz'],
        ['réchaud', 'réchauds'],
      ],
      windscreen: [['pare-vent', 'pare-vents']],
      bottle: [
        ['gourde', 'gourdes'],
        ["bouteille d'eau", "bouteilles d'eau"],
      ],
      bowl: [['bol', 'bols']],
      utensil: [
        ['cuillère', 'cuillères'],
        ['fourchette', 'fourchettes'],
      ],
    },
    units: METRIC,
    heads: ['Article', 'Quantité', 'Poids'],
    heading: 'Cuisine',
    noise: [
      'Veste de pluie',
      'Sac de couchage, 900 g',
      'Lampe frontale avec piles de rechange',
      'Trousse de secours',
      'Serviette (150 g)',
      'Carte 1:50 000',
      'Chaussettes x 3',
    ],
  },
  es: {
    decimal: ',',
    names: {
      pot: [
        ['olla', 'ollas'],
        ['cazo', 'cazos'],
      ],
      mug: [['taza', 'tazas']],
      kettle: [['tetera', 'teteras']],
      pan: [['sartén', 'sartenes']],
      stove: [
        ['hornillo de gas', 'hornillos de gas'],
        ['hornillo', 'hornillos'],
      ],
      windscreen: [['paravientos', 'paravientos']],
      bottle: [
        ['botella de agua', 'botellas de agua'],
        ['cantimplora', 'cantimploras'],
      ],
      bowl: [['cuenco', 'cuencos']],
      utensil: [
        ['cuchara', 'cucharas'],
        ['tenedor', 'tenedores'],
      ],
    },
    units: METRIC,
    heads: ['Artículo', 'Cantidad', 'Peso'],
    heading: 'Cocina',
    noise: [
      'Chaqueta impermeable',
      'Saco de dormir, 900 g',
      'Frontal con pilas de repuesto',
      'Botiquín',
      'Toalla (150 g)',
      'Mapa 1:50 000',
      'Calcetines x 3',
    ],
  },
  sv: {
    decimal: ',',
    names: {
      pot: [
        ['kastrull', 'kastruller'],
        ['gryta', 'grytor'],
      ],
      mug: [['mugg', 'muggar']],
      pan: [['stekpanna', 'stekpannor']],
      stove: [
        ['gaskök', 'gaskök'],
        ['spritkök', 'spritkök'],
      ],
      windscreen: [['vindskydd', 'vindskydd']],
      bottle: [['vattenflaska', 'vattenflaskor']],
      bowl: [['skål', 'skålar']],
      utensil: [
        ['sked', 'skedar'],
        ['gaffel', 'gafflar'],
      ],
    },
    units: { volume: ['ml', 'l', 'dl'], mass: ['g', 'kg'] },
    heads: ['Sak', 'Antal', 'Vikt'],
    heading: 'Matlagning',
    noise: [
      'Regnjacka',
      'Sovsäck, 900 g',
      'Pannlampa med reservbatterier',
      'Första hjälpen',
      'Handduk (150 g)',
      'Karta 1:50 000',
      'Strumpor x 3',
    ],
  },
};

/** mL and g of a unit: NIST Handbook 44, appendix C. */
const SIZE: Readonly<Record<string, number>> = {
  ml: 1,
  cl: 10,
  dl: 100,
  l: 1000,
  'fl oz': 29.5735295625,
  qt: 946.352946,
  g: 1,
  kg: 1000,
  oz: 28.349523125,
  lb: 453.59237,
};

/** What such a thing holds, mL, and its mass, g: so that every figure is one that a person could have written. */
const USUAL: Readonly<
  Partial<Record<ItemKind, { readonly ml?: readonly [number, number]; readonly g: readonly [number, number] }>>
> = {
  pot: { ml: [500, 3000], g: [90, 700] },
  mug: { ml: [250, 600], g: [50, 200] },
  kettle: { ml: [600, 1500], g: [110, 400] },
  pan: { g: [120, 500] },
  stove: { g: [60, 500] },
  windscreen: { g: [20, 250] },
  bottle: { ml: [500, 1500], g: [40, 250] },
  bowl: { ml: [300, 900], g: [40, 200] },
  utensil: { g: [10, 60] },
};

interface Figure {
  readonly text: string;
  readonly value: number;
}

interface Thing {
  readonly kind: ItemKind;
  readonly name: string;
  readonly quantity: number;
  readonly capacity: Figure | null;
  readonly mass: Figure | null;
}

/** A measure in one of the units, with as many places as people write, and what it then amounts to. */
function figure(
  [least, most]: readonly [number, number],
  units: readonly string[],
  decimal: string,
): fc.Arbitrary<Figure> {
  return fc
    .record({ unit: fc.constantFrom(...units), base: fc.integer({ min: least, max: most }), glued: fc.boolean() })
    .map(({ unit, base, glued }) => {
      const size = SIZE[unit] ?? 1;
      const places = size === 1 ? 0 : size < 50 ? 1 : 2;
      const number = Math.max(base / size, 10 ** -places).toFixed(places);
      return {
        text: number.replace('.', decimal) + (glued && !unit.includes(' ') ? '' : ' ') + unit,
        value: Number(number) * size,
      };
    });
}

/** Ounces beside what a thing holds can be of either sort: the reading may ask, and then has no value to read back. */
const isPlain = (unit: string) => unit !== 'oz';

function thing({ names, units, decimal }: Language): fc.Arbitrary<Thing> {
  return fc
    .constantFrom(...(Object.keys(names) as ItemKind[]))
    .chain((kind) => {
      const usual = USUAL[kind] ?? { g: [50, 100] };
      return fc.record({
        kind: fc.constant(kind),
        name: fc.constantFrom(...(names[kind] ?? [])),
        quantity: fc.constantFrom(1, 1, 1, 2, 3, 4),
        capacity: usual.ml === undefined ? fc.constant(null) : fc.option(figure(usual.ml, units.volume, decimal)),
        mass: fc.option(figure(usual.g, usual.ml === undefined ? units.mass : units.mass.filter(isPlain), decimal)),
      });
    })
    .map(({ name, ...rest }) => ({ ...rest, name: rest.quantity > 1 ? name[1] : name[0] }));
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Ways to write one thing on its line. */
const PHRASES: readonly ((thing: Thing) => string)[] = [
  ({ name, quantity, capacity, mass }) =>
    [`${quantity > 1 ? `${quantity} x ` : ''}${name}`, capacity?.text, mass?.text]
      .filter((part) => part !== undefined)
      .join(', '),
  ({ name, quantity, capacity, mass }) =>
    `${quantity > 1 ? `${quantity}× ` : ''}${capital(name)}${capacity === null ? '' : ` ${capacity.text}`}${mass === null ? '' : ` (${mass.text})`}`,
  ({ name, quantity, capacity, mass }) =>
    `${quantity > 1 ? `${quantity} ` : ''}${name}${capacity === null ? '' : `, ${capacity.text}`}${mass === null ? '' : ` – ${mass.text}`}`,
  ({ name, quantity, capacity, mass }) =>
    `${capital(name)}${capacity === null ? '' : ` ${capacity.text}`}${quantity > 1 ? ` x${quantity}` : ''}${mass === null ? '' : `: ${mass.text}`}`,
];

const BULLETS: readonly ((line: string, index: number) => string)[] = [
  (line) => `- ${line}`,
  (line) => `* ${line}`,
  (line) => `• ${line}`,
  (line) => `[ ] ${line}`,
  (line) => `- [x] ${line}`,
  (line, index) => `${index + 1}. ${line}`,
  (line) => line,
];

type Entry = Thing | string;

function lines(entries: readonly Entry[], { heading }: Language, phrase: number, bullet: number): string {
  const mark = BULLETS[bullet] ?? String;
  const write = PHRASES[phrase] ?? String;
  // Without marks, a name of a section after a blank line is a heading to anyone: there the blank line is left out.
  return [
    `# ${heading}`,
    ...(mark('', 0) === '' ? [] : ['']),
    ...entries.map((entry, i) => mark(typeof entry === 'string' ? entry : write(entry), i)),
  ].join('\n');
}

/** A table: the mass in a column of its own, with its unit; what a thing holds beside its name. */
function table(
  entries: readonly Entry[],
  { heads }: Language,
  write: (cells: readonly string[]) => string,
  rule: string,
): string {
  const rows = entries.map((entry) =>
    typeof entry === 'string'
      ? [entry.replace(/[,(:].*| x 3$/, '').trim(), '1', '']
      : [
          `${entry.name}${entry.capacity === null ? '' : ` ${entry.capacity.text}`}`,
          String(entry.quantity),
          entry.mass?.text ?? '',
        ],
  );
  return [write(heads), ...(rule === '' ? [] : [rule]), ...rows.map(write)].join('\n');
}

function layout(entries: readonly Entry[], language: Language): fc.Arbitrary<string> {
  return fc.oneof(
    fc
      .record({ phrase: fc.nat(PHRASES.length - 1), bullet: fc.nat(BULLETS.length - 1) })
      .map(({ phrase, bullet }) => lines(entries, language, phrase, bullet)),
    fc.constant(table(entries, language, (cells) => `| ${cells.join(' | ')} |`, '|---|---|---|')),
    fc.constant(table(entries, language, (cells) => cells.join('\t'), '')),
    fc.constant(table(entries, language, (cells) => cells.join(';'), '')),
  );
}

const TAGS = Object.keys(LANGUAGES);

export const generatedLists: fc.Arbitrary<GeneratedList> = fc.constantFrom(...TAGS).chain((tag) => {
  const language = LANGUAGES[tag] as Language;
  return fc
    .tuple(
      fc.array(thing(language), { minLength: 3, maxLength: 10 }),
      fc.subarray([...language.noise], { minLength: 2 }),
      fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
    )
    .chain(([things, noise, places]) => {
      const entries: Entry[] = [...things];
      for (const line of noise) entries.splice(Math.floor((places.next().value ?? 0) * (entries.length + 1)), 0, line);
      const truth = things.map(({ kind, quantity, capacity, mass }) => ({
        kind,
        quantity,
        capacityMl: capacity?.value ?? null,
        massG: mass?.value ?? null,
      }));
      return layout(entries, language).map((text) => ({ text, truth }));
    });
});
