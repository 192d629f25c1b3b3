// Reads the practice lists with the reader bundled from its source, in the shape that the judge takes.
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = path.dirname(fileURLToPath(import.meta.url));

/** The reader, or the next one, bundled in memory. */
export async function bundledReader(next = false) {
  const { outputFiles } = await build({
    stdin: {
      contents: next
        ? `import { LANGUAGES } from './data/words/index.js';
           import { createReader } from './reader/index.js';
           export const { readList } = createReader(LANGUAGES);`
        : `export { readList } from './reading/index.js';`,
      resolveDir: path.join(here, '../../core'),
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    platform: 'neutral',
    write: false,
    logLevel: 'silent',
  });
  return import('data:text/javascript;base64,' + Buffer.from(outputFiles[0].text).toString('base64'));
}

const valueOf = (given) => (given.grounds === 'missing' ? null : given.value);

/** One reading as the labels are written. */
export function prediction(reading) {
  const items = reading.items.map((item) => {
    const capacities = item.capacitiesMl.map((given) => valueOf(given));
    return {
      line: item.line,
      kind: item.kind,
      carried: item.carried,
      quantity: valueOf(item.quantity),
      capacity_ml: capacities.length === 0 ? null : capacities.length === 1 ? capacities[0] : capacities,
      mass_g: valueOf(item.massG),
      mass_basis: item.massBasis,
      fuel_mass_g: valueOf(item.fuelMassG),
      diameter_mm: valueOf(item.diameterMm),
      height_mm: valueOf(item.boxMm) === null ? valueOf(item.heightMm) : null,
      material: valueOf(item.material),
      stove_type: valueOf(item.stoveType),
      lid: valueOf(item.lid),
      bail: valueOf(item.bail),
    };
  });
  const { people, days, season } = reading.trip;
  const context = {};
  if (people) context.people = valueOf(people);
  if (days) context.days = valueOf(days);
  if (season) context.season = valueOf(season);
  if (season && valueOf(season) === 'winter') context.winter = true;
  return { items, context };
}

/** Every practice list with its label. */
export function practiceLists() {
  const texts = path.join(here, 'texts');
  return fs
    .readdirSync(texts)
    .sort()
    .map((name) => ({
      id: name.slice(0, 3),
      text: fs.readFileSync(path.join(texts, name), 'utf8'),
      label: JSON.parse(fs.readFileSync(path.join(here, 'labels', `${name.slice(0, 3)}.json`), 'utf8')),
    }));
}
