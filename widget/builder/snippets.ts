import type { ElementName } from '../settings.js';

/** What a writer has set. */
export interface Choice {
  readonly element: ElementName;
  /** By the names of the attributes. */
  readonly attributes: Readonly<Record<string, string>>;
  /** What `<brimwise-check>` judges. */
  readonly list: string;
  /** Whether the list stands in the element, which takes its place, or in the post before it, which no filter or editor takes apart. */
  readonly listIn: 'element' | 'post';
  /** What stands in the element until it is drawn, and where no script runs: sentences, the first of them the headline. */
  readonly standing: readonly string[];
  /** Where the files of the widget lie on the writer's site: "/brimwise/". */
  readonly folder: string;
  /** How the elements get into the page. */
  readonly way: Way;
  /** Whether the snippet holds the file to its hash. */
  readonly held: boolean;
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

/** What a writer is told who asks for a hash. */
export const HASH_WORDS =
  'It holds the file to what it is today: renew the snippet whenever you renew the file, or the element never appears in the post.';

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
/** What stands in the element where nothing is judged yet. */
const SENTENCE: Readonly<Record<ElementName, string>> = {
  'brimwise-check': 'A second opinion on a kit list stands here where scripts run.',
  'brimwise-pot': 'A second opinion on a pot stands here where scripts run.',
  'brimwise-verdict': 'A second opinion on this pot stands here where scripts run.',
};
/** The list in the post, by which the element finds it. */
const LIST_ID = 'kit-list';

/** A text to copy, and where it goes. */
export interface Snippet {
  readonly name: string;
  readonly goes: string;
  readonly text: string;
}

/**
 * The same choice for each kind of site. All of it is valid XHTML with every attribute valued and no line empty, so that no editor rewrites it; inside
 * the element stand words alone where they can, which no editor makes paragraphs of.
 */
export function snippets(choice: Choice, hashes: Hashes): readonly Snippet[] {
  const html = htmlOf(choice, hashes);
  // What a template engine would take for its own.
  const template = html.replaceAll('{', '&#123;').replaceAll('}', '&#125;');
  return [
    { name: 'Plain HTML', goes: 'Into the page, where the widget is to stand.', text: html },
    {
      name: 'WordPress block',
      goes: 'Into the code editor of the post, or without its first and last line into a Custom HTML block. Only who may write unfiltered HTML keeps the element: of others, the words and the list stay.',
      text: `<!-- wp:html -->\n${htmlOf({ ...choice, listIn: 'post' }, hashes)}\n<!-- /wp:html -->`,
    },
    {
      name: 'Ghost',
      goes: 'Into an HTML card. Newsletters show the text inside the element.',
      text: html,
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
export function embedAddress(
  { element, attributes, list, folder }: Pick<Choice, 'element' | 'attributes' | 'list' | 'folder'>,
  state?: string,
): string {
  const hash = new URLSearchParams({ element, ...attributes });
  if (state !== undefined) hash.set('state', state);
  else if (element === 'brimwise-check' && list.trim() !== '') hash.set('list', list);
  return `${folder}embed.html#${hash.toString()}`;
}

/** The parts of a snippet, once what goes into the page has been written as its language wants it. */
function joined(choice: Choice, script: string, style: string, words: string, pre: (id: string) => string): string {
  const { element, attributes, listIn } = choice;
  const list = listOf(choice) !== '';
  const inPost = list && listIn === 'post';
  const from = attributes['from'] ?? `#${LIST_ID}`;
  // A paragraph beside a list is not judged; words alone are, where no list is.
  const inside = element === 'brimwise-check' && !inPost ? `<p>${words}</p>${list ? pre('') : ''}` : words;
  return [
    '<div>',
    script,
    ...(inPost ? [pre(` id="${escaped(from.slice(1))}"`)] : []),
    `<${element}${attributesOf({ ...(inPost ? { from } : {}), ...attributes })} ${style}>${inside}</${element}>`,
    '</div>',
  ].join('\n');
}

function htmlOf(choice: Choice, hashes: Hashes): string {
  const script = `<script${attributesOf(scriptOf(choice, hashes))}></script>`;
  // In the element itself, where no filter makes words of it; the element's own styles outdo it once it is drawn.
  const style = `style="display: block; min-height: ${RESERVED[choice.element]}"`;
  const [headline, ...more] = standingOf(choice).map(escaped);
  const list = escaped(listOf(choice)).replace(BLANK_LINE, '&#10;');
  const words = [`<strong>${headline}</strong>`, ...more].join(' ');
  return joined(choice, script, style, words, (id) => `<pre${id}>${list}</pre>`);
}

/** Braces and Markdown's signs mean something in MDX: what must stay as it is goes in as a string. A script that comes into a page later is run only if it is async. */
function mdxOf(choice: Choice, hashes: Hashes): string {
  const script = `<script${attributesOf({ async: 'async', ...scriptOf(choice, hashes) })} />`;
  const style = `style={${JSON.stringify({ display: 'block', minHeight: RESERVED[choice.element] })}}`;
  const [headline, ...more] = standingOf(choice);
  const rest = more.map((one) => `{${JSON.stringify(` ${one}`)}}`).join('');
  const words = `<strong>{${JSON.stringify(headline)}}</strong>${rest}`;
  return joined(choice, script, style, words, (id) => `<pre${id}>{${JSON.stringify(listOf(choice))}}</pre>`);
}

function standingOf({ element, standing }: Choice): readonly string[] {
  return standing.length === 0 ? [SENTENCE[element]] : standing;
}

function listOf({ element, list }: Choice): string {
  return element === 'brimwise-check' ? list.trim() : '';
}

function scriptOf({ folder, way, held }: Choice, hashes: Hashes): Record<string, string> {
  const hash = held ? hashes[way] : undefined;
  return {
    ...(way === 'classic.js' ? { defer: 'defer' } : { type: 'module' }),
    src: `${folder}${way}`,
    // HTML takes it in any case, JSX in this one.
    ...(hash === undefined ? {} : { integrity: hash, crossOrigin: 'anonymous' }),
  };
}

/** Editors and Markdown end a block of HTML at a line with nothing in it. */
const BLANK_LINE = /(?<=\n)[ \t]*\n/g;

/** A link beside the frame stands where the frame does not: in a feed, in e-mail. */
function frameOf(choice: Choice): string {
  const src = embedAddress(choice);
  const attributes = attributesOf({
    src,
    title: 'A second opinion on a cook kit',
    sandbox: 'allow-scripts',
    loading: 'lazy',
    width: '100%',
    height: FRAME_PX[choice.element],
    style: 'border: 0; color-scheme: normal',
  });
  const [headline] = standingOf(choice);
  return [
    '<div>',
    `<iframe${attributes}></iframe>`,
    `<p><a${attributesOf({ href: src })}>${escaped(headline!)}</a></p>`,
    '</div>',
  ].join('\n');
}

function attributesOf(attributes: Readonly<Record<string, string>>): string {
  return Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
