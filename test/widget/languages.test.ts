import { expect } from 'chai';
import '../../widget/index.js';
import type { Report } from '../../core/index.js';

const LIST = '1 Topf 1,3 l, Aluminium, 210 g\nGaskocher\n2 Löffel';

// Unbundled modules are many: without this the browser stops counting what is loaded.
performance.setResourceTimingBufferSize(2000);

/** The languages of words that this page has loaded. */
const loaded = () =>
  performance
    .getEntriesByType('resource')
    .flatMap(({ name }) => /\/data\/words\/([a-z]{2})\.(?:js|ts)/.exec(name)?.[1] ?? [])
    .sort();

async function report(html: string): Promise<Report> {
  document.body.innerHTML = html;
  const element = document.querySelector('brimwise-check')!;
  for (let tries = 0; element.report === null; tries++) {
    if (tries > 200) throw new Error('There is no report.');
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  return element.report;
}

describe('a list in another language', () => {
  it('waits for no words where it is in English', async () => {
    await report('<brimwise-check>Pot 1.3 L, aluminium, 210 g</brimwise-check>');
    expect(loaded()).to.deep.equal(['en']);
  });

  it('is read with the words of the language of its page, and no others are loaded', async () => {
    const { reading } = await report(`<div lang="de-CH"><brimwise-check>${LIST}</brimwise-check></div>`);
    expect(reading.languages).to.deep.equal(['de']);
    expect(reading.items.map(({ kind }) => kind)).to.deep.equal(['pot', 'stove', 'utensil']);
    expect(loaded()).to.deep.equal(['de', 'en']);
  });

  it('is read on a page in English as well', async () => {
    const { reading } = await report('<brimwise-check>1 gryta 1,3 liter\ngasolkök\n2 skedar</brimwise-check>');
    expect(reading.languages).to.deep.equal(['sv']);
    expect(reading.items[0]!.kind).to.equal('pot');
  });
});
