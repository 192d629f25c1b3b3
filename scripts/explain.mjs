/** npm run explain "2 mugs 80 g each": tokens, phrases, figures, things, and the claims that won and lost, line by line. */
import { importReader } from './reader.mjs';

const { createReader, LANGUAGES, tell } = await importReader();
const text = process.argv.slice(2).join(' ').replaceAll('\\n', '\n');

const words = (row, first, last) => row.text.slice(...row.span(first, last));
const value = (given) =>
  Array.isArray(given)
    ? given.map(value).join(' + ')
    : typeof given !== 'object'
      ? String(given)
      : given.grounds === 'missing'
        ? '?'
        : `${given.grounds === 'assumed' ? '~' : ''}${given.value}`;

function decided(row, things, { won, lost }) {
  const { tokens } = row;
  console.log(`\n${row.source.cells.map(({ start, end }) => row.text.slice(start, end)).join(' | ')}`);
  const parts = Array.from({ length: tokens.n }, (_none, at) => {
    const parted = ['', ' ,', ' ;'][row.breakAt(at)];
    return `${parted}${at}:${tokens.fold(at) || words(row, at, at)}`;
  });
  console.log(`  tokens   ${parts.join(' ')}`);
  const phrases = row.phrases.map(({ role, value, first, last }) => `${words(row, first, last)} = ${role} ${value}`);
  console.log(`  phrases  ${phrases.join('; ')}`);
  const figures = row.figures.map(
    ({ values, unit, first, last }) => `${words(row, first, last)} = ${values} ${unit.id}`,
  );
  console.log(`  figures  ${[...figures, ...row.bare.map(({ value }) => `${value}`)].join('; ') || 'none'}`);
  for (const thing of things) console.log(`  thing ${thing.id}  ${thing.kind}: ${words(row, thing.first, thing.last)}`);
  for (const [name, claims] of Object.entries({ won, lost }))
    for (const { of, field, given, rule, strength, distance } of claims)
      console.log(
        `  ${name.padEnd(7)}  ${of} ${field} ${value(given)}  (${rule}, strength ${strength}, ${distance} tokens away)`,
      );
}

const { items, trip } = createReader(LANGUAGES, { without: new Set(), decided }).readList(text);
console.log(`\n${tell(items) || 'nothing'}`);
for (const [hint, given] of Object.entries(trip)) console.log(`${hint}: ${value(given)}`);
