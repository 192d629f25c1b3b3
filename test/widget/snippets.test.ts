import { expect } from 'chai';
import { HASH_WORDS, snippets, WAYS, type Choice, type Way } from '../../widget/builder/snippets.js';
import { ELEMENTS } from '../../widget/settings.js';

const LIST = 'Pot "Duo" 1.3 L <aluminium> & lid\n\n\nGas {{ stove }} {% 89 g %}';
const WORDS = ['The meal takes two “rounds”.', 'Falls short (402 of 473 mL): *one* <meal> & {two}.'];
const choiceOf = (part: Partial<Choice>): Choice => ({
  element: 'brimwise-check',
  attributes: { people: '2', name: 'a "pot" <b> & {{c}}' },
  list: LIST,
  listIn: 'element',
  standing: WORDS,
  folder: '/brimwise/',
  way: 'near.js',
  held: false,
  ...part,
});
const HASHES = { 'near.js': 'sha384-abc', 'index.js': 'sha384-def', 'classic.js': 'sha384-ghi' };

/** Read as strictly as an editor may: one root, everything closed, every attribute with its value. */
function parsed(text: string): Element {
  const bare = text.replaceAll(/<!--.*?-->/g, '').trim();
  const document = new DOMParser().parseFromString(bare, 'application/xml');
  expect(document.querySelector('parsererror')?.textContent ?? '').to.equal('');
  return document.documentElement;
}

describe('the snippets of the builder', () => {
  for (const element of ELEMENTS)
    for (const way of Object.keys(WAYS) as Way[])
      it(`of ${element} by ${way} are valid XHTML with one root, and bring back what was set`, () => {
        const texts = snippets(choiceOf({ element, way }), HASHES);
        expect(texts.map(({ name }) => name)).to.have.lengthOf(7);
        for (const { name, text } of texts) {
          if (name === 'MDX') continue;
          const root = parsed(text);
          if (name === 'Frame') {
            expect(root.querySelector('a')!.textContent, name).to.equal(WORDS[0]);
            expect(root.querySelector('a')!.getAttribute('href')).to.equal(root.firstElementChild!.getAttribute('src'));
            continue;
          }
          const [widget, script] = [root.querySelector(element)!, root.querySelector('script')!];
          expect(widget.getAttribute('people'), name).to.equal('2');
          expect(widget.getAttribute('name'), name).to.equal('a "pot" <b> & {{c}}');
          expect(widget.textContent, name).to.contain(WORDS.join(' '));
          expect(widget.getAttribute('style'), name).to.match(/^display: block; min-height: \d+rem$/);
          expect(script.getAttribute('src'), name).to.equal(`/brimwise/${way}`);
          expect(script.getAttribute('integrity'), name).to.equal(null);
          expect(script.getAttribute('type'), name).to.equal(way === 'classic.js' ? null : 'module');
        }
      });

  for (const listIn of ['element', 'post'] as const)
    it(`have the list in the ${listIn} as it was written, and no line with nothing in it`, () => {
      for (const { name, text } of snippets(choiceOf({ listIn }), HASHES)) {
        expect(text, name).to.not.match(/\n\s*\n/);
        if (name === 'Frame' || name === 'MDX') continue;
        const root = parsed(text);
        const widget = root.querySelector('brimwise-check')!;
        const inPost = listIn === 'post' || name === 'WordPress block';
        const from = widget.getAttribute('from');
        expect(from !== null, name).to.equal(inPost);
        expect((from === null ? widget : root).querySelector(`pre${from ?? ''}`)!.textContent, name).to.equal(LIST);
        // Words alone: an editor that makes paragraphs leaves them in the element.
        expect(widget.childElementCount === 1, name).to.equal(inPost);
      }
    });

  it('say something where nothing is judged yet', () => {
    for (const element of ELEMENTS) {
      const [{ text } = { text: '' }] = snippets(choiceOf({ element, standing: [], list: '' }), HASHES);
      expect(parsed(text).querySelector(element)!.textContent).to.match(/second opinion .* stands here/);
    }
  });

  it('hold the file to its hash only where that is asked for, and what is asked for is told', () => {
    for (const held of [true, false])
      for (const { name, text } of snippets(choiceOf({ held }), HASHES))
        expect(text.includes('integrity="sha384-abc"'), name).to.equal(held && name !== 'Frame');
    expect(HASH_WORDS).to.contain('renew the snippet whenever you renew the file');
  });

  it('leave nothing in a template that its engine would take for its own', () => {
    for (const { name, text } of snippets(choiceOf({}), HASHES)) {
      if (/Hugo|Jekyll/.test(name)) expect(text, name).to.not.match(/\{\{|\{%/);
    }
  });

  it('of a frame carry the choice in the hash, which no server is sent', () => {
    const { text } = snippets(choiceOf({}), HASHES).at(-1)!;
    const frame = parsed(text).querySelector('iframe')!;
    const address = new URL(frame.getAttribute('src')!, 'https://blog.invalid/');
    expect(address.search).to.equal('');
    expect(Object.fromEntries(new URLSearchParams(address.hash.slice(1)))).to.deep.equal({
      element: 'brimwise-check',
      people: '2',
      name: 'a "pot" <b> & {{c}}',
      list: LIST,
    });
    expect(frame.getAttribute('sandbox')).to.equal('allow-scripts');
  });
});
