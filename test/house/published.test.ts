import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sourceById, SOURCES } from '../../core/data/sources/index.js';
import type { PrintedTable } from '../published/figure.js';

const PUBLISHED = new URL('../published/', import.meta.url);
const files = readdirSync(new URL('figures/', PUBLISHED)).filter((name) => name.endsWith('.ts'));
const tests = readdirSync(PUBLISHED)
  .filter((name) => name.endsWith('.test.ts'))
  .map((name) => readFileSync(new URL(name, PUBLISHED), 'utf8'));

const isTable = (value: unknown): value is PrintedTable =>
  typeof value === 'object' &&
  value !== null &&
  'rows' in value &&
  'printed' in ((value as PrintedTable).rows[0] ?? {});

const tables: { readonly file: string; readonly name: string; readonly table: PrintedTable }[] = [];
for (const file of files) {
  const module = (await import(new URL(`figures/${file}`, PUBLISHED).href)) as Record<string, unknown>;
  for (const [name, value] of Object.entries(module)) if (isTable(value)) tables.push({ file, name, table: value });
}

describe('published figures', () => {
  it('are 60 or more from 15 sources or more', () => {
    const figures = tables.reduce((sum, { table }) => sum + table.rows.length, 0);
    const sources = new Set(tables.map(({ table }) => table.source));
    expect(figures).toBeGreaterThanOrEqual(60);
    expect(sources.size).toBeGreaterThanOrEqual(15);
  });

  it.each(tables)('$file $name names an entry of the bibliography that is published', ({ table }) => {
    const source = sourceById(table.source);
    expect(source.grade).toBe('published');
    if (table.year !== undefined && source.year !== undefined) expect(table.year).toBe(source.year);
  });

  it.each(tables)('$file $name is compared by a test', ({ file, name }) => {
    const module = `./figures/${file.replace('.ts', '.js')}`;
    const used = tests.some(
      (text) => text.includes(module) && new RegExp(`compare\\(\\s*(\\{ \\.\\.\\.)?(\\w+\\.)?${name}\\b`).test(text),
    );
    expect(used).toBe(true);
  });

  it.each(tables)('$file $name gives a reason for a tolerance wider than the print', ({ table }) => {
    const tolerances = [table.tolerance, ...table.rows.map((row) => row.tolerance)].filter(
      (tolerance) => tolerance !== undefined,
    );
    for (const tolerance of tolerances) expect(tolerance.because.length).toBeGreaterThan(20);
  });
});

describe('the bibliography', () => {
  it('has every id once, as a slug', () => {
    const ids = SOURCES.map((source) => source.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9-]+$/);
  });

  it.each(SOURCES)('$id: common practice is told apart by its id, and a published entry says whose it is', (source) => {
    if (source.grade === 'published') expect(source.by).toBeTruthy();
    else expect(source.by).toBeUndefined();
    expect(source.id.startsWith('cp-')).toBe(source.grade === 'common-practice');
  });

  it('refuses an id it does not have', () => {
    expect(() => sourceById('no-such-source')).toThrow(/No source has the id "no-such-source"/);
  });
});
