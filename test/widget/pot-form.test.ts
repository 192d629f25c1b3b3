import { expect } from 'chai';
import { EMPTY_DRAFT, type Fields } from '../../widget/draft.js';
import { judge } from '../../widget/judge.js';
import { WORDS } from '../../widget/messages/en.js';
import { potForm } from '../../widget/views/pot-form.js';
import { expectAccessible, mountStyled } from './fixture.js';

/** The form of a draft, judged as the element judges it, and what was typed into it. */
function form(pot: Fields = {}, stove: Fields = {}) {
  const typed: [string, string | boolean][] = [];
  const problems = judge({ ...EMPTY_DRAFT, entrance: 'pot', pot, stove })?.report.problems ?? [];
  const place = mountStyled(
    potForm(
      { pot, stove, problems, level: 2, locked: new Set(), folded: true },
      WORDS,
      (name, value) => typed.push([name, value]),
      () => {},
    ),
  );
  const input = (name: string) => {
    const found = place.querySelector<HTMLInputElement>(`[name="${name}"]`);
    if (found === null) throw new Error(`The form has no ${name}.`);
    return found;
  };
  return { place, typed, input };
}

afterEach(() => document.body.replaceChildren());

describe('the form of one pot', () => {
  it('hands on what is typed as it is typed, by the names of the pot and the stove', () => {
    const { typed, input } = form();
    const fields = {
      'pot.diameter': '4 1/2 in',
      'pot.baseDiameter': '11,5 cm',
      'pot.height': '90',
      'pot.capacity': '1.3 L',
      'pot.mass': '210 g',
      'stove.burnerDiameter': '60',
      'stove.height': '70',
      'stove.armCount': '3',
      'stove.armInner': '30',
      'stove.armSpan': '100',
      'stove.footDiameter': '110',
    };
    for (const [name, value] of Object.entries(fields)) {
      input(name).value = value;
      input(name).dispatchEvent(new Event('input'));
    }
    expect(Object.fromEntries(typed)).to.deep.equal(fields);
  });

  it('hands on choices and ticks', () => {
    const { typed, input } = form({ lid: true });
    for (const [name, value] of [
      ['pot.material', 'titanium'],
      ['stove.type', 'alcohol'],
      ['stove.form', 'remote'],
    ] as const) {
      input(name).value = value;
      input(name).dispatchEvent(new Event('change'));
    }
    input('pot.bail').click();
    input('pot.lid').click();
    expect(typed).to.deep.equal([
      ['pot.material', 'titanium'],
      ['stove.type', 'alcohol'],
      ['stove.form', 'remote'],
      ['pot.bail', true],
      ['pot.lid', false],
    ]);
  });

  it('tells not said from no', () => {
    const { input } = form({ bail: true, lid: false });
    expect([input('pot.bail').checked, input('pot.bail').indeterminate]).to.deep.equal([true, false]);
    expect([input('pot.lid').checked, input('pot.lid').indeterminate]).to.deep.equal([false, false]);
    expect([input('pot.handles').checked, input('pot.handles').indeterminate]).to.deep.equal([false, true]);
  });

  it('is judged in millimetres and millilitres, whatever the unit and the decimal mark', () => {
    const pot = { diameter: '4 1/2 in', height: '11,5 cm', capacity: '1.3 L', mass: '210', material: 'steel' };
    const stove = { burnerDiameter: '60', armSpan: '10 cm', armCount: '4', height: '70' };
    const report = judge({ ...EMPTY_DRAFT, entrance: 'pot', pot, stove })!.report;
    expect(report.problems).to.deep.equal([]);
    // 4½ in × 25.4 mm/in (NIST Handbook 44, Appendix C) = 114.3 mm.
    expect(report.pots[0]?.rimMm).to.be.closeTo(114.3, 1e-9);
    expect(report.pots[0]?.heightMm).to.be.closeTo(115, 1e-9);
    expect(report.pots[0]?.capacityMl).to.be.closeTo(1300, 1e-9);
    expect(report.stoves[0]).to.include({ burnerMm: 60, armSpanMm: 100, armCount: 4, heightMm: 70 });
  });

  it('keeps a value that cannot be used, with the reason under it', () => {
    const { input } = form({ diameter: '8', height: 'tall', capacity: '600' }, { armCount: 'many' });
    const reasons = ['pot.diameter', 'pot.height', 'stove.armCount'].map((name) => {
      const field = input(name);
      const id = field.getAttribute('aria-describedby') ?? '';
      const root = field.getRootNode() as ShadowRoot;
      return [
        field.value,
        field.getAttribute('aria-invalid'),
        root.getElementById(id)?.textContent?.replaceAll('\u00a0', ' '),
      ];
    });
    expect(reasons[0]).to.deep.equal(['8', 'true', '8 mm is less than any pot; 80?']);
    expect(reasons[1]?.slice(0, 2)).to.deep.equal(['tall', 'true']);
    expect(reasons[1]?.[2]).to.contain('“tall” is not understood');
    expect(reasons[2]).to.deep.equal(['many', 'true', '“many” is not a number; write it in figures.']);
    expect(input('pot.capacity').hasAttribute('aria-describedby')).to.equal(false);
  });

  it('names its unit until one is typed', () => {
    const unitOf = (field: HTMLElement) => field.parentElement?.querySelector('.u')?.textContent;
    expect(unitOf(form({ diameter: '80' }).input('pot.diameter'))).to.equal('mm');
    expect(unitOf(form({ diameter: '3 in' }).input('pot.diameter'))).to.equal(undefined);
  });

  it('labels every field and is accessible, with and without an error', async () => {
    const broken = () => form({ diameter: '8', lid: true }, { type: 'gas', armCount: 'many' });
    for (const make of [() => form(), broken]) {
      document.body.replaceChildren();
      const { place } = make();
      for (const control of place.querySelectorAll<HTMLInputElement>('input, select')) {
        expect(control.labels?.[0]?.textContent?.trim(), control.name).to.not.equal('');
      }
      await expectAccessible(place);
    }
  });

  it('takes figures from a phone’s number keys', () => {
    const { place } = form();
    const texts = [...place.querySelectorAll<HTMLInputElement>('input:not([type])')];
    expect(texts).to.have.length(11);
    for (const field of texts) expect(field.inputMode, field.name).to.match(/^(decimal|numeric)$/);
  });
});
