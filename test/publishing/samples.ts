import { readFileSync } from 'node:fs';
import path from 'node:path';
import { checkList, checkPot, ENGLISH, remark } from '../../core/index.js';
import { ROOT } from '../../scripts/files.mjs';
import { snippets } from '../../widget/builder/snippets.js';
import { standing } from '../../widget/builder/standing.js';
import { ELEMENTS, type ElementName } from '../../widget/settings.js';

/** An empty line, signs of Markdown and of templates: what editors stumble over. */
const LIST =
  'Humblefern "Duo" pot 1.3 L, 140 x 90 mm, *aluminium* & lid\n\nZorvik Stub gas stove, burner_45_mm, 89 g\ngas canister 230 g';
const ATTRIBUTES: Readonly<Record<ElementName, Readonly<Record<string, string>>>> = {
  'brimwise-check': { people: '2', days: '3' },
  'brimwise-pot': { capacity: '1.1 L', diameter: '140', height: '90', lid: 'yes', people: '2' },
  'brimwise-verdict': {
    name: 'Humblefern "Duo" & lid',
    capacity: '1.3 L',
    diameter: '140',
    height: '90',
    lid: 'yes',
    stove: 'gas',
    people: '2',
  },
};

/** What the builder gives for each element and each kind of site, with what must come of it. */
export const SAMPLES = ELEMENTS.flatMap((element) => {
  const attributes = ATTRIBUTES[element];
  const report =
    element === 'brimwise-check'
      ? checkList(LIST, { people: 2, days: 3 })
      : checkPot(
          { capacity: '1.1 L', diameter: 140, height: 90, lid: true },
          { people: 2 },
          element === 'brimwise-verdict' ? { type: 'gas' } : undefined,
        );
  const words = standing(report, { language: ENGLISH }, remark);
  const choice = {
    element,
    attributes,
    list: LIST,
    standing: words,
    folder: '/brimwise/',
    way: 'near.js',
    held: false,
  } as const;
  const expected = { element, attributes, words, ...(element === 'brimwise-check' ? { list: LIST } : {}) };
  return (['element', 'post'] as const)
    .filter((listIn) => element === 'brimwise-check' || listIn === 'element')
    .flatMap((listIn) =>
      snippets({ ...choice, listIn }, {}).map(({ name, text }) => ({ name, text, listIn, expected })),
    );
});

/** The first snippet of the readme, which stands for itself in any Markdown. */
export const OF_README = {
  text: readFileSync(path.join(ROOT, 'widget', 'README.md'), 'utf8')
    .match(/```html\n([^]*?)```/)![1]!
    .replaceAll('src="brimwise/', 'src="/brimwise/'),
  expected: {
    element: 'brimwise-pot' as ElementName,
    attributes: { people: '1', 'meal-style': 'simmer', capacity: '750 ml' },
    words: ['One who simmers needs a pot of 0.71 litres or more.'],
  },
};
