import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BrimwiseCheck, BrimwisePot, BrimwiseVerdict } from '../../widget/index.js';
import '../../widget/index.js';
import { everythingIn, faultsOf, stopNow, type Stop } from './keys.js';

type Own = BrimwiseCheck | BrimwisePot | BrimwiseVerdict;

const POT = 'diameter="130" height="95" stove="alcohol" burner="60"';
const STATES = {
  'a list':
    '<brimwise-check>Pot 1.3 L\nGas stove, screws on the canister\nGas 230 g\nfoil windscreen\nqwertz</brimwise-check>',
  'nothing yet': '<brimwise-check></brimwise-check>',
  'one pot': `<brimwise-pot ${POT}></brimwise-pot>`,
  'one pot with locked fields': `<brimwise-pot people="2" locked="people diameter stove" ${POT}></brimwise-pot>`,
  'a verdict': `<brimwise-verdict ${POT} capacity="1.1 L"></brimwise-verdict>`,
};

/** What the keys reach from the button before the element to the one after it. */
async function walk(source: string): Promise<{ element: Own; stops: Stop[] }> {
  document.body.innerHTML = `<main><button id="before">Before</button>${source}<button id="after">After</button></main>`;
  const element = document.querySelector<Own>('brimwise-check, brimwise-pot, brimwise-verdict')!;
  await element.updateComplete;
  document.querySelector<HTMLElement>('#before')!.focus();
  const stops: Stop[] = [];
  for (let pressed = 0; pressed < 200; pressed++) {
    await sendKeys({ press: 'Tab' });
    const stop = stopNow();
    if (stop === null || stop.element.id === 'after') return { element, stops };
    stops.push(stop);
  }
  throw new Error('The keys do not get out of the element.');
}

afterEach(() => document.body.replaceChildren());

describe('by keyboard alone', () => {
  for (const [state, source] of Object.entries(STATES)) {
    it(`everything is reached in the order it is read, has a name, shows its focus, and lets go again: ${state}`, async () => {
      const { element, stops } = await walk(source);
      expect(document.activeElement!.id).to.equal('after');
      expect(stops.length).to.be.greaterThan(0);
      expect(faultsOf(stops, everythingIn(element.shadowRoot!))).to.deep.equal([]);
    });
  }

  it('no focus is taken when an element appears', async () => {
    document.body.innerHTML = `<main><button id="before">Before</button></main>`;
    document.querySelector<HTMLElement>('#before')!.focus();
    for (const source of Object.values(STATES)) document.querySelector('main')!.insertAdjacentHTML('beforeend', source);
    await Promise.all(
      [...document.querySelectorAll<Own>(':is(brimwise-check, brimwise-pot, brimwise-verdict)')].map(
        (one) => one.updateComplete,
      ),
    );
    expect(document.activeElement!.id).to.equal('before');
  });
});
