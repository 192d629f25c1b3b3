import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../core/data/words/index.js';
import { readList } from '../../core/index.js';
import { valueOf } from '../../core/model/given.js';
import { foldPhrase } from '../../core/reading/text/fold.js';

/** One list a language, of words that campers there use: beside each line, what kinds of thing it names and what it says of their use. */
interface Vocabulary {
  readonly language: string;
  readonly lines: readonly (readonly [text: string, ...kinds: string[]])[];
}

const VOCABULARIES: readonly Vocabulary[] = [
  {
    language: 'en',
    lines: [
      ['- billy tin with the lid', 'pot'],
      ['- canister top, 88 g', 'stove'],
      ['- 2 ring stove', 'stove'],
      ['- 2 jerricans for water', 'bottle'],
      ['- 3 propane tanks', 'fuel'],
      ['- KFS for each of us', 'utensil'],
      ['- cafetiere', 'other-cook'],
      ['- 4 soup plates', 'bowl'],
      ['- wok, not in use', 'no pan'],
      ['- tank top'],
      ['- water purification tablets'],
    ],
  },
  {
    language: 'de',
    lines: [
      ['- 2 Milchtöpfe und ein Töpfli', 'pot', 'pot'],
      ['- Häferl', 'mug'],
      ['- Gasbüchsen, 2 Stück', 'fuel'],
      ['- Brennsprit 0,5 l', 'fuel'],
      ['- Zündhölzli', 'other-cook'],
      ['- Windabweiser', 'windscreen'],
      ['- Espressokännchen', 'other-cook'],
      ['- Wok-Pfanne (wird nicht benutzt)', 'no pan'],
      ['- Wattestäbchen'],
      ['- Wunderkerzen'],
    ],
  },
  {
    language: 'fr',
    lines: [
      ['- popotte en alu', 'pot'],
      ['- 4 quarts pour tout le monde', 'mug'],
      ['- 2 quarts inox 45 cl', 'mug'],
      ['- deux jerricans', 'bottle'],
      ['- jerrican pliable 10 l', 'bladder'],
      ['- allume-gaz', 'other-cook'],
      ['- poignée de popote', 'other-cook'],
      ['- bouteille d’essence 0,6 l', 'fuel'],
      ['- réchaud et coupe-vent', 'stove', 'windscreen'],
      ['- crêpière (non utilisée)', 'no pan'],
      ["- un quart d'heure de marche"],
      ['- pince à linge'],
      ['- poêle à bois dans le refuge'],
    ],
  },
  {
    language: 'es',
    lines: [
      ['- cocina de gasolina', 'stove'],
      ['- anafe a gas', 'stove'],
      ['- hornillo de dos fuegos', 'stove'],
      ['- caldero con asa', 'pot'],
      ['- jarro enlozado', 'mug'],
      ['- balón de gas 450 g', 'fuel'],
      ['- encendedor y fósforos', 'other-cook', 'other-cook'],
      ['- bidón plegable', 'bladder'],
      ['- cucharilla', 'utensil'],
      ['- plancha, no se usa', 'no pan'],
      ['- balón de fútbol'],
      ['- pinza de la ropa'],
    ],
  },
  {
    language: 'it',
    lines: [
      ['- gavettino con il coperchio', 'pot'],
      ['- spiritiera da 40 g', 'stove'],
      ['- parafiamma', 'windscreen'],
      ['- 2 bombolette gas', 'fuel'],
      ['- tegame', 'pan'],
      ['- prendipentola', 'other-cook'],
      ['- cerini', 'other-cook'],
      ['- tanica pieghevole da 10 l', 'bladder'],
      ['- boccale', 'mug'],
      ['- bricco (non si usa)', 'no kettle'],
      ['- pinze per i panni'],
      ['- set da cucito'],
    ],
  },
  {
    language: 'pt',
    lines: [
      ['- galão de água 10 l', 'bottle'],
      ['- fogareiro com corta-vento', 'stove', 'windscreen'],
      ['- leiteira de alumínio', 'pot'],
      ['- botijão de gás 2 kg', 'fuel'],
      ['- trempe', 'other-cook'],
      ['- pega-panelas', 'other-cook'],
      ['- canequinha', 'mug'],
      ['- galão dobrável para a água', 'bladder'],
      ['- chaleira, não se usa', 'no kettle'],
      ['- galão de gasolina'],
      ['- taça de vinho'],
    ],
  },
  {
    language: 'sv',
    lines: [
      ['- kastrullsats med lock', 'pot'],
      ['- hobokök', 'stove'],
      ['- gasburk 230 g', 'fuel'],
      ['- 2 kuksor', 'mug'],
      ['- plunta', 'bottle'],
      ['- hopfällbar dunk 10 l', 'bladder'],
      ['- slickepott och visp', 'utensil', 'utensil'],
      ['- tändsticksask', 'other-cook'],
      ['- kittel (används inte)', 'no kettle'],
      ['- mobil och laddare'],
    ],
  },
  {
    language: 'no',
    lines: [
      ['- kokekarsett og lokk', 'pot'],
      ['- gassbluss', 'stove'],
      ['- propanflaske 2 kg', 'fuel'],
      ['- kåse og kuksa', 'mug', 'mug'],
      ['- dunk 10 liter til vann', 'bottle'],
      ['- stekespade', 'utensil'],
      ['- grytelapper', 'other-cook'],
      ['- fyrstikkeske', 'other-cook'],
      ['- stekepanne, brukes ikke', 'no pan'],
      ['- kanelboller til turen'],
    ],
  },
  {
    language: 'da',
    lines: [
      ['- kogekarsæt med låg', 'pot'],
      ['- gaskogeplade', 'stove'],
      ['- 4 turkopper', 'mug'],
      ['- jerrycan til vand 10 l', 'bottle'],
      ['- piskeris og palet', 'utensil', 'utensil'],
      ['- stempelkande', 'other-cook'],
      ['- tændstikæske', 'other-cook'],
      ['- stegepande (bruges ikke)', 'no pan'],
      ['- mikroskop'],
    ],
  },
  {
    language: 'nl',
    lines: [
      ['- kookpotje met deksel', 'pot'],
      ['- gasstelletje', 'stove'],
      ['- 2 gasflesjes', 'fuel'],
      ['- wokpan', 'pan'],
      ['- mokapot', 'other-cook'],
      ['- opvouwbare emmer', 'bladder'],
      ['- windschut', 'windscreen'],
      ['- lepeltjes', 'utensil'],
      ['- ketel, niet gebruikt', 'no kettle'],
      ['- schoolbord en potlood'],
    ],
  },
  {
    language: 'pl',
    lines: [
      ['- gary i pokrywka', 'pot'],
      ['- maszynka gazowa', 'stove'],
      ['- 0,5 l denaturatu', 'fuel'],
      ['- osłona palnika', 'windscreen'],
      ['- baniak 5 l', 'bottle'],
      ['- łapka do garnka', 'other-cook'],
      ['- zapałek dwie paczki', 'other-cook'],
      ['- imbryk', 'kettle'],
      ['- patelnia, nieużywana', 'no pan'],
      ['- łapka na muchy'],
      ['- maszynka do golenia'],
    ],
  },
  {
    language: 'ru',
    lines: [
      ['- казан 8 л и половник', 'pot', 'utensil'],
      ['- мультитопливка', 'stove'],
      ['- 2 резьбовых баллона газа', 'fuel'],
      ['- ветрозащитный экран', 'windscreen'],
      ['- полторашка', 'bottle'],
      ['- КЛМН каждому', 'utensil'],
      ['- хваталка', 'other-cook'],
      ['- спичек 3 коробка', 'other-cook'],
      ['- сковорода (не используется)', 'no pan'],
      ['- плитка шоколада'],
      ['- сапёрная лопатка'],
    ],
  },
  {
    language: 'ja',
    lines: [
      ['ストーブ台 120g', 'other-cook'],
      ['アルコールバーナー 30g', 'stove'],
      ['割り箸', 'utensil'],
      ['鍋敷き', 'other-cook'],
      ['ボンベ 1本', 'fuel'],
      ['風除け', 'windscreen'],
      ['水筒(使わない)', 'no bottle'],
      ['充電器 120g'],
      ['酸素ボンベ'],
    ],
  },
];

describe.each(VOCABULARIES)('the words of campers: $language', ({ language, lines }) => {
  const reading = readList(lines.map(([text]) => text).join('\n'));

  it('tell the language', () => {
    expect(reading.languages[0]).toBe(language);
  });

  it('name what is meant, and nothing else', () => {
    const read = lines.map(([text], i) => [
      text,
      ...reading.items
        .filter((item) => item.line === i + 1)
        .map((item) => (item.carried ? item.kind : `no ${item.kind}`)),
    ]);
    expect(read).toEqual(lines);
  });
});

describe('small words', () => {
  const roles = ['otherUse', 'notKit'] as const;
  const small = ['tellTale', 'asides', 'with', 'and', 'or', 'to', 'about'] as const;
  const entries = (forms: string) => forms.split(/[,|]/).map((entry) => foldPhrase(entry.trim()).join(' '));

  it.each(LANGUAGES.map((words) => [words.language, words] as const))(
    'of no language are what another sets a thing aside for: %s',
    (_tag, words) => {
      const hiding = new Set([...Object.values(words.away), ...roles.map((role) => words[role])].flatMap(entries));
      const hidden = LANGUAGES.filter(({ language }) => language !== words.language).flatMap((other) =>
        small.flatMap((role) => entries(other[role])).filter((word) => word !== '' && hiding.has(word)),
      );
      expect(hidden).toEqual([]);
    },
  );
});

describe('the figures of what is none of ours', () => {
  it.each([
    ['en', 'pot', 'knife'],
    ['de', 'Topf', 'Taschenmesser'],
    ['fr', 'casserole', 'couteau'],
    ['es', 'olla', 'navaja'],
    ['it', 'pentola', 'coltellino'],
    ['pt', 'panela', 'canivete'],
    ['sv', 'kastrull', 'täljkniv'],
    ['no', 'kjele', 'turkniv'],
    ['da', 'gryde', 'dolkekniv'],
    ['nl', 'steelpan', 'zakmes'],
    ['pl', 'garnek', 'scyzoryk'],
    ['ru', 'котелок', 'топор'],
    ['ja', '鍋', 'ナイフ'],
  ])('are not those of a pot: %s', (locale, pot, other) => {
    for (const line of [`${pot}, ${other} 90 g`, `${other} 90 g, ${pot}`, `${pot} 1 l + 2 ${other} 90 g`]) {
      const { items } = readList(`- ${line}`, { locale });
      expect(items.map(({ kind, massG }) => [kind, massG.grounds])).toEqual([['pot', 'missing']]);
    }
  });

  it.each([
    ['tent 2 kg + stove 95 g', 95],
    ['Zorvik 50 g, stove 95 g', 95],
    ['Zorvik Heron, 95 g, stove', 95],
    ['stove, Zorvik Heron, 95 g', 95],
    ['stove with bag, 95 g', 95],
  ])('%s', (line, grams) => {
    expect(readList(`- ${line}`).items.map(({ kind, massG }) => [kind, valueOf(massG)])).toEqual([['stove', grams]]);
  });
});

describe('a windscreen that a jacket bears the name of', () => {
  it.each([
    ['Cozinha\n- fogareiro\n- corta-vento 90 g', 2],
    ['Cozinha\n- corta-vento 90 g\n- panela', 2],
    ['Roupa\n- corta-vento 300 g\n- calças', 0],
    ['- corta-vento 300 g\n- calças\n- meias', 0],
    ['- fogareiro 90 g\n- corta-vento 90 g\n- meias', 2],
    ['- fogareiro 90 g\n- meias\n- corta-vento 300 g', 1],
    ['Cuisine\n- coupe-vent alu\n- popote', 2],
    ['- coupe-vent imperméable\n- pantalon\n- chaussettes', 0],
  ])('%j', (text, items) => {
    expect(readList(text).items).toHaveLength(items);
  });
});

describe('Japanese without kana', () => {
  it.each([
    ['飯盒 1個\n水筒 1本\n固形燃料 3個', ['pot', 'bottle', 'fuel']],
    ['鍋', ['pot']],
  ])('%s', (text, kinds) => {
    expect(readList(text).items.map((item) => item.kind)).toEqual(kinds);
  });
});
