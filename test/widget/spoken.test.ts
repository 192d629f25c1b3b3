import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../widget/index.js';
import type { BrimwiseCheck, BrimwisePot, BrimwiseVerdict } from '../../widget/index.js';
import { LANGUAGES, learnWords, wordsFor } from '../../widget/language.js';
import { expectAccessible, hints } from './fixture.js';

type Own = BrimwiseCheck | BrimwisePot | BrimwiseVerdict;

const POT =
  'name="Humblefern" capacity="1.3 L" diameter="140" height="90" lid="yes" bail="yes" stove="alcohol" burner="70" feet="110" stands="75" arms="3" arm-span="120"';
const LIST =
  'Two of us, 3 days, winter, -10 °C\nPot 1.3 L, 140 x 90 mm\nGas stove, screws on the canister\nGas 230 g, butane\nfoil windscreen\nqwertz 3 L';

async function from<T extends Own = BrimwisePot>(source: string): Promise<T> {
  document.body.innerHTML = `<main>${source}</main>`;
  const element = document.querySelector<T>('brimwise-check, brimwise-pot, brimwise-verdict')!;
  await element.updateComplete;
  while (element.report === null) await new Promise((resolve) => setTimeout(resolve, 20));
  await element.updateComplete;
  return element;
}

const inside = (element: Own, selector: string) => element.shadowRoot!.querySelector<HTMLElement>(selector)!;
const words = (element: Own) => inside(element, '.bw').innerText.replaceAll('\u00a0', ' ');

const others = LANGUAGES.filter((tag) => tag !== 'en');

afterEach(async () => {
  document.body.replaceChildren();
  await setViewport({ width: 800, height: 600 });
});

describe('the language of the interface', () => {
  it('is that of the nearest lang, with the numbers of its region', async () => {
    const german = await from(`<div lang="de"><brimwise-pot ${POT}></brimwise-pot></div>`);
    expect(inside(german, '.bw').lang).to.equal('de');
    expect(words(german)).to.contain('Volumen');
    expect(german.report!.findings.map(({ margin }) => margin).join(' ')).to.match(/\d,\d/);
    const austrian = await from(`<div lang="de-AT"><brimwise-verdict ${POT}></brimwise-verdict></div>`);
    expect(inside(austrian, '.bw').lang).to.equal('de-AT');
    expect(inside(austrian, '.what').innerText).to.contain('1,3\u00a0l');
    const swiss = await from(`<div lang="de-CH"><brimwise-verdict ${POT}></brimwise-verdict></div>`);
    expect(inside(swiss, '.bw').lang).to.equal('de-CH');
    expect(inside(swiss, '.what').innerText).to.contain('1.3\u00a0l');
    expect(words(swiss)).to.contain('Eine zweite Meinung');
  });

  it('is the one that the attribute asks for, and follows it', async () => {
    const element = await from(`<div lang="de"><brimwise-pot language="en" ${POT}></brimwise-pot></div>`);
    expect(inside(element, '.bw').lang).to.equal('en');
    element.language = 'de-AT';
    await element.updateComplete;
    expect(inside(element, '.bw').lang).to.equal('de-AT');
    expect(words(element)).to.contain('Eine zweite Meinung');
    expect(element.report!.summary.headline).not.to.match(/\b(the|it)\b/);
  });

  it('is English on a page in a language that it does not speak, and where an attribute asks for one, told once', async () => {
    expect(await hints(() => from(`<div lang="fi"><brimwise-pot ${POT}></brimwise-pot></div>`))).to.deep.equal([]);
    expect(inside(document.querySelector('brimwise-pot')!, '.bw').lang).to.equal('en');
    const told = await hints(async () => {
      const element = await from(`<div lang="de"><brimwise-pot language="tlh" ${POT}></brimwise-pot></div>`);
      element.people = 3;
      await element.updateComplete;
    });
    expect(told).to.have.length(1);
    expect(told[0]).to.contain('language="tlh"');
  });

  it('leaves the writer’s words there until its own are, and nothing of them after', async () => {
    const element = await from<BrimwiseCheck>(`<div lang="de"><brimwise-check>${LIST}</brimwise-check></div>`);
    expect(element.shadowRoot!.querySelector('slot')).to.equal(null);
    expect(inside(element, 'textarea')).not.to.equal(null);
  });

  it('is set from left to right on a page that is not', async () => {
    const element = await from(`<div lang="de" dir="rtl"><brimwise-pot ${POT}></brimwise-pot></div>`);
    expect(inside(element, '.bw').dir).to.equal('ltr');
  });
});

for (const tag of others) {
  describe(`in ${tag}`, () => {
    const sources = {
      'brimwise-check': `<brimwise-check people="2">${LIST}</brimwise-check>`,
      'brimwise-pot': `<brimwise-pot people="2" locked="people" ${POT}></brimwise-pot>`,
      'brimwise-verdict': `<brimwise-verdict ${POT}></brimwise-verdict>`,
    };
    for (const [name, source] of Object.entries(sources)) {
      it(`${name} breaks no rule of accessibility, and none of its words leaves the column, at 280 and 900 px`, async () => {
        for (const width of [280, 900]) {
          await setViewport({ width, height: 900 });
          const element = await from<Own>(`<div lang="${tag}">${source}</div>`);
          for (const fold of element.shadowRoot!.querySelectorAll('details')) fold.open = true;
          await element.updateComplete;
          await expectAccessible(element);
          expect(document.documentElement.scrollWidth, `at ${width} px`).to.be.at.most(width);
          expect(outside(element), `at ${width} px`).to.deep.equal([]);
        }
      }).timeout(60_000);
    }

    it('is worded whole: a control is named in it, and its finding too', async () => {
      await learnWords(tag);
      const said = wordsFor(tag);
      const element = await from<BrimwiseCheck>(`<div lang="${tag}">${sources['brimwise-check']}</div>`);
      expect(inside(element, 'textarea').getAttribute('aria-label')).to.equal(said.list);
      expect(inside(element, '.finding .grade').innerText.toLowerCase()).to.equal(
        said.language.grades[element.report!.findings[0]!.grade].toLowerCase(),
      );
    });
  });
}

/** Words that stand out of the box that is theirs. */
function outside(element: Own): string[] {
  const frame = inside(element, '.bw');
  const walker = document.createTreeWalker(frame, NodeFilter.SHOW_TEXT);
  const found: string[] = [];
  const range = document.createRange();
  for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) {
    const parent = text.parentElement!;
    if (text.nodeValue!.trim() === '' || parent.closest('.vh, svg, .lines, select') || !parent.checkVisibility())
      continue;
    range.selectNodeContents(text);
    const box = parent.closest('.field, .m, .w, td, th, li, button') ?? frame;
    // One pixel wide: for screen readers alone.
    if (box.clientWidth === 1) continue;
    if (range.getBoundingClientRect().right > box.getBoundingClientRect().right + 1)
      found.push(`${box.className || box.localName}: ${text.nodeValue!.trim()}`);
  }
  return found;
}
