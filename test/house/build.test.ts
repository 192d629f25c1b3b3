import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { build } from '../../scripts/build.mjs';
import { filesIn, ROOT } from '../../scripts/files.mjs';
import { waysIn } from '../../scripts/widget.mjs';
import { attributeOf, ELEMENTS, settingsOn } from '../../widget/settings.js';

/** What a page that embeds the widget loads, zipped: the elements, Lit included. */
const WIDGET_LIMIT_BYTES = 40_500;
/** What comes once there is something to judge: held near what it is, so that growth is seen. */
const JUDGE_LIMIT_BYTES = 160_000;
/** The same for one pot: it reads no list. */
const JUDGE_POT_LIMIT_BYTES = 92_000;
/** A classic script, in English alone. */
const CLASSIC_LIMIT_BYTES = 200_000;
/** The words of one more language to read, and all that the elements say in one: they come when they are wanted. */
const WORDS_LIMIT_BYTES = 10 * 1024;
const SAID_LIMIT_BYTES = 40 * 1024;

const folder = mkdtempSync(path.join(tmpdir(), 'brimwise-build-'));
const hashes = (out: string) =>
  Object.fromEntries(
    filesIn(out).map((file) => [
      file,
      createHash('sha256')
        .update(readFileSync(path.join(out, file)))
        .digest('hex'),
    ]),
  );

const zipped = (bytes: Buffer) => gzipSync(bytes, { level: 9 }).length;

describe('the build', () => {
  const [first, second] = [path.join(folder, 'a'), path.join(folder, 'b', 'deeper')];
  beforeAll(async () => {
    await build(first, { types: false });
    await build(second, { types: false });
  }, 120_000);
  afterAll(() => rmSync(folder, { recursive: true }));

  it('gives the same bytes twice, in whatever folder', () => {
    expect(hashes(second)).toEqual(hashes(first));
  });

  it('leaves no path of the machine in what is shipped', () => {
    const naming = filesIn(first).filter((file) => readFileSync(path.join(first, file), 'latin1').includes(ROOT));
    expect(naming).toEqual([]);
  });

  it('keeps the widget in one file, which imports nothing before it is asked to, and no larger than it is known to be', () => {
    const widget = readFileSync(path.join(first, 'widget', 'index.js'));
    expect(widget.toString().match(/\bimport\s*["'{*]|\bfrom\s*["'][./]/g)).toBeNull();
    expect(zipped(widget)).toBeLessThanOrEqual(WIDGET_LIMIT_BYTES);
  });

  it('keeps what judges beside it, each part in one file, under a name that changes with what is in it', () => {
    const files = filesIn(path.join(first, 'widget')).filter((name) => name.startsWith('judge-'));
    expect(files.map((file) => file.replace(/-[0-9A-Z]{8}\.js$/, ''))).toEqual(['judge', 'judge-pot']);
    for (const [i, file] of files.entries()) {
      for (const door of ['index.js', 'near.js'])
        expect(readFileSync(path.join(first, 'widget', door), 'utf8'), door).toContain(`import("./${file}")`);
      const judge = readFileSync(path.join(first, 'widget', file));
      expect(judge.toString().match(/\bimport\s*["'{*]|\bfrom\s*["'][./]/g)).toBeNull();
      expect(zipped(judge)).toBeLessThanOrEqual([JUDGE_LIMIT_BYTES, JUDGE_POT_LIMIT_BYTES][i]!);
    }
  });

  it('has a classic script for each language that the elements speak, which loads nothing later', () => {
    const files = filesIn(path.join(first, 'widget')).filter((name) => name.startsWith('classic'));
    expect(files).toEqual(['classic-de.js', 'classic-en.js', 'classic-es.js', 'classic-fr.js', 'classic.js']);
    const texts = files.map((file) => readFileSync(path.join(first, 'widget', file), 'utf8'));
    for (const text of texts) expect(text).not.toMatch(/\bimport\(/);
    const [german, english, spanish, french, whole] = texts.map((text) =>
      ['Kochtopf', 'Platz für die Mahlzeit', 'Sitio para', 'cazuela', 'marmite'].map((word) => text.includes(word)),
    );
    expect([german![1], english!.some(Boolean), spanish![1], french![1], whole![1]]).toEqual([
      true,
      false,
      false,
      false,
      true,
    ]);
    expect(zipped(readFileSync(path.join(first, 'widget', 'classic-en.js')))).toBeLessThanOrEqual(CLASSIC_LIMIT_BYTES);
  });

  it('puts the words of each other language beside the widget, in a file that imports nothing', () => {
    const files = filesIn(path.join(first, 'widget', 'words'));
    const names = files.map((file) => file.split('-')[0]!);
    const isRead = (name: string) => name.length === 2;
    expect(names.filter(isRead)).toEqual('da de es fr it ja nl no pl pt ru sv'.split(' '));
    const spoken = filesIn(path.join(ROOT, 'widget', 'messages')).map((file) => path.parse(file).name);
    expect(names.filter((name) => !isRead(name))).toEqual(spoken.filter((name) => name !== 'en'));
    for (const file of files) {
      const words = readFileSync(path.join(first, 'widget', 'words', file));
      expect(words.toString().match(/\bimport\b/g), file).toBeNull();
      expect(zipped(words), file).toBeLessThanOrEqual(
        isRead(file.split('-')[0]!) ? WORDS_LIMIT_BYTES : SAID_LIMIT_BYTES,
      );
    }
  });

  it('is about as large as the widget’s readme says', () => {
    const readme = readFileSync(path.join(ROOT, 'widget', 'README.md'), 'utf8');
    for (const { file, zipped: bytes } of waysIn(path.join(first, 'widget'))) {
      if (file.startsWith('words/') || file === 'near.js') continue;
      if (/^classic-(?!en)/.test(file)) continue;
      const name = file.replace(/^(judge(?:-pot)?)-[0-9A-Z]+/, '$1-…');
      const said = Number(new RegExp(`\\| \`${name}\` +\\| ([\\d.]+) kB`).exec(readme)?.[1]);
      expect(Math.abs(bytes / 1000 / said - 1), `${file}: ${bytes} bytes, and ${said} kB said`).toBeLessThan(0.05);
    }
  });

  it('tells editors of every element and every attribute of it', () => {
    const read = (file: string) => readFileSync(path.join(first, 'widget', file), 'utf8');
    const { modules } = JSON.parse(read('custom-elements.json')) as {
      modules: {
        declarations: { tagName: string; name: string; attributes: { name: string; type: { text: string } }[] }[];
      }[];
    };
    const told = modules[0]!.declarations.map(({ tagName, attributes }) => [
      tagName,
      attributes.map(({ name }) => name),
    ]);
    expect(told).toEqual(ELEMENTS.map((element) => [element, settingsOn(element).map(([name]) => attributeOf(name))]));
    const season = modules[0]!.declarations[0]!.attributes.find(({ name }) => name === 'season');
    expect(season?.type.text).toContain("'winter'");
    for (const { name } of modules[0]!.declarations) expect(read('index.js')).toContain(`as ${name}`);
  });

  it('fetches nothing: no address of another machine and no way to call one', () => {
    for (const file of filesIn(first).filter((name) => name.endsWith('.js'))) {
      const text = readFileSync(path.join(first, file), 'utf8');
      expect(text, file).not.toMatch(/\b(fetch|XMLHttpRequest|WebSocket|EventSource|sendBeacon|importScripts)\s*\(/);
    }
  });

  it('writes the types beside the doors that package.json names', () => {
    const { exports } = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8')) as {
      exports: Record<string, string | Record<string, string>>;
    };
    const named = Object.values(exports).flatMap((door) => (typeof door === 'string' ? [door] : Object.values(door)));
    expect(named.filter((file) => !existsSync(path.join(ROOT, file)))).toEqual([]);
  });
});
