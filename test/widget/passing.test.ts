import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import { html } from 'lit';
import { EMPTY_DRAFT, type BrimwiseCheck } from '../../widget/index.js';
import { expectAccessible, mount, until } from './fixture.js';

const TEXT =
  'We were four friends on the lakes. In the evenings we sat around a gas stove and talked. My mug was the old enamel one. I had a 900 ml pot with a lid for myself, and it was plenty. We were glad of the kettle then.';

const buttons = (element: BrimwiseCheck) => [
  ...element.shadowRoot!.querySelectorAll<HTMLButtonElement>('.also button'),
];
const items = (element: BrimwiseCheck) => element.shadowRoot!.querySelectorAll('.reading .it').length;

async function check(): Promise<BrimwiseCheck> {
  document.body.replaceChildren();
  const draft = { ...EMPTY_DRAFT, text: TEXT };
  const element = mount(html`<brimwise-check .draft=${draft}></brimwise-check>`).querySelector('brimwise-check')!;
  await element.updateComplete;
  await until(() => buttons(element).length > 0);
  return element;
}

describe('things named in passing', () => {
  it('stand below the reading, each with a button that says what it counts', async () => {
    const element = await check();
    expect(buttons(element).map((button) => button.getAttribute('aria-label') ?? button.textContent.trim())).to.eql([
      'It counts: stove gas, line 1',
      'It counts: mug enamel, line 1',
      'It counts: kettle, line 1',
      'Count all 3',
    ]);
    expect(items(element)).to.equal(1);
    await expectAccessible(element);
  });

  it('are counted one by one by the keyboard, and the focus stays with those that are left', async () => {
    const element = await check();
    buttons(element)[1]!.focus();
    await sendKeys({ press: 'Enter' });
    await until(() => items(element) === 2);
    expect(buttons(element).length).to.equal(3);
    await until(() => element.shadowRoot!.activeElement === buttons(element)[0]);
    expect(element.draft.corrections.map(({ field, item, value }) => [field, item, value])).to.eql([
      ['passing', 1, true],
    ]);
  });

  it('are counted all at once', async () => {
    const element = await check();
    buttons(element).at(-1)!.click();
    await until(() => items(element) === 4);
    expect(buttons(element)).to.eql([]);
    expect(element.shadowRoot!.querySelector('.also')).to.equal(null);
  });
});
