import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BrimwiseCheck } from '../../widget/index.js';
import { judgeAtHand } from '../../widget/judging.js';
import '../../widget/index.js';

/** Each test goes on from the one before: what is loaded once stays. The fixture, which loads it, is left out here. */
async function from<E extends HTMLElement = BrimwiseCheck>(html: string): Promise<E> {
  document.body.innerHTML = html;
  const element = document.body.firstElementChild as E;
  await (element as unknown as BrimwiseCheck).updateComplete;
  return element;
}

const until = async (holds: () => boolean) => {
  for (let tries = 0; !holds(); tries++) {
    if (tries > 200) throw new Error('It never came to hold.');
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
};

describe('what reads and judges', () => {
  it('is not loaded for an element that is asked nothing, whatever trip the page sets', async () => {
    const empty = await from('<brimwise-check people="2" days="3" season="winter"></brimwise-check>');
    const pot = await from('<brimwise-pot name="Humblefern" people="two"></brimwise-pot>');
    expect(pot.renderRoot.querySelectorAll('.form input').length).to.be.greaterThan(4);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(empty.report).to.equal(null);
    expect(judgeAtHand()).to.equal(null);
    expect(
      performance.getEntriesByType('resource').filter(({ name }) => /core\/(typed-)?door\./.test(name)),
    ).to.deep.equal([]);
  });

  it('comes when the reader has something to ask, and tells the page', async () => {
    const element = await from('<brimwise-check people="two"></brimwise-check>');
    const reports: unknown[] = [];
    const warnings: string[] = [];
    element.addEventListener('brimwise-report', ({ detail }) => reports.push(detail));
    const page = globalThis.console;
    const { warn } = page;
    page.warn = (words: string) => warnings.push(words);
    element.focus();
    await sendKeys({ type: 'Pot 1.3 L, lid' });
    await until(() => element.report?.reading.items.length === 1 && reports.length > 0);
    page.warn = warn;
    expect(judgeAtHand()).to.not.equal(null);
    expect(reports.at(-1)).to.equal(element.report);
    await element.updateComplete;
    expect(element.draft.text).to.equal('Pot 1.3 L, lid');
    expect(element.renderRoot.querySelectorAll('.finding').length).to.be.greaterThan(0);
    // What a setting is worth is known from now on.
    expect(warnings.filter((words) => words.includes('people="two"'))).to.have.lengthOf(1);
    expect(element.draft.trip).to.deep.equal({});
  });

  it('dresses its findings when it comes', async () => {
    const element = await from('<brimwise-check>Pot 1.3 L</brimwise-check>');
    const grade = element.renderRoot.querySelector('.finding .grade')!;
    expect(getComputedStyle(grade).fontWeight).to.equal('700');
  });

  it('leaves the page its turn while it judges a long list, and tells of the last stroke alone', async () => {
    const element = await from('<brimwise-check></brimwise-check>');
    const reports: { reading: { items: readonly unknown[] } }[] = [];
    element.addEventListener('brimwise-report', ({ detail }) => {
      if (detail !== null) reports.push(detail);
    });
    const area = element.renderRoot.querySelector('textarea')!;
    const type = (text: string) => {
      area.value = text;
      area.dispatchEvent(new InputEvent('input', { bubbles: true }));
    };
    const line = 'Pot 1.3 L, 140 g, gas stove 90 g\n';
    const long = { ...element.draft, text: line.repeat(4000) };
    const { judgeBetweenStrokes } = judgeAtHand()!;
    let turns = 0;
    const count = new MessageChannel();
    count.port1.onmessage = () => {
      turns++;
      count.port2.postMessage(null);
    };
    count.port2.postMessage(null);
    const judged = await judgeBetweenStrokes(() => false, long);
    expect(turns).to.be.greaterThan(5);
    expect(judged?.report.reading.items).to.have.lengthOf(8000);
    turns = 0;
    expect(await judgeBetweenStrokes(() => turns > 2, long)).to.equal(undefined);
    count.port1.close();
    type(line.repeat(400));
    type(line);
    await until(() => reports.length > 0);
    await new Promise((resolve) => setTimeout(resolve, 600));
    expect(reports.map(({ reading }) => reading.items.length)).to.deep.equal([2]);
  });
});
