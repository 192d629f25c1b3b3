import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { ROOT } from '../../../scripts/files.mjs';

/** Every text of the interface in English, by its path in the source ("WORDS.potForm.lid"), as a digest of how it is written there. */
export function englishEntries(): Record<string, string> {
  const source = readFileSync(path.join(ROOT, 'widget', 'messages', 'en.ts'), 'utf8');
  const file = ts.createSourceFile('en.ts', source, ts.ScriptTarget.Latest, true);
  const entries: Record<string, string> = {};
  const visit = (name: string, value: ts.Expression): void => {
    if (!ts.isObjectLiteralExpression(value)) {
      const text = value.getText().replace(/\s+/g, ' ');
      entries[name] = createHash('sha256').update(text).digest('hex').slice(0, 8);
      return;
    }
    for (const property of value.properties)
      if (ts.isPropertyAssignment(property))
        visit(`${name}.${property.name.getText().replaceAll("'", '')}`, property.initializer);
  };
  for (const statement of file.statements)
    if (ts.isVariableStatement(statement))
      for (const { name, initializer } of statement.declarationList.declarations)
        if (initializer !== undefined) visit(name.getText(), initializer);
  return entries;
}
