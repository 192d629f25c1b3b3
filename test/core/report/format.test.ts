import { describe, expect, it } from 'vitest';
import { figure } from '../../../core/model/check.js';
import { fillTemplate, formatFigure, formatNumber } from '../../../core/report/format.js';
import { ENGLISH } from '../../../core/report/language.js';

const metric = { units: 'metric', locale: 'en' } as const;
const nbsp = '\u00a0';

describe('a figure in words', () => {
  it.each([
    [figure(402, 'mL'), `402${nbsp}mL`],
    [figure(1.3, 'L'), `1.3${nbsp}L`],
    [figure(0.667, ''), '0.67'],
    [figure(12, '°'), '12°'],
    [figure(-6, '°C'), `−6${nbsp}°C`],
    [figure({ low: 473, likely: 532, high: 591 }, 'mL'), `473–591${nbsp}mL`],
    [figure({ low: 2, likely: 2, high: 2 }, 'loads'), '2'],
    [figure({ low: -9, likely: -6, high: -3 }, 'kPa'), `−9 to −3${nbsp}kPa`],
    [figure(12345, 'g'), `12,345${nbsp}g`],
    [figure(1234, 'g'), `1234${nbsp}g`],
    [figure(2.46, 'L', 2), `2.46${nbsp}L`],
  ])('%j', (value, words) => {
    expect(formatFigure(value, metric)).toBe(words);
  });

  // NIST Handbook 44, App. C: 1 US fl oz is 29.5735295625 mL, 1 in is 25.4 mm, 1 oz is 28.349523125 g.
  it.each([
    [figure(473.176473, 'mL'), 'us', `16${nbsp}fl oz`],
    [figure(139.7, 'mm'), 'us', `5.5${nbsp}in`],
    [figure(28.349523125 * 3.5, 'g'), 'us', `3.5${nbsp}oz`],
    [figure(100, '°C'), 'us', `212${nbsp}°F`],
    // UK Weights and Measures Act 1985: 20 fl oz are 568.26125 mL, a pint.
    [figure(568.26125, 'mL'), 'imperial', `20${nbsp}fl oz`],
    [figure(0.56826125, 'L'), 'imperial', `1${nbsp}pt`],
  ] as const)('%j in %s units', (value, units, words) => {
    expect(formatFigure(value, { units, locale: 'en' })).toBe(words);
  });

  it('takes its unit as the language writes it', () => {
    const language = { ...ENGLISH, units: { mL: 'ml', '%': `${nbsp}%` } };
    expect(formatFigure(figure(402, 'mL'), { ...metric, language })).toBe(`402${nbsp}ml`);
    expect(formatFigure(figure(21.5, '%', 1), { ...metric, language })).toBe(`21.5${nbsp}%`);
    expect(formatFigure(figure(21.5, '%', 1), metric)).toBe('21.5%');
  });

  it('takes the decimal mark of the locale', () => {
    expect(formatNumber(figure(1.3, 'L'), { units: 'metric', locale: 'de' })).toBe('1,3');
  });
});

describe('a filled sentence', () => {
  const figures = { n: figure(2, 'rounds'), have: figure(402, 'mL'), what: 'lid', who: 'nobody' };
  const messages = { lid: 'the lid' };
  const fill = (template: string) => fillTemplate(template, figures, messages, metric);

  it('prints figures, bare numbers, words and plurals', () => {
    expect(fill('{have} in {n} {n:round|rounds}: {what}, {who}, {have#}')).toBe(
      `402${nbsp}mL in 2 rounds: the lid, nobody, 402`,
    );
    expect(fillTemplate('{n} {n:round|rounds}', { n: figure(1, 'rounds') }, {}, metric)).toBe('1 round');
  });

  it('refuses a name nobody gave', () => {
    expect(() => fill('{nothing}')).toThrow(/No figure "nothing"/);
  });
});
