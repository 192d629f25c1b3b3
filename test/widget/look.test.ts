import { emulateMedia, executeServerCommand, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BrimwiseCheck, BrimwisePot, BrimwiseVerdict } from '../../widget/index.js';
import { CUSTOM_PROPERTIES, PARTS } from '../../widget/surface.js';
import { around } from '../../widget/styles/around.css.js';
import { findings } from '../../widget/styles/findings.css.js';
import { layout } from '../../widget/styles/layout.css.js';
import { page } from '../../widget/styles/page.css.js';
import { tokens } from '../../widget/styles/tokens.css.js';
import { expectAccessible, until } from './fixture.js';
import '../../widget/index.js';

type Own = BrimwiseCheck | BrimwisePot | BrimwiseVerdict;

const POT = 'capacity="1.1 L" diameter="130" height="95" lid="yes" stove="alcohol" burner="60" feet="110" stands="70"';
const LIST =
  '<ul><li>Pot 1.3 L, 140 x 90 mm, lid</li><li>Gas stove, screws on the canister</li><li>Gas 230 g</li><li>foil windscreen</li><li>qwertz</li></ul>';
const SOURCES = {
  'brimwise-check': `<brimwise-check people="2">${LIST}</brimwise-check>`,
  'brimwise-pot': `<brimwise-pot people="2" locked="people" ${POT}></brimwise-pot>`,
  'brimwise-verdict': `<brimwise-verdict name="Humblefern" ${POT}></brimwise-verdict>`,
};

async function from<T extends Own = BrimwisePot>(source: string): Promise<T> {
  document.body.innerHTML = `<main>${source}</main>`;
  const element = document.querySelector<T>('brimwise-check, brimwise-pot, brimwise-verdict')!;
  await element.updateComplete;
  return element;
}

const frame = (element: Own) => element.shadowRoot!.querySelector<HTMLElement>('.bw')!;
const setting = (element: Own, selector: string, name: string) =>
  getComputedStyle(element.shadowRoot!.querySelector(selector)!).getPropertyValue(name);
const feature = (name: string, value: string) => executeServerCommand('media-features', [{ name, value }]);

afterEach(async () => {
  document.body.removeAttribute('style');
  document.documentElement.removeAttribute('style');
  document.body.replaceChildren();
  await setViewport({ width: 800, height: 600 });
  await emulateMedia({ colorScheme: 'light', media: 'screen' });
});

describe('the look', () => {
  it('is the page’s ink, paper, face and size', async () => {
    document.body.style.cssText =
      'color: rgb(45, 27, 61); background: rgb(247, 238, 244); font: 18px "DejaVu Sans Mono"; letter-spacing: 3px; text-transform: uppercase; text-align: center';
    const element = await from(SOURCES['brimwise-pot']);
    expect(setting(element, '.bw', 'color')).to.equal('rgb(45, 27, 61)');
    expect(setting(element, '.bw', 'background-color')).to.equal('rgb(247, 238, 244)');
    expect(setting(element, '.bw', 'font-family')).to.equal('"DejaVu Sans Mono"');
    expect(setting(element, '.bw', 'font-size')).to.equal('18px');
    for (const [name, value] of Object.entries({
      'letter-spacing': 'normal',
      'text-transform': 'none',
      'text-align': 'start',
    })) {
      expect(setting(element, '.say', name), name).to.equal(value);
    }
  });

  it('follows the page when its colours change', async () => {
    document.body.style.cssText = 'color: rgb(20, 20, 20); background: rgb(255, 255, 255)';
    const element = await from(SOURCES['brimwise-pot']);
    expect(frame(element).classList.contains('dark')).to.equal(false);
    document.body.style.cssText = 'color: rgb(239, 228, 241); background: rgb(23, 16, 29)';
    await new Promise((resolve) => setTimeout(resolve, 200));
    await element.updateComplete;
    expect(frame(element).classList.contains('dark')).to.equal(true);
    expect(setting(element, '.bw', 'background-color')).to.equal('rgb(23, 16, 29)');
  });

  it('does not go dark with the reader’s system on a page that stays light', async () => {
    await emulateMedia({ colorScheme: 'dark' });
    document.body.style.cssText = 'color: #222; background: #fff';
    const element = await from(SOURCES['brimwise-pot']);
    expect(setting(element, '.bw', 'color')).to.equal('rgb(34, 34, 34)');
  });

  it('may be that of a notebook, light or dark by the system or fixed', async () => {
    document.body.style.cssText = 'color: red; background: blue';
    const element = await from(`<brimwise-pot look="notebook" ${POT}></brimwise-pot>`);
    expect(setting(element, '.bw', 'background-color')).to.equal('rgb(246, 247, 242)');
    await emulateMedia({ colorScheme: 'dark' });
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(setting(element, '.bw', 'background-color')).to.equal('rgb(30, 38, 41)');
    element.look = 'notebook-light';
    await element.updateComplete;
    expect(setting(element, '.bw', 'background-color')).to.equal('rgb(246, 247, 242)');
  });

  for (const [kind, ink, paper] of [
    ['rgb', 'rgb(230, 230, 230)', 'rgb(10, 10, 10)'],
    ['oklch', 'oklch(0.95 0.01 100)', 'oklch(0.2 0.02 250)'],
    ['color-mix', 'color-mix(in srgb, white 90%, black)', 'color-mix(in srgb, black 90%, white)'],
  ]) {
    it(`tells light words from dark ones whatever their colour is written in: ${kind}`, async () => {
      document.body.style.cssText = `color: ${ink}; background: ${paper}`;
      expect(frame(await from(SOURCES['brimwise-pot'])).classList.contains('dark')).to.equal(true);
      document.body.style.cssText = `color: ${paper}; background: ${ink}`;
      expect(frame(await from(SOURCES['brimwise-pot'])).classList.contains('dark')).to.equal(false);
    });
  }

  it('takes the ground under it through transparent ones and out of shadow roots', async () => {
    document.body.innerHTML =
      '<div style="background: rgb(250, 240, 230)"><section style="background: rgba(0, 0, 0, 0.1)"></section></div>';
    const root = document.querySelector('section')!.attachShadow({ mode: 'open' });
    root.innerHTML = SOURCES['brimwise-pot'];
    const element = root.querySelector('brimwise-pot')!;
    await element.updateComplete;
    expect(setting(element, '.bw', 'background-color')).to.equal('rgb(250, 240, 230)');
  });

  it('is set by a dozen custom properties, and by no others', () => {
    const source = [tokens, page, findings, around, layout].join('');
    const used = new Set(source.match(/--brim-[a-z]+/g));
    expect([...used].sort()).to.deep.equal(Object.keys(CUSTOM_PROPERTIES).sort());
    expect(used.size).to.equal(12);
  });

  it('has the page’s custom properties win', async () => {
    document.body.style.cssText = 'color: #222; background: #fff';
    document.documentElement.style.cssText =
      '--brim-paper: rgb(1, 2, 3); --brim-ink: rgb(200, 201, 202); --brim-pen: rgb(4, 250, 6); --brim-size: 15px; --brim-head: 40px; --brim-pad: 7px; --brim-edge: 4px dotted red; --brim-max: 300px; --brim-words: "DejaVu Serif"; --brim-figures: "DejaVu Sans Mono"';
    const element = await from(SOURCES['brimwise-pot']);
    expect(
      [
        ['.bw', 'background-color'],
        ['.bw', 'color'],
        ['.bw', 'font-size'],
        ['.headline', 'font-size'],
        ['.bw', 'border-top-width'],
        ['.page', 'padding-left'],
        ['.page', 'max-inline-size'],
        ['.say', 'font-family'],
        ['.grade', 'font-family'],
        ['summary', 'color'],
      ].map(([selector, name]) => setting(element, selector!, name!)),
    ).to.deep.equal([
      'rgb(1, 2, 3)',
      'rgb(200, 201, 202)',
      '15px',
      '40px',
      '4px',
      '14px',
      '300px',
      '"DejaVu Serif"',
      '"DejaVu Sans Mono"',
      'rgb(4, 250, 6)',
    ]);
  });

  it('has the parts that the table says, and no others', async () => {
    const seen = new Set<string>();
    const winter = `<brimwise-check people="2" season="winter">${LIST}</brimwise-check>`;
    for (const source of [...Object.values(SOURCES), winter]) {
      const element = await from<Own>(source);
      const look = () => {
        for (const part of element.shadowRoot!.querySelectorAll('[part]')) seen.add(part.getAttribute('part')!);
      };
      await until(() => element.shadowRoot!.querySelector('[part="headline"]') !== null);
      look();
      // The letter takes the place of the findings while it is written.
      element.shadowRoot!.querySelector<HTMLElement>('.write-letter')?.click();
      await element.updateComplete;
      look();
    }
    expect([...seen].sort()).to.deep.equal(Object.keys(PARTS).sort());
  });
});

describe('at every width', () => {
  for (const [name, source] of Object.entries(SOURCES)) {
    for (const width of [280, 380, 900]) {
      it(`<${name}> needs no sideways scroll and gives axe nothing to mind in a column of ${width} px`, async () => {
        await setViewport({ width: 1200, height: 800 });
        const element = await from<Own>(`<div style="inline-size: ${width}px">${source}</div>`);
        for (const fold of element.shadowRoot!.querySelectorAll('details')) fold.open = true;
        for (const toggle of element.shadowRoot!.querySelectorAll<HTMLElement>('.tog')) toggle.click();
        await element.updateComplete;
        expect(frame(element).scrollWidth).to.be.at.most(width);
        const beyond = [...element.shadowRoot!.querySelectorAll('.bw *:not(svg *, .vh)')].filter(
          (part) => part.getBoundingClientRect().right > element.getBoundingClientRect().right + 0.5,
        );
        expect(beyond.map((part) => part.className)).to.deep.equal([]);
        await expectAccessible(element);
      });
    }
  }
});

describe('in forced colours', () => {
  afterEach(() => feature('forced-colors', 'none'));

  it('words, drawing and grades take the system’s inks', async () => {
    await feature('forced-colors', 'active');
    document.body.style.cssText = 'color: pink; background: green';
    for (const source of Object.values(SOURCES)) {
      const element = await from<Own>(source);
      expect(setting(element, '.bw', 'color')).to.equal('rgb(0, 0, 0)');
      const wall = element.shadowRoot!.querySelector('.draw .cut');
      if (wall !== null) expect(getComputedStyle(wall).stroke).to.equal('rgb(0, 0, 0)');
      await expectAccessible(element);
    }
  });
});

describe('in print', () => {
  it('is black on white, with every fold open and nothing to press', async () => {
    document.body.style.cssText = 'color: #eee; background: #111';
    const element = await from<BrimwiseCheck>(SOURCES['brimwise-check']);
    await emulateMedia({ media: 'print' });
    expect([setting(element, '.bw', 'color'), setting(element, '.bw', 'background-color')]).to.deep.equal([
      'rgb(0, 0, 0)',
      'rgb(255, 255, 255)',
    ]);
    const visible = (selector: string) =>
      [...element.shadowRoot!.querySelectorAll<HTMLElement>(selector)].filter((part) => part.checkVisibility()).length;
    expect(visible('.act, .foot .bar')).to.equal(0);
    expect(visible('.sum')).to.be.greaterThan(0);
  });
});

describe('the room reserved before an element is known', () => {
  /** The sum of layout shifts while a name that was unknown becomes an element over a paragraph. */
  async function shift(reserved: string, name: string): Promise<number> {
    document.body.innerHTML = `<style>${name} { display: block; ${reserved} }</style><${name} ${POT} show="drawing"></${name}><p>What comes after.</p>`;
    let sum = 0;
    const observer = new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) sum += (entry as PerformanceEntry & { value: number }).value;
    });
    observer.observe({ type: 'layout-shift' });
    await new Promise((resolve) => setTimeout(resolve, 200));
    const { BrimwisePot: Known } = await import('../../widget/index.js');
    customElements.define(name, class extends Known {});
    await new Promise((resolve) => setTimeout(resolve, 400));
    observer.disconnect();
    return sum;
  }

  it('keeps the page still: with the line hardly a shift, without it one', async () => {
    await setViewport({ width: 800, height: 2400 });
    expect(await shift('', 'brimwise-unreserved')).to.be.greaterThan(0);
    expect(await shift('min-block-size: 140rem', 'brimwise-reserved')).to.be.at.most(0.02);
  });
});
