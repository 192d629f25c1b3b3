import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium } from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import { serve } from '../../scripts/serve.mjs';
import { outcomeOf } from './outcome.mjs';
import { OF_README, SAMPLES } from './samples.js';
import {
  command,
  debian,
  debianVersionOf,
  ensureTools,
  FOLDER,
  load,
  siteFolder,
  versionOf,
  wordpress,
} from './tools.mjs';

interface Post {
  readonly slug: string;
  readonly text: string;
  readonly expected: (typeof SAMPLES)[number]['expected'] | (typeof OF_README)['expected'];
}
interface Publisher {
  readonly name: string;
  readonly version: () => string;
  /** What goes in, for the reader of the table. */
  readonly given: string;
  readonly posts: readonly Post[];
  readonly outcome: 'works' | 'words';
  /** Makes the pages in a folder of the site: `<slug>/index.html` of each. */
  readonly publish: (posts: readonly Post[], site: string) => Promise<void> | void;
}

const slugOf = (i: number, { expected: { element } }: { expected: { element: string } }) => `${element}-${i}`;
const posts = (name: string): Post[] =>
  SAMPLES.filter((sample) => sample.name === name).map((sample, i) => ({ slug: slugOf(i, sample), ...sample }));
const HTML: readonly Post[] = [...posts('Plain HTML'), { slug: 'readme', ...OF_README }];
const WORDPRESS = posts('WordPress block');

const put = (file: string, text: string) => {
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, text);
};
const markdown = (text: string) => `# A post\n\nWe *carried* it.\n\n${text}\n\nAnd *so* on.\n`;
const page = (body: string) =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A post</title><link rel="icon" href="data:,"></head><body><article>${body}</article></body></html>`;
/** A filter or a renderer of one text. */
const each =
  (render: (text: string) => string | Promise<string>): Publisher['publish'] =>
  async (all, site) => {
    for (const { slug, text } of all) put(path.join(site, slug, 'index.html'), page(await render(text)));
  };

/** Hugo with its own settings but one: HTML in Markdown is let through. */
function hugo(all: readonly Post[], site: string, content: (post: Post, folder: string) => string): void {
  const folder = siteFolder('hugo');
  rmSync(folder, { recursive: true });
  put(
    path.join(folder, 'config.toml'),
    'baseURL = "/"\ndisableKinds = ["taxonomy", "term", "RSS", "sitemap", "home", "section"]\n[markup.goldmark.renderer]\nunsafe = true\n',
  );
  put(path.join(folder, 'layouts/_default/single.html'), page('{{ .Content }}'));
  for (const post of all)
    put(path.join(folder, 'content', `${post.slug}.md`), `---\ntitle: A post\n---\n${markdown(content(post, folder))}`);
  debian('hugo', ['--source', folder, '--destination', site, '--quiet']);
}

function jekyll(all: readonly Post[], site: string, content: (post: Post, folder: string) => string): void {
  const folder = siteFolder('jekyll');
  rmSync(folder, { recursive: true });
  put(path.join(folder, '_config.yml'), 'permalink: pretty\n');
  put(path.join(folder, '_layouts/post.html'), page('{{ content }}'));
  for (const post of all)
    put(path.join(folder, `${post.slug}.md`), `---\nlayout: post\n---\n${markdown(content(post, folder))}`);
  debian('ruby3.1', [
    '-S',
    path.join(FOLDER, 'debian/root/usr/bin/jekyll'),
    'build',
    '--quiet',
    '--source',
    folder,
    '--destination',
    site,
  ]);
}

const PUBLISHERS: readonly Publisher[] = [
  {
    name: 'kramdown',
    version: () => debianVersionOf('ruby-kramdown'),
    given: 'Plain HTML, in Markdown',
    posts: HTML,
    outcome: 'works',
    publish: each((text) =>
      debian('ruby3.1', ['-e', 'require "kramdown"; puts Kramdown::Document.new(STDIN.read).to_html'], {
        input: markdown(text),
      }),
    ),
  },
  {
    name: 'Hugo (goldmark, `unsafe`)',
    version: () => debianVersionOf('hugo'),
    given: 'Plain HTML, in Markdown',
    posts: HTML,
    outcome: 'works',
    publish: (all, site) => hugo(all, site, ({ text }) => text),
  },
  {
    name: 'Hugo',
    version: () => debianVersionOf('hugo'),
    given: 'Hugo shortcode',
    posts: posts('Hugo shortcode'),
    outcome: 'works',
    publish: (all, site) =>
      hugo(all, site, ({ slug, text }, folder) => {
        put(path.join(folder, 'layouts/shortcodes', `${slug}.html`), text);
        return `{{< ${slug} >}}`;
      }),
  },
  {
    name: 'Jekyll',
    version: () => debianVersionOf('jekyll'),
    given: 'Plain HTML, in Markdown',
    posts: HTML,
    outcome: 'works',
    publish: (all, site) => jekyll(all, site, ({ text }) => text),
  },
  {
    name: 'Jekyll',
    version: () => debianVersionOf('jekyll'),
    given: 'Jekyll include',
    posts: posts('Jekyll include'),
    outcome: 'works',
    publish: (all, site) =>
      jekyll(all, site, ({ slug, text }, folder) => {
        put(path.join(folder, '_includes', `${slug}.html`), text);
        return `{% include ${slug}.html %}`;
      }),
  },
  {
    name: 'Eleventy',
    version: () => versionOf('@11ty/eleventy'),
    given: 'Plain HTML, in Markdown',
    posts: HTML,
    outcome: 'works',
    publish: (all, site) => {
      const folder = siteFolder('eleventy');
      rmSync(folder, { recursive: true });
      put(path.join(folder, '_includes/post.njk'), page('{{ content | safe }}'));
      for (const { slug, text } of all)
        put(path.join(folder, `${slug}.md`), `---\nlayout: post.njk\n---\n${markdown(text)}`);
      command('eleventy', [`--output=${path.relative(folder, site)}`, '--quiet'], folder);
    },
  },
  {
    name: 'Astro',
    version: () => versionOf('astro'),
    given: 'Plain HTML, in Markdown',
    posts: HTML,
    outcome: 'works',
    publish: (all, site) => {
      const folder = siteFolder('astro');
      rmSync(folder, { recursive: true });
      put(path.join(folder, 'package.json'), '{ "type": "module" }');
      for (const { slug, text } of all) put(path.join(folder, 'src/pages', `${slug}.md`), markdown(text));
      put(path.join(folder, 'astro.config.mjs'), `export default { outDir: ${JSON.stringify(site)} };`);
      command('astro', ['build', '--silent'], folder);
    },
  },
  {
    name: 'VitePress',
    version: () => versionOf('vitepress'),
    given: 'Plain HTML, its script in the head',
    posts: HTML,
    outcome: 'works',
    publish: (all, site) => {
      const folder = siteFolder('vitepress');
      rmSync(folder, { recursive: true });
      const config = {
        outDir: site,
        head: [['script', { type: 'module', src: '/brimwise/near.js' }]],
        ignoreDeadLinks: true,
      };
      put(
        path.join(folder, '.vitepress/config.mjs'),
        `export default { ...${JSON.stringify(config)}, vue: { template: { compilerOptions: { isCustomElement: (tag) => tag.startsWith('brimwise-') } } } };`,
      );
      for (const { slug, text } of all)
        put(path.join(folder, slug, 'index.md'), markdown(text.replace(/<script.*<\/script>\n+/, '')));
      command('vitepress', ['build'], folder);
    },
  },
  {
    name: 'WordPress, `wpautop`: the classic editor',
    version: () => debianVersionOf('wordpress'),
    given: 'WordPress block',
    posts: WORDPRESS,
    outcome: 'works',
    publish: each((text) => wordpress('autop', text)),
  },
  {
    name: 'WordPress, `wp_kses_post`: a writer’s post',
    version: () => debianVersionOf('wordpress'),
    given: 'WordPress block',
    posts: WORDPRESS,
    outcome: 'words',
    publish: each((text) => wordpress('kses', text)),
  },
  {
    name: 'rehype-sanitize',
    version: () => versionOf('rehype-sanitize'),
    given: 'Plain HTML',
    posts: HTML,
    outcome: 'words',
    publish: each(async (text) => {
      const [{ unified }, parse, sanitize, stringify] = (await Promise.all(
        ['unified', 'rehype-parse', 'rehype-sanitize', 'rehype-stringify'].map(load),
      )) as [{ unified: () => { use: (plugin: unknown, options?: unknown) => never } }, ...{ default: unknown }[]];
      interface Processor {
        use: (plugin: unknown, options?: unknown) => Processor;
        process: (text: string) => Promise<unknown>;
      }
      const processor = unified() as unknown as Processor;
      return String(
        await processor
          .use(parse!.default, { fragment: true })
          .use(sanitize!.default)
          .use(stringify!.default)
          .process(text),
      );
    }),
  },
  {
    name: 'Readability: reader mode',
    version: () => versionOf('@mozilla/readability'),
    given: 'Plain HTML',
    posts: HTML,
    outcome: 'words',
    publish: each(async (text) => {
      const { JSDOM } = (await load('jsdom')) as { JSDOM: new (html: string) => { window: { document: Document } } };
      const { Readability } = (await load('@mozilla/readability')) as {
        Readability: new (document: Document) => { parse: () => { content: string } | null };
      };
      const long =
        '<p>We carried the same pot for a week, over three passes, in rain and in sun, and cooked in it twice a day.</p>'.repeat(
          12,
        );
      const { content } = new Readability(
        new JSDOM(page(`<h1>A post</h1>${long}${text}${long}`)).window.document,
      ).parse()!;
      // Reader mode shows no custom elements: what is in them stands.
      return content.replaceAll(/<\/?brimwise-[^>]*>/g, '');
    }),
  },
  {
    name: 'juice: a mail with its styles inlined',
    version: () => versionOf('juice'),
    given: 'Plain HTML',
    posts: HTML,
    outcome: 'works',
    publish: each(async (text) => {
      const { default: juice } = (await load('juice')) as { default: (html: string) => string };
      return juice(`<style>p, strong { color: #222 }</style>${text}`);
    }),
  },
];

const rows: string[][] = [];
let browser: Browser;
let tab: Page;

beforeAll(async () => {
  ensureTools();
  browser = await launchChromium();
  tab = await browser.newPage();
});
afterAll(async () => {
  await browser.close();
  if (rows.length < PUBLISHERS.length) return;
  const readme = path.join(ROOT, 'widget', 'README.md');
  const text = readFileSync(readme, 'utf8');
  const table = [['software', 'version', 'what goes in', 'what comes of it'], ['---', '---', '---', '---'], ...rows]
    .map((cells) => `| ${cells.join(' | ')} |`)
    .join('\n');
  writeFileSync(
    readme,
    text.replace(
      /(<!-- publishers:[^\n]*-->\n)[^]*?(<!-- \/publishers -->)/,
      (_, a: string, b: string) => `${a}${table}\n${b}`,
    ),
  );
});

describe.each(PUBLISHERS)('$name, $given', ({ name, version, given, posts: all, outcome, publish }) => {
  it('leaves every snippet working or its words standing, as the table says', async () => {
    const site = path.join(FOLDER, 'site');
    rmSync(site, { recursive: true, force: true });
    mkdirSync(site, { recursive: true });
    await publish(all, site);
    cpSync(path.join(ROOT, 'dist', 'widget'), path.join(site, 'brimwise'), { recursive: true });
    const served = await serve(site);
    try {
      const found = [];
      for (const { slug, expected } of all)
        found.push({ slug, ...(await outcomeOf(tab, `${served.address}${slug}/index.html`, expected)) });
      expect(found).toEqual(all.map(({ slug }) => ({ slug, outcome, faults: [] })));
    } finally {
      served.close();
    }
    rows.push([name, version(), given, outcome === 'works' ? 'the element works' : 'its words stand, and the list']);
  }, 300_000);
});
