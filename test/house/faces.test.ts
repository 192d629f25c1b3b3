import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { filesIn, ROOT } from '../../scripts/files.mjs';

it('every face of the extension shows the same element in the same look', () => {
  const folder = path.join(ROOT, 'extension');
  const pages = filesIn(folder).filter((file) => file.endsWith('.html'));
  expect(pages.length).toBeGreaterThanOrEqual(3);
  for (const page of pages)
    expect(readFileSync(path.join(folder, page), 'utf8'), page).toContain('<brimwise-check look="notebook">');
});
