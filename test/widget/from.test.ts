import { expect } from 'chai';
import type { BrimwiseCheck, BrimwisePot } from '../../widget/index.js';
import { hints } from './fixture.js';
import '../../widget/index.js';

const LINES = 'Pot 1.3 L, with lid\nGas stove, screws onto the canister';
const ITEMS = LINES.split('\n')
  .map((line) => `<li>${line}</li>`)
  .join('');

async function page(source: string): Promise<BrimwiseCheck> {
  document.body.innerHTML = `<main>${source}</main>`;
  const element = document.querySelector<BrimwiseCheck>('brimwise-check')!;
  await element.updateComplete;
  return element;
}
/** Once what is watched has been told. */
const settled = async (element: BrimwiseCheck) => {
  await new Promise((resolve) => setTimeout(resolve));
  await element.updateComplete;
};
const stands = (element: BrimwiseCheck) => element.shadowRoot!.querySelector('slot') !== null;

afterEach(() => document.body.replaceChildren());

describe('a list that stands in the post', () => {
  for (const [what, source] of [
    ['a list', `<ul id="kit">${ITEMS}</ul>`],
    [
      'a table',
      `<table id="kit"><tr><td>Pot 1.3 L, with lid</td></tr><tr><td>Gas stove, screws onto the canister</td></tr></table>`,
    ],
    ['preformatted text', `<pre id="kit">${LINES}</pre>`],
    ['a block that holds one', `<figure id="kit"><ul>${ITEMS}</ul><figcaption>Packed in May</figcaption></figure>`],
  ] as const)
    it(`is read from ${what}, which stays, and the words in the element are not`, async () => {
      const element = await page(`${source}<brimwise-check from="#kit" people="2">Our verdict.</brimwise-check>`);
      expect(element.draft.text).to.equal(LINES);
      expect(element.report!.findings).to.not.equal(undefined);
      expect(element.report!.reading.items.length).to.equal(2);
      expect(document.querySelector('#kit')!.checkVisibility()).to.equal(true);
    });

  it('is followed as it changes, but for what the reader has typed', async () => {
    const element = await page(`<ul id="kit">${ITEMS}</ul><brimwise-check from="#kit"></brimwise-check>`);
    document.querySelector('#kit li')!.textContent = 'Pot 0.9 L';
    await settled(element);
    expect(element.draft.text).to.match(/^Pot 0\.9 L\n/);
    element.draft = { ...element.draft, text: 'Mug' };
    document.querySelector('#kit li')!.textContent = 'Pot 0.5 L';
    await settled(element);
    expect(element.draft.text).to.equal('Mug');
  });

  it('may come later: what stands in the element stands until then, and the console is told once', async () => {
    let element!: BrimwiseCheck;
    const told = await hints(async () => {
      element = await page('<p id="around"></p><brimwise-check from="#kit">Our verdict.</brimwise-check>');
      document.querySelector('#around')!.textContent = 'changed';
      await settled(element);
    });
    expect(told).to.have.lengthOf(1);
    expect(told[0]).to.contain('from="#kit": nothing on the page is found by it.');
    expect(stands(element)).to.equal(true);
    expect(element.report).to.equal(null);
    document.querySelector('main')!.insertAdjacentHTML('afterbegin', `<ul id="kit">${ITEMS}</ul>`);
    await settled(element);
    expect(element.draft.text).to.equal(LINES);
    expect(stands(element)).to.equal(false);
  });

  it('is not found by what is no selector, and nothing is thrown', async () => {
    const told = await hints(async () => {
      const element = await page('<brimwise-check from="#1 >>">Our verdict.</brimwise-check>');
      expect(stands(element)).to.equal(true);
    });
    expect(told.join()).to.contain('nothing on the page is found by it');
  });

  it('may be named to an element that has shown another', async () => {
    const element = await page(`<ol id="kit">${ITEMS}</ol><brimwise-check><pre>Mug</pre></brimwise-check>`);
    expect(element.draft.text).to.equal('Mug');
    element.from = '#kit';
    await element.updateComplete;
    expect(element.draft.text).to.equal(LINES);
  });
});

describe('a list in an attribute', () => {
  it('is judged, whatever an editor has made of the element’s inside', async () => {
    const element = await page(`<p><brimwise-check list="${LINES.replace('\n', '&#10;')}"></p><p>Our verdict.</p>`);
    expect(element.draft.text).to.equal(LINES);
    expect(element.report!.reading.items.length).to.equal(2);
  });
});

describe('room that is kept free', () => {
  it('by the page is let go once the element is there, and hidden is hidden', async () => {
    const element = await page('<brimwise-check style="display: block; min-height: 900rem"></brimwise-check>');
    expect(element.offsetHeight).to.be.lessThan(3000);
    element.hidden = true;
    expect(getComputedStyle(element).display).to.equal('none');
  });

  it('by attribute is set where the element is not there yet', async () => {
    const { reserve } = await import('../../widget/reserve.js');
    for (const [asked, height] of [
      ['44rem', '44rem'],
      ['900px', '900px'],
      ['44', ''],
      ['1px; color: red', ''],
    ] as const) {
      const unknown = document.createElement('brimwise-later');
      unknown.setAttribute('reserve', asked);
      reserve(unknown);
      expect(unknown.style.minHeight).to.equal(height);
    }
    const pot = await page('<brimwise-check reserve="2000rem"></brimwise-check>');
    expect((pot as BrimwisePot).offsetHeight).to.be.lessThan(3000);
  });
});
