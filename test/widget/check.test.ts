import { emulateMedia, executeServerCommand, sendKeys, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { html } from 'lit';
import { EMPTY_DRAFT, type BrimwiseCheck, type Draft } from '../../widget/index.js';
import { expectAccessible, mount } from './fixture.js';

const LIST = `Varn Hollow round: two of us, 3 days
camp at 900 m, −6 °C at night, snow possible
Humblefern pot 1.3 L, aluminium, with lid
Zorvik Mite burner, screws onto the canister
foil windscreen, goes right round
gas canister 230 g, butane
2 mugs 450 mL
rice and lentils, all cooked in the pot
down jacket 410 g
qwertz`;

/** The element alone in the page, with this draft. */
async function check(draft: Draft = EMPTY_DRAFT): Promise<BrimwiseCheck> {
  document.body.replaceChildren();
  const element = mount(html`<brimwise-check .draft=${draft}></brimwise-check>`).querySelector('brimwise-check')!;
  await element.updateComplete;
  return element;
}

const inside = (element: BrimwiseCheck, selector: string) => [
  ...element.shadowRoot!.querySelectorAll<HTMLElement>(selector),
];
const one = (element: BrimwiseCheck, selector: string): HTMLElement => {
  const found = element.shadowRoot!.querySelector<HTMLElement>(selector);
  if (!found) throw new Error(`Nothing here is ${selector}.`);
  return found;
};
const area = (element: BrimwiseCheck) => one(element, 'textarea') as HTMLTextAreaElement;
const focused = (element: BrimwiseCheck) => element.shadowRoot!.activeElement as HTMLElement | null;
const value = (element: BrimwiseCheck, field: string, nth = 0) =>
  inside(element, `[data-value*='"${field}"']`)[nth]! as HTMLButtonElement;
const list = (part: Partial<Draft> = {}): Draft => ({ ...EMPTY_DRAFT, text: LIST, ...part });
const pot = (part: Partial<Draft> = {}): Draft => ({
  ...EMPTY_DRAFT,
  entrance: 'pot',
  pot: { capacity: '1.3 L', diameter: '140 mm', height: '90 mm', bail: true },
  stove: { type: 'gas', burnerDiameter: '60 mm' },
  ...part,
});

/** Waits until it holds, four seconds at most. */
async function until(holds: () => boolean): Promise<void> {
  for (let waited = 0; !holds(); waited += 20) {
    if (waited > 4000) throw new Error(`In vain: ${holds.toString()}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

describe('<brimwise-check>', () => {
  afterEach(async () => {
    await setViewport({ width: 800, height: 600 });
    await emulateMedia({ colorScheme: 'light', media: 'screen' });
  });

  it('takes a draft of which a page gives only a part', async () => {
    const element = await check({ text: 'Pot 1 L' } as Draft);
    expect(area(element).value).to.equal('Pot 1 L');
    expect(inside(element, '[data-check]').length).to.be.above(0);
  });

  it('draws the first of very many lines of the reading, and the others when they are asked for', async () => {
    const element = await check(list({ text: 'pot 1 L\n'.repeat(700) }));
    expect(inside(element, '.read li').length).to.equal(500);
    const others = inside(element, '.reading button').find((button) => button.textContent.includes('other 200 lines'));
    others!.click();
    await element.updateComplete;
    expect(inside(element, '.read li').length).to.equal(700);
    expect(one(element, '.reading').textContent).not.to.contain('other 200 lines');
  });

  describe('gives axe nothing to mind', () => {
    const states: Record<string, Draft> = {
      'with nothing typed': EMPTY_DRAFT,
      'with a list': list(),
      'with no kit in the list': list({ text: 'down jacket 410 g\ntent' }),
      'with a trip and a correction that cannot be used': list({
        trip: { people: '2.5', lowC: 'abc' },
        corrections: [{ quote: 'gone', occurrence: 0, item: 0, field: 'massG', value: '4 g' }],
      }),
      'with one pot': pot(),
      'with a pot that cannot be': pot({ pot: { capacity: '1.3 L', diameter: '8 mm' } }),
    };
    for (const [state, draft] of Object.entries(states)) {
      for (const [width, colorScheme] of [
        [1200, 'light'],
        [320, 'dark'],
      ] as const) {
        it(`${state}, ${width} px, ${colorScheme}`, async () => {
          await setViewport({ width, height: 800 });
          await emulateMedia({ colorScheme });
          const element = await check(draft);
          for (const fold of inside(element, 'details')) (fold as HTMLDetailsElement).open = true;
          for (const toggle of inside(element, '.tog[aria-expanded="false"]')) toggle.click();
          await element.updateComplete;
          await expectAccessible(element);
          expect(document.documentElement.scrollWidth).to.be.at.most(width);
        });
      }
    }

    it('with a list, from right to left', async () => {
      document.documentElement.dir = 'rtl';
      try {
        const element = await check(list());
        await expectAccessible(element);
        expect(document.documentElement.scrollWidth).to.be.at.most(window.innerWidth);
      } finally {
        document.documentElement.removeAttribute('dir');
      }
    });

    it('with a list, in forced colours: the worst grade keeps its reversal', async () => {
      await executeServerCommand('media-features', [{ name: 'forced-colors', value: 'active' }]);
      try {
        const element = await check(list());
        await expectAccessible(element);
        const { color, backgroundColor } = getComputedStyle(one(element, '[data-grade="can-hurt"] .grade'));
        expect([color, backgroundColor]).to.deep.equal(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
      } finally {
        await executeServerCommand('media-features', [{ name: 'forced-colors', value: 'none' }]);
      }
    });
  });

  describe('while one types', () => {
    it('tells every stroke at once and shows findings without a button', async () => {
      const element = await check();
      const heard: Draft[] = [];
      element.addEventListener('brimwise-draft', (event) => heard.push(event.detail));
      element.focus();
      expect(focused(element) === area(element)).to.equal(true);
      await sendKeys({ type: 'pot 1.3 L' });
      expect(heard.map(({ text }) => text)).to.deep.equal([...'pot 1.3 L'].map((_, i) => 'pot 1.3 L'.slice(0, i + 1)));
      await until(() => inside(element, '[data-check]').length > 0);
      expect(area(element).value).to.equal('pot 1.3 L');
    });

    it('keeps the caret where it is when the findings come', async () => {
      const element = await check(list({ text: 'pot 1 L\nmug' }));
      area(element).focus();
      area(element).setSelectionRange(5, 5);
      await sendKeys({ type: '.3' });
      await until(() => one(element, '.read').textContent.includes('1.3'));
      expect(area(element).selectionStart).to.equal(4 + '.3'.length + 1);
    });

    it('does not tell what the page sets', async () => {
      const element = await check();
      let told = 0;
      element.addEventListener('brimwise-draft', () => told++);
      element.draft = list();
      await element.updateComplete;
      expect([told, inside(element, '[data-check]').length > 0]).to.deep.equal([0, true]);
    });

    it('speaks headline and tally once, after typing rests', async () => {
      const element = await check(list());
      const spoken = one(element, '.bw > [role="status"]');
      expect(spoken.textContent).to.equal('');
      await until(() => spoken.textContent !== '');
      expect(spoken.textContent).to.include(one(element, '.headline').textContent);
      expect(spoken.textContent).to.include('can hurt');
    });

    it('loses nothing when the entrance is switched, by keys', async () => {
      const element = await check(list());
      one(element, '.tabs input:checked').focus();
      await sendKeys({ press: 'ArrowRight' });
      await element.updateComplete;
      expect(element.draft.entrance).to.equal('pot');
      const field = one(element, '.form input[name="pot.capacity"]') as HTMLInputElement;
      field.focus();
      await sendKeys({ type: '900 ml' });
      one(element, '.tabs input:checked').focus();
      await sendKeys({ press: 'ArrowLeft' });
      await element.updateComplete;
      expect(area(element).value).to.equal(LIST);
      one(element, '.tabs input[value="pot"]').click();
      await element.updateComplete;
      expect((one(element, '.form input[name="pot.capacity"]') as HTMLInputElement).value).to.equal('900 ml');
    });

    it('shows hostile text as text', async () => {
      const hostile =
        '<img src=x onerror="document.title=\'broken\'"> pot 1 L <script>document.title="broken"</script>';
      const element = await check(list({ text: hostile }));
      expect(inside(element, 'img, script').length).to.equal(0);
      expect(one(element, '.lines').textContent.trim()).to.equal(hostile);
      expect(document.title).to.not.equal('broken');
    });
  });

  describe('the list', () => {
    it('has its marks under the words they are of', async () => {
      const element = await check(list());
      const line = inside(element, '.lines > div')[2]!;
      expect(line.textContent).to.equal('Humblefern pot 1.3 L, aluminium, with lid');
      expect([...line.querySelectorAll('b')].map((mark) => mark.textContent)).to.deep.equal(['pot']);
      expect([...line.querySelectorAll('i')].map((mark) => mark.textContent)).to.include('1.3 L');
      expect(one(element, '.lines').getBoundingClientRect().height).to.equal(
        area(element).getBoundingClientRect().height,
      );
      expect(area(element).scrollHeight).to.be.at.most(area(element).clientHeight);
    });

    it('leads from a finding to its line', async () => {
      const element = await check(list());
      const way = inside(element, '.ev button').find((button) => button.textContent.trim() === 'Line 5')!;
      way.click();
      expect(focused(element) === area(element)).to.equal(true);
      const { value: text, selectionStart, selectionEnd } = area(element);
      expect(text.slice(selectionStart, selectionEnd)).to.equal('foil windscreen, goes right round');
    });
  });

  describe('a value of the reading', () => {
    it('is put right in place by keys, and stays so when another line is edited', async () => {
      const element = await check(list());
      value(element, 'capacityMl').focus();
      await sendKeys({ press: 'Enter' });
      await element.updateComplete;
      expect(focused(element)?.localName).to.equal('input');
      await sendKeys({ type: '900 ml' });
      await sendKeys({ press: 'Enter' });
      await until(() => value(element, 'capacityMl').textContent.includes('900'));
      expect(focused(element) === value(element, 'capacityMl')).to.equal(true);
      expect(value(element, 'capacityMl').querySelector('del')!.textContent).to.include('1300');
      area(element).focus();
      area(element).setSelectionRange(0, 0);
      await sendKeys({ type: 'a spoon\n' });
      await until(() => value(element, 'capacityMl').getAttribute('aria-label')!.includes('line 4'));
      expect(value(element, 'capacityMl').querySelector('ins')!.textContent).to.include('900');
      expect(element.draft.corrections).to.have.length(1);
    });

    it('is given back by Escape, and by emptying it', async () => {
      const element = await check(list());
      value(element, 'capacityMl').click();
      await element.updateComplete;
      await sendKeys({ type: '5 L' });
      await sendKeys({ press: 'Escape' });
      await element.updateComplete;
      expect(element.draft.corrections).to.deep.equal([]);
      expect(value(element, 'capacityMl').textContent.trim()).to.equal('1.3 L');
      expect(focused(element) === value(element, 'capacityMl')).to.equal(true);

      element.draft = list({
        corrections: [
          { quote: LIST.split('\n')[2]!, occurrence: 0, item: 0, field: 'capacityMl', vessel: 0, value: '2 L' },
        ],
      });
      await element.updateComplete;
      value(element, 'capacityMl').click();
      await element.updateComplete;
      await sendKeys({ press: 'Delete' });
      await sendKeys({ press: 'Enter' });
      await element.updateComplete;
      expect(element.draft.corrections).to.deep.equal([]);
    });

    it('says all in its name, and why where it is a guess', async () => {
      const element = await check(list());
      expect(value(element, 'capacityMl').getAttribute('aria-label')).to.equal(
        'capacity of the pot, 1.3 L, stated, line 3. Change',
      );
    });

    it('may be added: a line that was not understood becomes what the person says', async () => {
      const element = await check(list());
      const line = inside(element, '.read li').find((row) => row.textContent.includes('qwertz'))!;
      line.querySelector<HTMLButtonElement>('button')!.click();
      await element.updateComplete;
      const select = one(element, '.reading select') as HTMLSelectElement;
      select.value = 'bottle';
      select.dispatchEvent(new Event('change'));
      await element.updateComplete;
      expect(element.draft.corrections).to.deep.equal([
        { quote: 'qwertz', occurrence: 0, item: 0, field: 'kind', value: 'bottle' },
      ]);
      expect(
        inside(element, '.read li').find((row) => row.textContent.trim().startsWith('10'))!.textContent,
      ).to.include('bottle');
    });
  });

  describe('the findings', () => {
    it('never hide a caution: of what holds up and of what no kit rules out, they stand open', async () => {
      const element = await check(list({ text: `Winter, two people, 2 days, camp at 2000 m\n${LIST}` }));
      const cautions = inside(element, '[part=caution]');
      expect(cautions.map(({ dataset }) => dataset['check'])).to.include('air');
      for (const caution of inside(element, '.caution'))
        expect(caution.getBoundingClientRect().height).to.be.greaterThan(0);
    });

    it('stand worst first, at most three open', async () => {
      const element = await check(list());
      const order = ['can-hurt', 'falls-short', 'costs-you', 'cant-tell', 'holds-up'];
      const grades = inside(element, '.finding[data-grade]').map((finding) => order.indexOf(finding.dataset['grade']!));
      expect(grades).to.deep.equal([...grades].sort());
      expect(grades.length).to.be.greaterThan(4);
      const open = inside(element, 'article.finding[data-grade][data-check], details.finding[open]');
      expect(open.length).to.equal(3);
    });

    it('show a fix at sight, and the sum and sources behind Why', async () => {
      const element = await check(list());
      const room = one(element, '[data-check="meal-room"]');
      expect(room.querySelector('.fix')!.textContent).to.match(/\d/);
      const why = room.querySelector('.why')!;
      expect(why.querySelector('.sum .res td')!.textContent).to.include('871');
      expect(why.textContent).to.include('Common practice:');
    });

    it('take an answer where they ask', async () => {
      const element = await check(list());
      const question = inside(element, '.ask').find((ask) => ask.textContent.includes('how tall'))!;
      const [width, height] = [...question.querySelectorAll('input')];
      width!.focus();
      await sendKeys({ type: '140 mm' });
      await sendKeys({ press: 'Enter' });
      height!.focus();
      await sendKeys({ type: '90 mm' });
      await sendKeys({ press: 'Enter' });
      await element.updateComplete;
      expect(element.draft.corrections.map(({ field, value: typed }) => [field, typed])).to.deep.equal([
        ['diameterMm', '140 mm'],
        ['heightMm', '90 mm'],
      ]);
      expect(inside(element, '.ask [data-check="proportion"]').length).to.equal(0);
    });

    it('are worded in the units asked for', async () => {
      const element = await check(list());
      one(element, '.units label:nth-of-type(3) input').click();
      await element.updateComplete;
      expect(element.draft.units).to.equal('us');
      expect(one(element, '[data-check="meal-room"] .fig').textContent).to.include('fl oz');
    });

    it('follow the trip as it is typed', async () => {
      const element = await check(list());
      const people = one(element, '.strip input') as HTMLInputElement;
      people.focus();
      await sendKeys({ type: '1' });
      await until(() => inside(element, '[data-check="meal-room"][data-grade="costs-you"]').length === 0);
      expect(element.draft.trip).to.deep.equal({ people: '1' });
      one(element, '.strip-row .act').click();
      await element.updateComplete;
      expect(element.draft.trip).to.deep.equal({});
    });
  });

  describe('the remark', () => {
    const allow = (write: (text: string) => Promise<void>) => {
      navigator.clipboard.writeText = write;
    };
    const copyAs = async (element: BrimwiseCheck, label: string) => {
      inside(element, '.bar button')
        .find((button) => button.textContent.trim() === label)!
        .click();
      await until(() => one(element, '.foot [role="status"]').textContent !== '');
    };
    // The browser's own comes back from under the test's.
    afterEach(() => void Reflect.deleteProperty(navigator.clipboard, 'writeText'));

    for (const [label, quote] of [
      ['Copy as text', '  > 4: Zorvik Mite burner, screws onto the canister'],
      ['Copy as Markdown', '> 4: Zorvik Mite burner, screws onto the canister'],
    ] as const) {
      it(`is copied by “${label}”, with the lines quoted`, async () => {
        const copied: string[] = [];
        allow((text) => Promise.resolve(void copied.push(text)));
        const element = await check(list());
        await copyAs(element, label);
        expect(copied.length).to.equal(1);
        expect(copied[0]!.split('\n')).to.include(quote);
        expect(copied[0]!.startsWith('**')).to.equal(label.endsWith('Markdown'));
        expect(one(element, '.foot [role="status"]').textContent).to.equal('Copied.');
      });
    }

    it('stands there to be copied by hand where the browser refuses', async () => {
      allow(() => Promise.reject(new Error('no')));
      const element = await check(list());
      await copyAs(element, 'Copy as Markdown');
      expect((one(element, '.by-hand') as HTMLTextAreaElement).value).to.include('> 4: Zorvik');
    });
  });

  describe('with no kit in the list', () => {
    it('says what was read and gives a line to begin with', async () => {
      const element = await check(list({ text: 'down jacket 410 g\ntent' }));
      expect(one(element, '.right').textContent).to.include('2 lines read');
      one(element, '.right button').click();
      await element.updateComplete;
      expect(inside(element, '[data-check]').length).to.be.greaterThan(0);
      expect(element.draft.text).to.include('down jacket 410 g\ntent\npot');
    });
  });
});
