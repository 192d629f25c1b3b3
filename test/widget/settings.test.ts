import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { Report } from '../../core/index.js';
import type { BrimwiseCheck, BrimwisePot, Draft } from '../../widget/index.js';
import { attributeOf, settingsOn, SETTINGS, type SettingName } from '../../widget/settings.js';
import { ATTRIBUTES } from '../../widget/surface.js';
import { expectAccessible, hints } from './fixture.js';
import '../../widget/index.js';

type Own = BrimwiseCheck | BrimwisePot;

/** The first element that HTML makes, in the page and updated. */
async function from<T extends Own = BrimwiseCheck>(source: string): Promise<T> {
  document.body.innerHTML = `<main>${source}</main>`;
  const element = document.querySelector<T>('brimwise-check, brimwise-pot')!;
  await element.updateComplete;
  return element;
}

const inside = (element: Own, selector: string) => [...element.shadowRoot!.querySelectorAll<HTMLElement>(selector)];
const labels = (element: Own, selector: string) =>
  inside(element, selector).map((field) => field.textContent.trim().replace(/\s+/g, ' '));

afterEach(() => {
  document.documentElement.lang = 'en';
  document.body.replaceChildren();
});

describe('a setting', () => {
  it('stands in the draft as if the reader had typed it, by attribute and by property', async () => {
    for (const element of ['brimwise-check', 'brimwise-pot'] as const) {
      for (const [name, { fills, takes }] of settingsOn(element)) {
        const [, example] = ATTRIBUTES[name];
        if (fills === undefined) continue;
        const [part, field] = fills.split('.') as ['trip' | 'pot' | 'stove', string];
        const wanted = Array.isArray(takes) && takes.includes('yes') ? example === 'yes' : example;
        const written = await from(`<${element} ${attributeOf(name)}="${example}"></${element}>`);
        expect(written.draft[part][field], name).to.equal(wanted);
        expect(written[name], name).to.equal(example);
        const set = await from(`<${element}></${element}>`);
        set[name] = example;
        await set.updateComplete;
        expect(set.draft[part][field], name).to.equal(wanted);
        expect(set.getAttribute(attributeOf(name)), name).to.equal(example);
      }
    }
  });

  it('takes every word that the table says, and its example', async () => {
    const told = await hints(async () => {
      for (const [name, { takes }] of settingsOn('brimwise-check')) {
        const [, example] = ATTRIBUTES[name];
        for (const word of Array.isArray(takes) ? [...(takes as string[]), example] : [example]) {
          await from(
            `<ul id="kit-list"><li>Pot 1 L</li></ul><brimwise-check ${attributeOf(name)}="${word}"></brimwise-check>`,
          );
        }
      }
    });
    expect(told).to.deep.equal([]);
  });

  it('that cannot be used is left out with one hint on the console, and throws nothing', async () => {
    const told = await hints(async () => {
      const element = await from(
        '<brimwise-check people="two" meal-style="soup" low="-300" heading-level="9" show="nothing" locked="moon" units="ells" language="tlh" bail="perhaps" days="2"></brimwise-check>',
      );
      const { trip, pot, units } = element.draft;
      expect([trip, pot, units]).to.deep.equal([{ days: '2' }, {}, null]);
      expect(inside(element, 'h2').length).to.be.greaterThan(0);
    });
    expect(told.length).to.equal(1);
    for (const words of [
      'people="two"',
      'meal-style="soup"',
      'low="-300"',
      'heading-level="9"',
      'show="nothing"',
      'moon',
      'units="ells"',
      'language="tlh"',
      'bail="perhaps"',
    ]) {
      expect(told[0]).to.include(words);
    }
    expect(told[0]).to.not.include('days');
  });

  it('of any property may be any value', async () => {
    const element = await from('<brimwise-check></brimwise-check>');
    const told = await hints(async () => {
      for (const name of Object.keys(SETTINGS) as SettingName[]) {
        for (const value of [{}, [], Number.NaN, () => 1, '\u0000', '__proto__', null, undefined]) {
          element[name] = value as string;
          await element.updateComplete;
        }
      }
    });
    expect(told.length).to.be.greaterThan(0);
    expect(element.draft.trip).to.deep.equal({});
  });

  it('without a value, as some editors write it, is a yes', async () => {
    const element = await from('<brimwise-pot bail lid="no"></brimwise-pot>');
    expect(element.draft.pot).to.deep.equal({ bail: true, lid: false });
  });

  it('may be said yes and no in the way of JSX', async () => {
    const element = await from<BrimwisePot>('<brimwise-pot></brimwise-pot>');
    Object.assign(element, { bail: true, lid: false });
    await element.updateComplete;
    expect(element.draft.pot).to.deep.equal({ bail: true, lid: false });
  });

  it('gives way to what the reader has typed, and the rest follows it', async () => {
    const element = await from('<brimwise-check people="2" days="3">Pot 1.3 L</brimwise-check>');
    inside(element, '.strip input')[0]!.focus();
    await sendKeys({ type: '5' });
    const typed = element.draft.trip['people'];
    element.people = 4;
    element.setAttribute('days', '6');
    await element.updateComplete;
    expect(element.draft.trip).to.deep.equal({ people: typed, days: '6' });
  });

  it('comes back where the reader gives the trip back', async () => {
    const element = await from('<brimwise-check people="2">Pot 1.3 L</brimwise-check>');
    expect(inside(element, '.strip-row > .m .act')).to.have.length(0);
    inside(element, '.strip input')[1]!.focus();
    await sendKeys({ type: '9' });
    inside(element, '.strip-row > .m .act')[0]!.click();
    expect(element.draft.trip).to.deep.equal({ people: '2' });
  });

  it('set as a property before the element is known counts', async () => {
    const early = document.createElement('brimwise-check-early');
    Object.assign(early, { people: 3 });
    document.body.replaceChildren(early);
    const { BrimwiseCheck: Known } = await import('../../widget/index.js');
    customElements.define('brimwise-check-early', class extends Known {});
    await (early as BrimwiseCheck).updateComplete;
    expect((early as BrimwiseCheck).draft.trip).to.deep.equal({ people: '3' });
  });
});

describe('a locked field', () => {
  it('is told in one line, and outlasts what the page or the reader does', async () => {
    const element = await from(
      '<brimwise-check people="2" meal-style="simmer" low="-8" locked="people meal-style low list">Pot 1.3 L</brimwise-check>',
    );
    expect(labels(element, '.set')).to.deep.equal(['Set by this page: People 2, Meals simmer, Lowest −8 °C']);
    expect(inside(element, '.strip input, .strip select').length).to.be.greaterThan(0);
    expect(labels(element, '.field .l').filter((label) => /People|Meals|Lowest/.test(label))).to.deep.equal([]);
    element.draft = { ...element.draft, text: 'Mug', trip: { people: '7' } };
    await element.updateComplete;
    const { trip, text } = element.draft;
    expect([trip['people'], text]).to.deep.equal(['2', 'Pot 1.3 L']);
    expect(element.shadowRoot!.querySelector('textarea')!.readOnly).to.equal(true);
    expect(labels(element, 'button').filter((words) => /Clear|Add|example/.test(words))).to.deep.equal([]);
    await expectAccessible(element);
  });

  it('of a pot is told too', async () => {
    const element = await from(
      '<brimwise-pot diameter="130" material="steel" bail="yes" burner="2 in" locked="diameter material bail burner"></brimwise-pot>',
    );
    expect(labels(element, '.set')).to.deep.equal([
      'Set by this page: Width across 130 mm, Material steel',
      'Set by this page: Burner across 2 in',
    ]);
    expect(inside(element, '[name="pot.bail"]:disabled')).to.have.length(1);
    await expectAccessible(element);
  });
});

describe('the list that stands in the element', () => {
  const lists: Record<string, string> = {
    'a table':
      '<p>My kit:</p><table><tr><th>Item</th><th>Weight</th></tr><tr><td>Pot 1.3 L</td><td>210 g</td></tr></table>',
    'a list': '<p>My kit:</p><ul><li>Item<ul><li>Weight</li></ul></li></ul><ol><li>Pot 1.3 L 210 g</li></ol>',
    'a preformatted text': '<p>My kit:</p><pre>Item\n\nWeight &amp;\nPot 1.3 L 210 g</pre>',
    'bare text': '\n  Item\n  Weight\n  Pot 1.3 L 210 g\n',
  };
  const texts = [
    'Item\tWeight\nPot 1.3 L\t210 g',
    'Item\nWeight\nPot 1.3 L 210 g',
    'Item\nWeight &\nPot 1.3 L 210 g',
    'Item\nWeight\nPot 1.3 L 210 g',
  ];
  for (const [i, [kind, source]] of Object.entries(lists).entries()) {
    it(`is read, and judged: ${kind}`, async () => {
      const element = await from(`<brimwise-check>${source}</brimwise-check>`);
      expect(element.draft.text).to.equal(texts[i]);
      expect(element.report!.reading.items.map(({ kind: item }) => item)).to.deep.equal(['pot']);
    });
  }

  it('is no sentence of the writer', async () => {
    const element = await from('<brimwise-check><p>A pot of 0.7 L does. <a href="#x">More</a></p></brimwise-check>');
    expect([element.draft.text, element.report]).to.deep.equal(['', null]);
  });

  it('may come after the element, and change, until the reader types', async () => {
    const element = await from('<brimwise-check></brimwise-check>');
    element.innerHTML = '<ul><li>Pot 1 L</li></ul>';
    await new Promise((resolve) => setTimeout(resolve));
    await element.updateComplete;
    expect(element.draft.text).to.equal('Pot 1 L');
    element.focus();
    await sendKeys({ type: 'Mug ' });
    const typed = element.draft.text;
    element.querySelector('li')!.textContent = 'Pot 2 L';
    await new Promise((resolve) => setTimeout(resolve));
    await element.updateComplete;
    expect([typed.includes('Mug '), element.draft.text]).to.deep.equal([true, typed]);
  });
});

describe('events', () => {
  it('tell what the reader does and nothing that the page does, through shadow roots', async () => {
    document.body.innerHTML = '<div></div>';
    const root = document.querySelector('div')!.attachShadow({ mode: 'open' });
    root.innerHTML = '<brimwise-pot people="2"></brimwise-pot>';
    const element = root.querySelector('brimwise-pot')!;
    const heard: [string, Draft | Report | null][] = [];
    for (const type of ['brimwise-draft', 'brimwise-report'] as const) {
      document.body.addEventListener(type, (event) => heard.push([type, event.detail]), { once: true });
    }
    await element.updateComplete;
    element.people = 3;
    element.draft = { ...element.draft, pot: { capacity: '1 L' } };
    await element.updateComplete;
    expect(heard).to.deep.equal([]);
    const field = element.shadowRoot!.querySelector<HTMLInputElement>('[name="pot.height"]')!;
    field.focus();
    await sendKeys({ type: '9' });
    expect(heard.map(([type]) => type)).to.deep.equal(['brimwise-draft']);
    await new Promise((resolve) => setTimeout(resolve, 150));
    expect(heard.map(([type]) => type)).to.deep.equal(['brimwise-draft', 'brimwise-report']);
    expect(heard[1]![1]).to.equal(element.report);
  });
});

describe('what is shown', () => {
  it('is what the page names, and headline and findings always', async () => {
    const element = await from('<brimwise-check show="trip day">Pot 1.3 L\nGas stove\nGas 230 g</brimwise-check>');
    const shown = (part: string) => inside(element, `[part~="${part}"]`).length > 0;
    expect(['trip', 'day', 'headline', 'finding', 'mast', 'list', 'reading', 'sources'].map(shown)).to.deep.equal([
      true,
      true,
      true,
      true,
      false,
      false,
      false,
      false,
    ]);
    expect(inside(element, '.foot button, .foot input')).to.have.length(0);
    await expectAccessible(element);
  });

  it('has headings of the level asked for', async () => {
    const element = await from('<brimwise-check heading-level="4">Pot 1.3 L</brimwise-check>');
    expect(inside(element, '.headline').map(({ localName }) => localName)).to.deep.equal(['h4']);
    expect(inside(element, 'h1, h2, h3')).to.have.length(0);
  });
});

describe('the language', () => {
  it('is that of the nearest element with one, and settles the system of a fluid ounce', async () => {
    const imperial = await from('<div lang="en-GB"><brimwise-pot capacity="38 fl oz"></brimwise-pot></div>');
    const us = await from('<brimwise-pot capacity="38 fl oz" language="en-US"></brimwise-pot>');
    expect(imperial.report!.pots[0]!.capacityMl).to.be.closeTo(1080, 1);
    expect(us.report!.pots[0]!.capacityMl).to.be.closeTo(1124, 1);
  });

  it('of a page that it does not speak is English, told as such to a screen reader and set from left to right', async () => {
    document.documentElement.lang = 'ar';
    document.documentElement.dir = 'rtl';
    try {
      const element = await from('<brimwise-pot capacity="1 L"></brimwise-pot>');
      const { lang, dir } = inside(element, '.bw')[0]!;
      expect([lang, dir]).to.deep.equal(['en', 'ltr']);
      await expectAccessible(element);
    } finally {
      document.documentElement.removeAttribute('dir');
    }
  });
});
