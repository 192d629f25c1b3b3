import { expect } from 'chai';
import type { BrimwiseVerdict } from '../../widget/index.js';
import { expectAccessible } from './fixture.js';
import '../../widget/index.js';

const REVIEWED =
  'name="Plimt Pannikin" capacity="1.1 L" diameter="130" height="95" lid="yes" handles="yes" stove="gas" stove-form="upright" feet="110" stands="170" mass="150" people="1"';

async function verdict(attributes: string): Promise<BrimwiseVerdict> {
  document.body.innerHTML = `<main><brimwise-verdict ${attributes}><p>Too small for two.</p></brimwise-verdict></main>`;
  const element = document.querySelector('brimwise-verdict')!;
  await element.updateComplete;
  return element;
}

const inside = (element: BrimwiseVerdict, selector: string) => [
  ...element.shadowRoot!.querySelectorAll<HTMLElement>(selector),
];
const words = (element: BrimwiseVerdict, selector: string) =>
  inside(element, selector).map((part) => part.textContent.trim().replace(/\s+/g, ' '));

afterEach(() => document.body.replaceChildren());

describe('<brimwise-verdict>', () => {
  it('says what was judged, the report’s headline, so many findings worst first, and for whom', async () => {
    const element = await verdict(REVIEWED);
    const { summary, findings } = element.report!;
    expect(words(element, '.what')).to.deep.equal(['Plimt Pannikin: 1.1 L, 130 mm × 95 mm, with lid, on gas']);
    expect(words(element, '.headline')).to.deep.equal([summary.headline]);
    const told = findings.filter(({ grade }) => grade !== 'cant-tell');
    expect(words(element, '.say')).to.deep.equal(told.slice(0, 4).map(({ message }) => message));
    expect(words(element, '.terms > p')[0]).to.include(
      `Judged for one person who simmers. 4 of ${told.length} checks shown, worst first.`,
    );
  });

  it('has the cautions of what it tells, and tells all that can hurt', async () => {
    const narrow = await verdict(`${REVIEWED.replace('feet="110"', 'feet="40"')} rows="0"`);
    const hurting = narrow.report!.findings.filter(({ grade }) => grade === 'can-hurt');
    expect(words(narrow, '.say')).to.deep.equal(hurting.map(({ message }) => message));
    const [worst] = hurting;
    expect(worst!.cautions.length).to.be.greaterThan(0);
    expect(words(narrow, '.finding:first-child .caution')).to.deep.equal(
      worst!.cautions.map((caution) => `Caution ${caution}`),
    );
  });

  it('takes nothing from the reader: no field, no button', async () => {
    const element = await verdict(REVIEWED);
    expect(inside(element, 'input, select, textarea, button')).to.have.length(0);
  });

  it('draws the pot to scale, and says so in words', async () => {
    const element = await verdict(REVIEWED);
    const svg = inside(element, 'svg')[0]!;
    expect(svg.getAttribute('aria-label')!.replaceAll('\u00a0', ' ')).to.match(
      /^The pot in section, to scale: 130 mm across and 95 mm tall, filled to \d+ mm\.$/,
    );
    const wall = element.shadowRoot!.querySelector<SVGGraphicsElement>('.cut')!.getBBox();
    expect((wall.width - 6) / wall.height).to.be.closeTo(130 / 95, 0.02);
  });

  it('leaves the writer’s own words where there is nothing to judge, with a hint', async () => {
    const page = globalThis.console;
    const { warn } = page;
    const told: string[] = [];
    page.warn = (...said: unknown[]) => told.push(said.join(' '));
    try {
      const element = await verdict('name="Plimt"');
      expect(document.querySelector('p')!.checkVisibility()).to.equal(true);
      expect(element.report).to.equal(null);
      expect(told.filter((said) => said.includes('brimwise-verdict')).length).to.equal(1);
    } finally {
      page.warn = warn;
    }
  });

  it('follows its attributes, and its properties', async () => {
    const element = await verdict(REVIEWED);
    element.capacity = '400 ml';
    element.setAttribute('name', 'Another');
    await element.updateComplete;
    expect(words(element, '.what')[0]).to.match(/^Another: 0.4 L/);
  });

  for (const width of ['280px', '900px']) {
    it(`gives axe nothing to mind, ${width} wide, and needs no sideways scroll`, async () => {
      const element = await verdict(`${REVIEWED} water="snow"`);
      element.style.inlineSize = width;
      for (const fold of inside(element, 'details')) fold.setAttribute('open', '');
      await expectAccessible(element);
      expect(inside(element, '.bw')[0]!.scrollWidth).to.be.at.most(Number.parseInt(width));
    });
  }
});
