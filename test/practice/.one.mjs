import fs from 'node:fs';
import { bundledReader } from './predict.mjs';
const { readList } = await bundledReader();
const v = (g) =>
  g.grounds === 'missing'
    ? undefined
    : (g.grounds === 'assumed' ? '~' : '') +
      (typeof g.value === 'number'
        ? Math.round(g.value * 10) / 10
        : Array.isArray(g.value)
          ? g.value.join('×')
          : g.value) +
      (g.most ? '–' + Math.round(g.most) : '');
const arg = process.argv[2];
const t = /^\d{3}$/.test(arg)
  ? fs.readFileSync(
      new URL(
        './texts/' + fs.readdirSync(new URL('./texts', import.meta.url)).find((f) => f.startsWith(arg)),
        import.meta.url,
      ),
      'utf8',
    )
  : arg.replaceAll('\\n', '\n').replaceAll('\\t', '\t');
const r = readList(t);
const L = t.split('\n');
for (const l of r.lines) {
  if (l.use === 'blank') continue;
  console.log(
    l.number + ' [' + l.use + (l.because ? ': ' + l.because : '') + '] ' + (L[l.number - 1] ?? '').slice(0, 160),
  );
  for (const i of r.items.filter((i) => i.line === l.number)) {
    const o = {};
    for (const [k, g] of Object.entries(i)) {
      if (k === 'capacitiesMl') {
        if (g.length) o.cap = g.map(v).join('+');
      } else if (g && g.grounds) {
        const x = v(g);
        if (x !== undefined) o[k] = x;
      } else if (
        ['carried', 'perPerson', 'massBasis', 'onlyIn', 'role', 'notCarriedBecause', 'kindBecause'].includes(k) &&
        g !== undefined &&
        !(k === 'carried' && g) &&
        !(k === 'perPerson' && !g)
      )
        o[k] = g;
    }
    console.log('     =>', i.kind, JSON.stringify(t.slice(...i.span)), JSON.stringify(o));
  }
}
console.log(JSON.stringify(r.trip), r.languages, r.units, r.notes);
