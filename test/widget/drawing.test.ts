import { expect } from 'chai';
import type { PotFigures, StoveFigures, UnitSystem } from '../../core/index.js';
import { WORDS } from '../../widget/messages/en.js';
import { drawing } from '../../widget/views/drawing.js';
import { scaleOf, spread, ticks } from '../../widget/views/drawing-geometry.js';
import { expectAccessible, mountStyled } from './fixture.js';

const SIZE = { rimMm: 80, heightMm: 125, fillMm: 84 };
const POT: PotFigures = {
  ...SIZE,
  item: null,
  name: 'pot',
  capacityMl: 600,
  baseMm: 80,
  earMm: null,
  fillMl: 402,
  bail: true,
  lid: true,
  tipDeg: 12,
  spillDeg: 46,
  needMl: [473, 591],
  needMm: [98.5, 123.1],
  edge: { mm: 20, upMm: 70 },
};
const STOVE: StoveFigures = {
  item: null,
  name: 'stove',
  type: 'alcohol',
  form: null,
  burnerMm: 60,
  armSpanMm: 100,
  armCount: 3,
  heightMm: 70,
  footMm: 100,
  supportShare: 0.5,
  suitsMm: [90, 120],
};

function drawn(pot: Partial<PotFigures> = {}, stove: StoveFigures | null = STOVE, units: UnitSystem = 'metric') {
  return mountStyled(drawing({ ...POT, ...pot }, stove, units, WORDS));
}

function box(place: HTMLElement, kind: string): DOMRect {
  const part = place.querySelector<SVGGraphicsElement>(kind);
  if (part === null) throw new Error(`The drawing has no ${kind}.`);
  return part.getBBox();
}

function labelOf(place: HTMLElement): string {
  return (place.querySelector('svg')?.getAttribute('aria-label') ?? '').replaceAll('\u00a0', ' ');
}

function wordsOf(place: HTMLElement): string[] {
  return [...place.querySelectorAll('text')].map((text) => (text.textContent ?? '').replaceAll('\u00a0', ' '));
}

afterEach(() => document.body.replaceChildren());

describe('the pot in section', () => {
  for (const [name, pot] of Object.entries({
    'tall and narrow': {},
    'wide and low': { rimMm: 220, baseMm: 220, heightMm: 110, fillMm: 70, bail: false },
    tapered: { rimMm: 140, baseMm: 110, heightMm: 95, fillMm: 72, lid: null },
  } satisfies Record<string, Partial<PotFigures>>)) {
    it(`is to scale, ${name}: one scale on both axes, and the fill line at its height`, () => {
      const { rimMm, heightMm, fillMm } = { ...SIZE, ...pot };
      const place = drawn(pot);
      const wall = box(place, '.cut');
      const flare = { ...POT, ...pot }.lid === true ? 0 : 6;
      const perMm = wall.height / heightMm;
      expect((wall.width - flare) / rimMm).to.be.closeTo(perMm, 0.005);
      const fill = box(place, '.fill');
      expect((wall.y + wall.height - fill.y) / wall.height).to.be.closeTo(fillMm / heightMm, 0.002);
      // The burner, the stand and the ruler are drawn at the same scale.
      expect(box(place, '.bar').width / 60).to.be.closeTo(perMm, 0.005);
      expect((box(place, '.edge').y - wall.y - wall.height) / 70).to.be.closeTo(perMm, 0.005);
      const last = ticks(heightMm, 'metric').at(-1)!;
      expect(box(place, '.ruler').height / last.mm).to.be.closeTo(perMm, 0.005);
    });
  }

  it('leans its rays by the degrees that it names', () => {
    const place = drawn();
    const leans = [...place.querySelectorAll<SVGLineElement>('.ray')].map((ray) => {
      const [dx, dy] = [ray.x2.baseVal.value - ray.x1.baseVal.value, ray.y1.baseVal.value - ray.y2.baseVal.value];
      return Math.round((Math.atan2(dx, dy) * 180) / Math.PI);
    });
    expect(leans).to.deep.equal([12, 46]);
    expect(wordsOf(place)).to.include.members(['tips 12°', 'spills 46°']);
  });

  it('tells its figures in its label', () => {
    expect(labelOf(drawn())).to.equal(
      'The pot in section, to scale: 80 mm across and 125 mm tall. The burner is 60 mm across. Its base stands 70 mm over the ground. ' +
        'It holds 600 mL to the brim; one meal takes 473–591 mL. Filled to 84 mm with 402 mL, 41 mm under the brim. ' +
        'It tips at 12° and spills at 46°. The burner suits bases 90–120 mm across.',
    );
  });

  it('says every figure beside a mark in its label too', () => {
    const place = drawn();
    const label = labelOf(place);
    const beside = wordsOf(place).filter((words) => /[a-z]/.test(words));
    expect(beside.length).to.be.greaterThan(6);
    for (const figure of beside.flatMap((words) => words.match(/\d+(–\d+)?/g) ?? [])) expect(label).to.contain(figure);
  });

  it('reads in inches and fluid ounces where the list does', () => {
    const place = drawn({}, STOVE, 'us');
    expect(labelOf(place)).to.contain('3.1 in across and 4.9 in tall');
    expect(wordsOf(place)).to.include.members(['in', '1', '2', '4']);
  });

  it('keeps all of its words apart and on the sheet', () => {
    const crowded = [
      drawn(),
      drawn({ fillMm: 120, fillMl: 580 }),
      drawn({ rimMm: 140, baseMm: 140, heightMm: 90, fillMm: 60, tipDeg: 21, spillDeg: 23 }),
      drawn({ rimMm: 75, baseMm: 75, heightMm: 110, fillMm: 99, tipDeg: 15, spillDeg: 16 }),
    ];
    for (const place of crowded) {
      const texts = [...place.querySelectorAll('text')];
      const boxes = texts.map((text) => ({ words: text.textContent, box: text.getBBox() }));
      for (const [i, a] of boxes.entries()) {
        expect(a.box.x, `${a.words}`).to.be.at.least(-1);
        expect(a.box.x + a.box.width, `${a.words}`).to.be.at.most(346);
        for (const b of boxes.slice(i + 1)) {
          const across = Math.min(a.box.x + a.box.width, b.box.x + b.box.width) - Math.max(a.box.x, b.box.x);
          const down = Math.min(a.box.y + a.box.height, b.box.y + b.box.height) - Math.max(a.box.y, b.box.y);
          expect(across > 1 && down > 4, `“${a.words}” over “${b.words}”`).to.equal(false);
        }
      }
    }
  });

  it('says what is to scale', () => {
    expect(drawn().querySelector('figcaption')?.textContent).to.equal(WORDS.drawing.caption);
    expect(drawn({}, null).querySelector('figcaption')?.textContent).to.equal('To scale.');
  });

  it('is nothing without a width or a height', () => {
    expect(drawn({ rimMm: null }).querySelector('svg')).to.equal(null);
    expect(drawn({ heightMm: null }).querySelector('svg')).to.equal(null);
  });

  it('leaves out what is not known', () => {
    const alone = drawn(
      { capacityMl: null, fillMm: null, fillMl: null, tipDeg: null, spillDeg: null, needMm: null, edge: null },
      null,
    );
    expect(alone.querySelectorAll('.cut')).to.have.length(1);
    for (const part of ['.fill', '.level', '.w', '.ray', '.bar', '.band', '.leg', '.flame', '.fulcrum']) {
      expect(alone.querySelectorAll(part), part).to.have.length(0);
    }
    expect(labelOf(alone)).to.equal('The pot in section, to scale: 80 mm across and 125 mm tall.');
  });

  it('hatches where a base ends best for an open flame only', () => {
    expect(drawn().querySelectorAll('.band')).to.have.length(2);
    expect(drawn({}, { ...STOVE, type: 'gas', suitsMm: null }).querySelectorAll('.band')).to.have.length(0);
  });

  it('carries no style of its own and is accessible', async () => {
    const place = drawn();
    expect(place.querySelectorAll('[style], style')).to.have.length(0);
    await expectAccessible(place);
  });
});

describe('the geometry of the drawing', () => {
  it('keeps a wide foot on the sheet', () => {
    const scale = scaleOf({ rim: 80, base: 80, height: 100 }, { ...STOVE, footMm: 260 }, 0);
    expect(scale.x(-130)).to.be.at.least(0);
    expect(scale.x(130)).to.be.at.most(344);
  });

  it('moves crowded labels apart and leaves the others', () => {
    expect(spread([0, 100, 200], 16)).to.deep.equal([0, 100, 200]);
    const [a, b, c] = spread([52, 50, 120], 16);
    expect(a! - b!).to.be.closeTo(16, 1e-6);
    expect((a! + b!) / 2).to.be.closeTo(51, 1e-6);
    expect(c).to.equal(120);
  });
});
