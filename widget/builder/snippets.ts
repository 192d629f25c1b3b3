import type { ElementName } from '../settings.js';

/** What a writer has set. */
export interface Choice {
  readonly element: ElementName;
  /** By the names of the attributes. */
  readonly attributes: Readonly<Record<string, string>>;
  /** Stands in the element where scripts do not run, and is what `<brimwise-check>` judges. */
  readonly list: string;
  /** Where the files of the widget lie on the writer's site: "/brimwise/". */
  readonly folder: string;
  /** How the elements get into the page. */
  readonly way: Way;
}

/** The files that bring the elements, each with what a writer must know to choose. */
export const WAYS = {
  'near.js': 'when the reader comes near it',
  'index.js': 'with the page',
  'classic.js': 'with the page, as a classic script',
} as const;
export type Way = keyof typeof WAYS;

/** The hashes of the files, by name. */
export type Hashes = Readonly<Partial<Record<Way, string>>>;

/** Height kept free until the element is there: so much that what follows it stands below a phone's screen, or where it will stand. */
const RESERVED: Readonly<Record<ElementName, string>> = {
  'brimwise-check': '60rem',
  'brimwise-pot': '60rem',
  'brimwise-verdict': '40rem',
};
const FRAME_PX: Readonly<Record<ElementName, string>> = {
  'brimwise-check': '900',
  'brimwise-pot': '900',
  'brimwise-verdict': '420',
};
const SENTENCE: Readonly<Record<ElementName, string>> = {
  'brimwise-check': 'A second opinion on this kit list stands here where scripts run.',
  'brimwise-pot': 'A second opinion on a pot stands here where scripts run.',
  'brimwise-verdict': 'A second opinion on this pot stands here where scripts run.',
};

/** A text to copy, and where it goes. */
export interface Snippet {
  readonly name: string;
  readonly goes: string;
  readonly text: string;
}

/** The same choice for each kind of site. All of it is valid XHTML with every attribute valued, so that no editor rewrites it. */
export function snippets(choice: Choice, hashes: Hashes): readonly Snippet[] {
  const html = htmlOf(choice, hashes);
  // What a template engine would take for its own.
  const template = html.replaceAll('{', '&#123;').replaceAll('}', '&#125;').replace(STYLE, styleOf(choice.element));
  return [
    { name: 'Plain HTML', goes: 'Into the page, where the widget is to stand.', text: html },
    {
      name: 'WordPress block',
      goes: 'Into the code editor of the post, or without its first and last line into a Custom HTML block.',
      text: `<!-- wp:html -->\n${html}\n<!-- /wp:html -->`,
    },
    {
      name: 'Ghost',
      goes: 'Into an HTML card. Newsletters show the text inside the element.',
      text: `<!--kg-card-begin: html-->\n${html}\n<!--kg-card-end: html-->`,
    },
    {
      name: 'Hugo shortcode',
      goes: 'Save as layouts/shortcodes/brimwise.html, and write {{< brimwise >}} in the post.',
      text: template,
    },
    {
      name: 'Jekyll include',
      goes: 'Save as _includes/brimwise.html, and write {% include brimwise.html %} in the post.',
      text: template,
    },
    {
      name: 'MDX',
      goes: 'Into the post, with an empty line before and after. It is tested as React 19 renders it.',
      text: mdxOf(choice, hashes),
    },
    {
      name: 'Frame',
      goes: 'Where scripts are not let in but frames are. It needs embed.html alone.',
      text: frameOf(choice),
    },
  ];
}

/** The address of the page for frames with this choice in its hash, and a question where there is one. */
export function embedAddress({ element, attributes, list, folder }: Choice, state?: string): string {
  const hash = new URLSearchParams({ element, ...attributes });
  if (list.trim() !== '' && state === undefined) hash.set('list', list);
  if (state !== undefined) hash.set('state', state);
  return `${folder}embed.html#${hash.toString()}`;
}

/** The rule alone has braces; templates need it as it is. */
const STYLE = /(?<=<style>).*(?=<\/style>)/;

function styleOf(element: ElementName): string {
  return `${element}:not(:defined) { display: block; min-block-size: ${RESERVED[element]} }`;
}

function htmlOf(choice: Choice, hashes: Hashes): string {
  const list = listOf(choice);
  return inDiv(choice, [
    `<style>${styleOf(choice.element)}</style>`,
    `<script${attributesOf(scriptOf(choice, hashes))}></script>`,
    list && `<pre>${escaped(list).replace(BLANK_LINE, '&#10;')}</pre>`,
  ]);
}

/** Braces and Markdown's signs mean something in MDX: what must stay as it is goes in as a string. A script that comes into a page later is run only if it is async. */
function mdxOf(choice: Choice, hashes: Hashes): string {
  const list = listOf(choice);
  return inDiv(choice, [
    `<style>{${JSON.stringify(styleOf(choice.element))}}</style>`,
    `<script${attributesOf({ async: 'async', ...scriptOf(choice, hashes) })} />`,
    list && `<pre>{${JSON.stringify(list)}}</pre>`,
  ]);
}

function inDiv({ element, attributes }: Choice, [style, script, list]: readonly [string, string, string]): string {
  const inside = list === '' ? `<p>${SENTENCE[element]}</p>` : list;
  const widget = `<${element}${attributesOf(attributes)}>${inside}</${element}>`;
  return ['<div>', style, script, widget, '</div>'].join('\n');
}

function listOf({ element, list }: Choice): string {
  return element === 'brimwise-check' ? list.trim() : '';
}

function scriptOf({ folder, way }: Choice, hashes: Hashes): Record<string, string> {
  const hash = hashes[way];
  return {
    ...(way === 'classic.js' ? { defer: 'defer' } : { type: 'module' }),
    src: `${folder}${way}`,
    // HTML takes it in any case, JSX in this one.
    ...(hash === undefined ? {} : { integrity: hash, crossOrigin: 'anonymous' }),
  };
}

/** Editors and Markdown end a block of HTML at a line with nothing in it. */
const BLANK_LINE = /(?<=\n)[ \t]*\n/g;

function frameOf(choice: Choice): string {
  const attributes = attributesOf({
    src: embedAddress(choice),
    title: 'A second opinion on a cook kit',
    sandbox: 'allow-scripts',
    loading: 'lazy',
    width: '100%',
    height: FRAME_PX[choice.element],
    style: 'border: 0; color-scheme: normal',
  });
  return `<iframe${attributes}></iframe>`;
}

function attributesOf(attributes: Readonly<Record<string, string>>): string {
  return Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
