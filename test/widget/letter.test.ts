import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { html } from 'lit';
import { EMPTY_DRAFT, type BrimwiseCheck, type Draft } from '../../widget/index.js';
import { expectAccessible, mount } from './fixture.js';

const LIST = `Two of us, 3 days, −6 °C
pot 1.3 L, lid
burner, screws onto the canister
foil windscreen, goes right round
gas canister 230 g, butane`;

const inside = <T extends HTMLElement>(element: BrimwiseCheck, selector: string) => [
  ...element.shadowRoot!.querySelectorAll<T>(selector),
];

async function writing(letter: Draft['letter'] = {}): Promise<BrimwiseCheck> {
  document.body.replaceChildren();
  const draft: Draft = { ...EMPTY_DRAFT, text: LIST, letter };
  const element = mount(html`<brimwise-check .draft=${draft}></brimwise-check>`).querySelector('brimwise-check')!;
  await element.updateComplete;
  inside(element, '.write-letter')[0]!.click();
  await element.updateComplete;
  return element;
}

describe('an answer to send', () => {
  after(() => document.body.replaceChildren());

  it('takes the place of the page, the caret in its first line, and gives it back', async () => {
    const element = await writing();
    expect(inside(element, '.letter')).to.have.length(1);
    expect((element.shadowRoot!.activeElement as HTMLInputElement).name).to.equal('letter-first');
    inside(element, '.plan .act')[0]!.click();
    await element.updateComplete;
    expect(inside(element, '.letter')).to.have.length(0);
    expect(element.shadowRoot!.activeElement?.className).to.contain('write-letter');
  });

  it('keeps ticks and words in the draft, and drops those of a sentence when the list changes', async () => {
    const element = await writing();
    const [tick] = inside<HTMLInputElement>(element, '.tick input');
    tick!.click();
    const first = inside<HTMLInputElement>(element, '[name="letter-first"]')[0]!;
    first.value = 'Dear Joren,';
    first.dispatchEvent(new Event('input', { bubbles: true }));
    await element.updateComplete;
    const [area] = inside<HTMLTextAreaElement>(element, '.grow textarea');
    area!.value = 'My own words.';
    area!.dispatchEvent(new Event('input', { bubbles: true }));
    await element.updateComplete;
    expect(Object.values(element.draft.letter)).to.deep.equal([false, 'Dear Joren,', 'My own words.']);
    expect(inside(element, '.para.own')).to.have.length(1);
    inside(element, '.plan .act')[0]!.click();
    await element.updateComplete;
    const list = inside<HTMLTextAreaElement>(element, '.sheet textarea')[0]!;
    list.value += '\npot gripper';
    list.dispatchEvent(new InputEvent('input', { bubbles: true }));
    expect(element.draft.letter).to.deep.equal({ first: 'Dear Joren,' });
  });

  it('takes a sentence away with its tick, and brings back what was written when it is ticked again', async () => {
    const element = await writing();
    const sentences = () => inside<HTMLTextAreaElement>(element, '.grow textarea').map(({ value }) => value);
    const [area] = inside<HTMLTextAreaElement>(element, '.grow textarea');
    area!.value = 'My own words.';
    area!.dispatchEvent(new Event('input', { bubbles: true }));
    await element.updateComplete;
    const [tick] = inside<HTMLInputElement>(element, '.tick input');
    tick!.click();
    await element.updateComplete;
    expect(sentences()).not.to.include('My own words.');
    tick!.click();
    await element.updateComplete;
    expect(sentences()[0]).to.equal('My own words.');
  });

  it('copies as a letter with its plain text beside it, and shows the text where the browser refuses', async () => {
    const element = await writing({ first: 'Dear Joren,' });
    const taken: string[][] = [];
    const { clipboard } = navigator;
    const fake = (write: (items: ClipboardItem[]) => Promise<void>) =>
      Object.defineProperty(navigator, 'clipboard', { configurable: true, value: { write } });
    try {
      fake(async (items) => {
        const texts = await Promise.all(items[0]!.types.map(async (type) => (await items[0]!.getType(type)).text()));
        taken.push([...items[0]!.types], texts);
      });
      inside(element, '.press')[0]!.click();
      await new Promise((resolve) => setTimeout(resolve, 50));
      expect(taken[0]).to.deep.equal(['text/html', 'text/plain']);
      expect(taken[1]![0]).to.match(/^<p>Dear Joren,<\/p>\n<p><b>Before you go<\/b><\/p>/);
      expect(taken[1]![1]).to.match(/^Dear Joren,\n\nBefore you go/);
      expect(inside(element, '.press')[0]!.textContent).to.contain('Copied');
      fake(() => Promise.reject(new Error('refused')));
      inside(element, '.press')[0]!.click();
      await new Promise((resolve) => setTimeout(resolve, 50));
      expect(inside<HTMLTextAreaElement>(element, '.by-hand')[0]!.value).to.match(/^Dear Joren,\n\nBefore you go/);
    } finally {
      Object.defineProperty(navigator, 'clipboard', { configurable: true, value: clipboard });
    }
  });

  it('is accessible, and nothing in it runs out of a narrow page', async () => {
    for (const width of [280, 390, 1280]) {
      await setViewport({ width, height: 800 });
      const element = await writing();
      await expectAccessible(element);
      expect(document.documentElement.scrollWidth, `${width}`).to.be.at.most(width);
      for (const area of inside<HTMLTextAreaElement>(element, '.grow textarea'))
        expect(area.scrollHeight - area.clientHeight, area.value).to.be.at.most(1);
    }
    await setViewport({ width: 800, height: 600 });
  });
});
