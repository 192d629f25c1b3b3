import { readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { CHECKS } from '../../../core/checks/index.js';
import { SOURCES } from '../../../core/data/sources/index.js';
import { LOOK_FOR_MESSAGES } from '../../../core/look-for.js';
import { CLAUSES, HEADLINE_MESSAGES, WANTED } from '../../../core/report/headline-words.js';
import { PLAN_MESSAGES } from '../../../core/plan/messages.js';
import { LETTER_MESSAGES } from '../../../core/report/letter-words.js';
import { REPORT_MESSAGES } from '../../../core/report/messages.js';
import { filesIn, ROOT } from '../../../scripts/files.mjs';

/** The patterns that `phrase` marks in a source: the first value is {0}. */
function phrasesIn(source: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag) && node.tag.text === 'phrase') {
      const { template } = node;
      found.push(
        ts.isNoSubstitutionTemplateLiteral(template)
          ? template.text
          : template.head.text + template.templateSpans.map(({ literal }, i) => `{${i}}${literal.text}`).join(''),
      );
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('source.ts', source, ts.ScriptTarget.Latest, true));
  return found;
}

/** Every English sentence that the core says, each with where it comes from. */
export function sentencesOfCore(): ReadonlyMap<string, string> {
  const core = path.join(ROOT, 'core');
  const told = [
    ...CHECKS.flatMap(({ id, title, messages }) =>
      [title, ...Object.values(messages)].map((english) => [english, `core/checks/${id}.ts`] as const),
    ),
    ...Object.values(PLAN_MESSAGES).map((english) => [english, 'core/plan/messages.ts'] as const),
    ...Object.values(LOOK_FOR_MESSAGES).map((english) => [english, 'core/look-for.ts'] as const),
    ...Object.values(REPORT_MESSAGES).map((english) => [english, 'core/report/messages.ts'] as const),
    ...Object.values(LETTER_MESSAGES).map((english) => [english, 'core/report/letter-words.ts'] as const),
    ...Object.values<string>({ ...HEADLINE_MESSAGES, ...WANTED, ...CLAUSES }).map(
      (english) => [english.replace(/^=/, ''), 'core/report/headline-words.ts'] as const,
    ),
    ...SOURCES.flatMap(({ id, grade, title, note }) =>
      [...(grade === 'common-practice' ? [title] : []), ...(note === undefined ? [] : [note])].map(
        (english) => [english, `source ${id}`] as const,
      ),
    ),
    ...filesIn(core)
      .filter((file) => file.endsWith('.ts'))
      .flatMap((file) =>
        phrasesIn(readFileSync(path.join(core, file), 'utf8')).map((english) => [english, `core/${file}`] as const),
      ),
  ];
  const sentences = new Map<string, string>();
  for (const [english, place] of told) if (!sentences.has(english)) sentences.set(english, place);
  return sentences;
}
