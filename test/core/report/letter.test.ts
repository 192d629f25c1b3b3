import { describe, expect, it } from 'vitest';
import { checkList, letterParagraphs, letterParts, writeLetter, type LetterChoice } from '../../../core/index.js';
import { countSentences } from '../../../core/report/letter.js';
import { german } from '../../../widget/messages/german.js';

const LIST = `Two of us, 3 days, camp at 900 m, -6 C at night, snow possible
pot 1.3 L, aluminium, lid
burner, screws onto the canister
foil windscreen, goes right round
gas canister 230 g, butane
2 mugs 450 mL, 2 spoons
pot gripper
4 bottles 1 L
lighter, matches
rice, cooked in the pot`;
const speech = { locale: 'en' };
const report = checkList(LIST);
const parts = letterParts(report, speech);
const AS_IT_IS: LetterChoice = { first: '', ticks: {}, texts: {}, sources: false };
const stand = (choice: Partial<LetterChoice> = {}) =>
  letterParagraphs(report, parts, { ...AS_IT_IS, ...choice }, speech);

describe('a letter', () => {
  it('goes by the order of action, with what can hurt and what falls short ticked', () => {
    const order = ['before', 'gain', 'ask'];
    const sections = parts.map(({ section }) => order.indexOf(section));
    expect(sections).toEqual([...sections].sort());
    for (const { section, ticked } of parts) if (section === 'before') expect(ticked).toBe(true);
    expect(parts[0]?.grade).toBe('can-hurt');
    expect(stand()[0]).toEqual({ as: 'heading', words: 'Before you go' });
  });

  it('is short: about ten sentences', () => {
    expect(countSentences(stand())).toBeGreaterThanOrEqual(6);
    expect(countSentences(stand())).toBeLessThanOrEqual(18);
  });

  it('says what happens, the arithmetic as one clause, and what to do; no grade, no command, and never safe', () => {
    const words = writeLetter(stand(), 'plain');
    expect(words).toMatch(/\(× 2\.4 pressure, 20 to 50\s°C\)\. A stove on a hose/);
    expect(words).not.toMatch(/\b(falls short|can hurt|costs you|safe|you must|should)\b/i);
    expect(parts[0]!.text).toMatch(/^[A-Z].*\.$/);
  });

  it('keeps each caution once, as long as a finding is ticked that it is of', () => {
    const cautions = (choice: Partial<LetterChoice>) =>
      stand(choice)
        .filter(({ as }) => as === 'caution')
        .map(({ words }) => words);
    const all = cautions({ ticks: Object.fromEntries(parts.map(({ id }) => [id, true])) });
    expect(new Set(all).size).toBe(all.length);
    expect(new Set(all)).toEqual(
      new Set(report.findings.filter(({ grade }) => grade !== 'holds-up').flatMap((one) => one.cautions)),
    );
    const [hurts] = parts;
    expect(cautions({ ticks: { [hurts!.id]: false } })).not.toContain(hurts!.cautions[0]);
  });

  it('takes the first line, what was written by hand, and the sources where they are asked for', () => {
    const [hurts] = parts;
    const words = writeLetter(
      stand({ first: ' Dear Joren, ', texts: { [hurts!.id]: 'I would leave the foil at home.' }, sources: true }),
      'plain',
    );
    expect(words.startsWith('Dear Joren,\n\nBefore you go\n\nI would leave the foil at home.')).toBe(true);
    expect(words).toContain('\nSources\n');
    expect(writeLetter(stand(), 'plain')).not.toContain('Sources');
  });

  it('says so where nothing is ticked, and asks for an answer only where it asks', () => {
    const none = Object.fromEntries(parts.map(({ id }) => [id, false]));
    expect(writeLetter(stand({ ticks: none }), 'plain')).toBe('Nothing I read here falls short.\n');
    const asks = parts.filter(({ section }) => section === 'ask');
    expect(asks.length).toBeGreaterThan(0);
    const one = { ...none, [asks[0]!.id]: true };
    expect(writeLetter(stand({ ticks: one }), 'plain')).toBe(
      `One question\n\n${asks[0]!.text}\n\nWrite back with the answer, and I will look again.\n`,
    );
  });

  it('is set as plain text, Markdown and HTML, in which nobody’s words are marks', () => {
    const first = 'Hi <b>& *all*';
    expect(writeLetter(stand({ first }), 'html')).toContain(
      '<p>Hi &lt;b&gt;&amp; *all*</p>\n<p><b>Before you go</b></p>',
    );
    expect(writeLetter(stand({ first }), 'markdown')).toContain('Hi \\<b\\>& \\*all\\*\n\n**Before you go**');
  });

  it('keeps its parts as long as the findings are the same', () => {
    expect(letterParts(checkList(LIST), speech)).toEqual(parts);
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
  });

  it('is written in the language of the report', () => {
    const spoken = { locale: 'de', language: german.language };
    const told = checkList(LIST, {}, [], spoken);
    const words = writeLetter(letterParagraphs(told, letterParts(told, spoken), AS_IT_IS, spoken), 'plain');
    expect(words).toMatch(/^Vor dem Aufbruch\n/);
    expect(words).not.toMatch(/\b(the|before|write back)\b/i);
  });
});
