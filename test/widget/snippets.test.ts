import { expect } from 'chai';
import { snippets, WAYS, type Choice, type Way } from '../../widget/builder/snippets.js';
import { ELEMENTS } from '../../widget/settings.js';

const LIST = 'Pot "Duo" 1.3 L <aluminium> & lid\n\n\nGas {{ stove }} {% 89 g %}';
const choiceOf = (part: Partial<Choice>): Choice => ({
  element: 'brimwise-check',
  attributes: { people: '2', name: 'a "pot" <b> & {{c}}' },
  list: LIST,
  folder: '/brimwise/',
  way: 'near.js',
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
          if (name === 'Frame') continue;
          const [widget, script] = [root.querySelector(element)!, root.querySelector('script')!];
          expect(widget.getAttribute('people'), name).to.equal('2');
          expect(widget.getAttribute('name'), name).to.equal('a "pot" <b> & {{c}}');
          expect(widget.textContent.trim(), name).to.not.equal('');
          expect(script.getAttribute('src'), name).to.equal(`/brimwise/${way}`);
          expect(script.getAttribute('integrity'), name).to.equal(HASHES[way]);
          expect(script.getAttribute('type'), name).to.equal(way === 'classic.js' ? null : 'module');
        }
      });

  it('have the list as it was written, and no line with nothing in it', () => {
    for (const { name, text } of snippets(choiceOf({}), HASHES)) {
      expect(text, name).to.not.match(/\n\s*\n/);
      if (name !== 'Frame' && name !== 'MDX')
        expect(parsed(text).querySelector('brimwise-check')!.textContent, name).to.equal(LIST);
    }
  });

  it('leave nothing in a template that its engine would take for its own', () => {
    for (const { name, text } of snippets(choiceOf({}), HASHES)) {
      if (/Hugo|Jekyll/.test(name)) expect(text, name).to.not.match(/\{\{|\{%/);
    }
  });

  it('of a frame carry the choice in the hash, which no server is sent', () => {
    const { text } = snippets(choiceOf({}), HASHES).at(-1)!;
    const frame = parsed(text);
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

  it('leave the hash out where none is known', () => {
    for (const { text } of snippets(choiceOf({}), {})) expect(text).to.not.include('integrity');
  });
});
