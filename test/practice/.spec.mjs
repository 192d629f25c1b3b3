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
const md = fs.readFileSync('/work/shared/reference/lists.md', 'utf8');
const rx = /^- \*\*(\d+)\*\* `(.*?)`(?=\s*→| \/|,)(.*)$/gm;
let m;
for (const line of md.split('\n')) {
  const mm = line.match(/^- \*\*(\d+)\*\* (.*)$/);
  if (!mm) continue;
  const t = mm[2].match(/`([^`]*)`/)[1].replaceAll('⇥', '\t');
  const exp = mm[2].slice(mm[2].indexOf('→'));
  const r = readList(t);
  console.log(mm[1], '|', t, '|', exp);
  for (const i of r.items) {
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
  if (Object.keys(r.trip).length) console.log('     trip', JSON.stringify(r.trip));
  if (r.notes.length) console.log('     notes', r.notes.join());
}
