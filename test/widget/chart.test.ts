import { expect } from 'chai';
import type { BrimwiseCheck, BrimwisePot } from '../../widget/index.js';
import '../../widget/index.js';
import { expectAccessible } from './fixture.js';

async function from<E extends HTMLElement = BrimwisePot>(html: string): Promise<E> {
  document.body.innerHTML = html;
  const element = document.body.firstElementChild as E;
  await (element as unknown as BrimwisePot).updateComplete;
  return element;
}

const chartOf = (element: BrimwisePot) => element.renderRoot.querySelector('[part="chart"]');
const numbers = (path: Element | null) => [...(path?.getAttribute('d') ?? '').matchAll(/[\d.]+/g)].map(Number);

const SMALL =
  '<brimwise-pot diameter="80" height="120" bail="yes" stove="alcohol" burner="60" people="1"></brimwise-pot>';

describe('what to look for', () => {
  afterEach(() => document.body.replaceChildren());

  it('is drawn for a pot: its outline from the corner, on the same scale both ways, and the nearest that suits', async () => {
    const element = await from(SMALL);
    const chart = chartOf(element)!;
    const [left, atY, atX, ground] = numbers(chart.querySelector('.ghost')) as [number, number, number, number];
    expect((atX - left) / (ground - atY)).to.be.closeTo(80 / 120, 0.01);
    const ring = chart.querySelector('.chart .target')!;
    const perMm = (atX - left) / 80;
    const [across, tall] = [
      (Number(ring.getAttribute('cx')) - left) / perMm,
      (ground - Number(ring.getAttribute('cy'))) / perMm,
    ];
    const said = /(\d+)\u00a0mm across and (\d+)\u00a0mm tall/.exec(chart.querySelector('.fix')!.textContent)!;
    expect(across).to.be.closeTo(Number(said[1]), 0.5);
    expect(tall).to.be.closeTo(Number(said[2]), 0.5);
    expect(chart.querySelectorAll('.legend li')).to.have.lengthOf(8);
    await expectAccessible(chart);
  });

  it('draws no region where no pot suits, and says so', async () => {
    const element = await from(
      '<brimwise-pot diameter="300" height="90" stove="alcohol" burner="40" people="12"></brimwise-pot>',
    );
    const chart = chartOf(element)!;
    expect(chart.querySelector('.chart .edge[d]')).to.equal(null);
    expect(chart.querySelector('.chart .target')).to.equal(null);
    expect(chart.textContent).to.contain('No pot is all of that on this stove.');
  });

  it('is there with no pot at all, once the reader tells of the trip', async () => {
    const element = await from<BrimwiseCheck>('<brimwise-check entrance="pot"></brimwise-check>');
    const people = element.renderRoot.querySelector<HTMLInputElement>('[part="trip"] input')!;
    people.value = '3';
    people.dispatchEvent(new InputEvent('input', { bubbles: true }));
    for (let tries = 0; !/For 3 people/.test(chartOf(element)?.textContent ?? '') && tries < 100; tries++)
      await new Promise((resolve) => setTimeout(resolve, 20));
    const chart = chartOf(element)!;
    expect(chart.textContent).to.contain('For 3 people');
    expect(chart.querySelector('.ghost')).to.equal(null);
    expect(chart.querySelector('.chart .edge[d]')).to.not.equal(null);
    await expectAccessible(chart);
  });

  it('is left out where the page asks for other parts, and for a stove with its own pot', async () => {
    expect(chartOf(await from(SMALL.replace('<brimwise-pot', '<brimwise-pot show="form drawing"')))).to.equal(null);
    expect(chartOf(await from(SMALL.replace('alcohol', 'integrated')))).to.equal(null);
    expect(chartOf(await from(SMALL.replace('alcohol', 'gas')))).to.not.equal(null);
  });

  it('speaks the language of the page, in the units asked for', async () => {
    const element = await from(SMALL.replace('<brimwise-pot', '<brimwise-pot lang="de" units="us"'));
    for (let tries = 0; !/Worauf/.test(chartOf(element)?.textContent ?? '') && tries < 100; tries++)
      await new Promise((resolve) => setTimeout(resolve, 20));
    expect(chartOf(element)!.querySelector('h2')!.textContent).to.equal('Worauf zu achten ist');
    expect(chartOf(element)!.textContent).to.contain('Breite, in');
    expect(chartOf(element)!.textContent).to.not.match(/\bmm\b|across|tall/);
  });
});
