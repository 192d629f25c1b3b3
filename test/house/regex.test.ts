import { readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesIn, ROOT } from '../../scripts/files.mjs';
import { faultOf } from './regex.js';

const CORE = path.join(ROOT, 'core');

/** Every regular expression that is written out in a file; one put together while running is told by its call. */
function expressionsIn(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(path.join(CORE, file), 'utf8'), ts.ScriptTarget.ES2022, true);
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node)) found.push(node.text);
    if ((ts.isNewExpression(node) || ts.isCallExpression(node)) && node.expression.getText(source) === 'RegExp')
      found.push(node.getText(source));
    ts.forEachChild(node, look);
  };
  look(source);
  return found;
}

const expressions = filesIn(CORE)
  .filter((file) => file.endsWith('.ts'))
  .flatMap((file) => expressionsIn(file).map((expression) => [file, expression] as const));

describe('no regular expression of the core can blow up', () => {
  it('finds those that there are', () => {
    expect(expressions.length).toBeGreaterThan(3);
  });

  it.each(expressions)('%s: %s', (_file, expression) => {
    expect(expression.startsWith('/') ? faultOf(literal(expression)) : 'put together while running').toBe('');
  });

  it.each([
    ['(a+)+', 'nested'],
    ['(?:\\s*\\w)*x', 'nested'],
    ['((ab*)c)+', 'nested'],
    ['(a|b*)*', 'nested'],
    ['\\d+\\d*', 'adjacent'],
    ['\\s*\\s+$', 'adjacent'],
    ['\\w+(?:-)?\\w+', 'adjacent'],
    ['(x\\d{2,})(\\d*)', 'adjacent'],
    ['(?:a*b?){3}', 'adjacent'],
    ['a+b+', 'adjacent'],
  ])('%s is refused as %s', (pattern, fault) => {
    expect(faultOf(pattern)).toContain(fault);
  });

  it.each(['^[-*\\s]*$', '\\{(\\w+)(#)?(?::([^|]*))?\\}', '[(+*]+\\)', 'a+-b+', '(?:ab){2,5}c*', 'a{3}b*'])(
    '%s passes',
    (pattern) => {
      expect(faultOf(pattern)).toBe('');
    },
  );
});

function literal(expression: string): string {
  return expression.slice(1, expression.lastIndexOf('/'));
}
