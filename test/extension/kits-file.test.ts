import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NoJson, parseJsonWithLines } from '../../extension/json-lines.js';
import {
  DamagedFile,
  kitsFileJsonSchema,
  LaterFile,
  readKitsFile,
  textOfBytes,
  writeKitsFile,
} from '../../extension/kits-file.js';
import { freeName, withKits, type Kit } from '../../extension/kit-list.js';
import { ROOT } from '../../scripts/files.mjs';
import { EMPTY_DRAFT } from '../../widget/draft.js';

const KITS: readonly Kit[] = [
  { name: 'Varn Hollow', draft: { ...EMPTY_DRAFT, text: 'Pot 1.3 L\r\n\n“Mug” 450 mL\n', trip: { people: '2' } } },
  {
    name: 'one pot',
    draft: { ...EMPTY_DRAFT, entrance: 'pot', pot: { capacity: '750 ml', bail: true }, units: 'us' },
  },
  {
    name: 'corrected',
    draft: {
      ...EMPTY_DRAFT,
      text: 'Pot',
      corrections: [{ quote: 'Pot', occurrence: 0, item: 0, field: 'massG', value: '210 g' }],
    },
  },
];

const bytesOf = (text: string) => [...text].flatMap((sign) => [sign.charCodeAt(0) & 255, sign.charCodeAt(0) >> 8]);

const refusal = (text: string): unknown => {
  try {
    return readKitsFile(text);
  } catch (error) {
    return error;
  }
};

describe('the file of saved kits', () => {
  it('gives back every kit as it was saved', () => {
    expect(readKitsFile(writeKitsFile(KITS))).toEqual(KITS);
  });

  it('can be read by a person: a line of the list on each line', () => {
    const lines = writeKitsFile(KITS)
      .split('\n')
      .map((line) => line.trim());
    expect(lines).toContain('"name": "Varn Hollow",');
    expect(lines).toContain('"“Mug” 450 mL",');
  });

  it('can be written by a person: a name and lines are enough', () => {
    const [kit] = readKitsFile(
      '\uFEFF{"brimwise": "kits", "version": 1, "kits": [{"name": "a", "lines": ["Pot", "Lid"]}]}',
    );
    expect(kit).toEqual({ name: 'a', draft: { ...EMPTY_DRAFT, text: 'Pot\nLid' } });
  });

  it.each([
    ['a value of the wrong kind', '"people": "2"', '"people": ["2"]', 'kits.0.trip.people'],
    ['a word that is none of ours', '"entrance": "pot"', '"entrance": "pan"', 'kits.1.entrance'],
    ['a name that is not known', '"bail": true', '"bail": true }, "weight": { "a": 1', 'kits.1.weight'],
    ['a correction of no field', '"field": "massG"', '"field": "colour"', 'kits.2.corrections.0.field'],
    ['no version of ours', '"version": 1', '"version": 0', 'version'],
    ['another file', '"brimwise": "kits"', '"brimwise": "pots"', 'brimwise'],
  ])('is refused for %s, with the line that is wrong', (_, right, wrong, place) => {
    const file = writeKitsFile(KITS);
    expect(file).toContain(right);
    const error = refusal(file.replace(right, wrong)) as DamagedFile;
    expect(error).toBeInstanceOf(DamagedFile);
    expect([error.place, error.line]).toEqual([place, file.slice(0, file.indexOf(right)).split('\n').length]);
  });

  it('of a later version is named so', () => {
    expect(refusal(writeKitsFile(KITS).replace('"version": 1', '"version": 2'))).toBeInstanceOf(LaterFile);
  });

  it('keeps notes, tags and the day', () => {
    const kit = { ...KITS[0]!, notes: 'for the winter course', tags: ['winter', 'group'], saved: '2026-01-31' };
    expect(readKitsFile(writeKitsFile([kit]))).toEqual([kit]);
  });

  it.each([
    ['UTF-16, as its first sign says', (text: string) => [0xff, 0xfe, ...bytesOf(text)]],
    ['UTF-16 that says nothing', bytesOf],
    ['UTF-8', (text: string) => [...new TextEncoder().encode(text)]],
  ])('is read in %s', (_, bytes) => {
    const text = writeKitsFile(KITS);
    expect(readKitsFile(textOfBytes(new Uint8Array(bytes(text))))).toEqual(KITS);
  });

  it('is read in time that grows with its length, 100,000 kits with one name too', () => {
    const file = (count: number) =>
      JSON.stringify({
        brimwise: 'kits',
        version: 1,
        kits: Array.from({ length: count }, (_, at) => ({ name: 'kit', lines: [`pot ${at + 1} L`] })),
      });
    const timed = (count: number) => {
      const text = file(count);
      const from = performance.now();
      const { kits } = withKits([], readKitsFile(text));
      expect(new Set(kits.map(({ name }) => name)).size).toBe(count);
      return performance.now() - from;
    };
    timed(10_000);
    // Ten times the kits, with room for what a busy machine adds; by the square it would be a hundred.
    expect(timed(100_000)).toBeLessThan(40 * Math.max(20, timed(10_000)));
  });

  it('is refused where it is cut off or not JSON, with the line', () => {
    const file = writeKitsFile(KITS);
    const cut = file.slice(0, file.indexOf('"corrections"'));
    expect(refusal(cut)).toEqual(new NoJson(cut.split('\n').length));
    expect(refusal('')).toEqual(new NoJson(1));
    expect(refusal('{\n"brimwise": "kits",\noops')).toEqual(new NoJson(3));
  });

  it('is refused and stops nothing where it is made to exhaust its reader', () => {
    expect(refusal('['.repeat(1e6))).toBeInstanceOf(NoJson);
    expect(refusal('{"__proto__": {"polluted": 1}}')).toBeInstanceOf(DamagedFile);
    expect({}).not.toHaveProperty('polluted');
  });

  it('has its schema in every build', () => {
    for (const browser of ['chrome', 'firefox']) {
      const built = JSON.parse(readFileSync(path.join(ROOT, 'dist', browser, 'kits.schema.json'), 'utf8')) as unknown;
      expect(built).toEqual(JSON.parse(JSON.stringify(kitsFileJsonSchema())));
      expect(built).toHaveProperty('properties.kits.items.properties.lines');
    }
  });
});

describe('JSON read with its lines', () => {
  it('is what JSON.parse reads, however it is set', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), fc.constantFrom(0, 1, 2), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        expect(parseJsonWithLines(text).value).toEqual(JSON.parse(text));
      }),
    );
  });

  it('is refused where JSON.parse refuses it, and nowhere else', () => {
    const broken = fc
      .tuple(
        fc.jsonValue({ maxDepth: 3 }),
        fc.nat(),
        fc.constantFrom('', ',', '}', ']', '"', '\n', ' ', '1', 'e', '\\'),
      )
      .map(([value, at, mark]) => {
        const text = JSON.stringify(value, null, 1);
        const cut = at % (text.length + 1);
        return text.slice(0, cut) + mark + text.slice(cut + 1);
      });
    const refuses = (read: () => unknown) => {
      try {
        read();
        return false;
      } catch {
        return true;
      }
    };
    fc.assert(
      fc.property(broken, (text) => {
        expect(refuses(() => parseJsonWithLines(text))).toBe(refuses(() => JSON.parse(text)));
      }),
      { numRuns: 2000 },
    );
  });
});

describe('kits that are imported', () => {
  it('take no name that another has, and are not added twice', () => {
    const other = { name: 'one pot', draft: { ...EMPTY_DRAFT, text: 'Pot' } };
    expect(withKits(KITS, KITS)).toEqual({ kits: KITS, same: KITS.length });
    expect(withKits(KITS, [other]).kits.map(({ name }) => name)).toEqual([
      ...KITS.map(({ name }) => name),
      'one pot 2',
    ]);
    expect(freeName([...KITS, { ...other, name: 'one pot 2' }], 'one pot')).toBe('one pot 3');
  });
});
