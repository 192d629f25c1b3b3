// Judges readings of the practice lists against their labels.
//
// How a prediction is judged
//  hit      matched one to one (line or line_alt, kind or kind_alt) with a label that counts: primary kind, carried, no mention,
//           not contested, no needs_brand_knowledge.
//  neutral  matched with a mention, contested or needs_brand_knowledge row, or with a utensil/other-cook row; a lid on a line whose
//           pot label has lid:true; anything predicted with carried:false; unmatched utensil/other-cook.
//  false    everything else of a primary kind: on a trap line without an item, on a carried:false row, a second time on a line
//           already matched, another kind than the label's, or on a line without any label.
//  missed   a label that counts without a hit.
// Fields are compared on hits only. A label field in contested_fields is skipped. quantity, capacity, mass, fuel mass and the
// dimensions: right / missed (stated, not given) / wrong (stated, another value) / over-read (not stated, a value given).
// material, stove_type, lid, bail: a value where the label has none is neutral (labelling rule 2).
export const PRIMARY = new Set([
  'pot',
  'mug',
  'kettle',
  'pan',
  'lid',
  'stove',
  'fuel',
  'windscreen',
  'bottle',
  'bladder',
  'bowl',
]);
const SECONDARY = new Set(['utensil', 'other-cook']);
const has = (v) => v !== undefined && v !== null;
const lower = (v) => String(v).toLowerCase().trim();
const near = (a, b, rel, abs) => Math.abs(a - b) <= Math.max(Math.abs(b) * rel, abs) + 1e-9;
const isCap = (a, b) => near(a, b, 0.01, 5);
const isMass = (a, b) => near(a, b, 0.01, 2);
const isDim = (a, b) => near(a, b, 0.01, 2);
const MATERIAL = {
  stainless: 'steel',
  'stainless steel': 'steel',
  'stainless-steel': 'steel',
  inox: 'steel',
  aluminum: 'aluminium',
  alu: 'aluminium',
  'hard-anodised aluminium': 'aluminium',
  'hard-anodized aluminum': 'aluminium',
  ti: 'titanium',
  'enamelled steel': 'enamel',
  'enameled steel': 'enamel',
};
const STOVE = {
  canister: 'gas',
  'gas canister': 'gas',
  'remote-canister': 'gas',
  butane: 'gas',
  propane: 'gas',
  spirit: 'alcohol',
  liquid: 'liquid-fuel',
  'liquid fuel': 'liquid-fuel',
  'white-gas': 'liquid-fuel',
  petrol: 'liquid-fuel',
  'multi-fuel': 'liquid-fuel',
  solid: 'solid-fuel',
  'solid fuel': 'solid-fuel',
  'wood-burning': 'wood',
};
const SEASON = { fall: 'autumn' };
const mapped = (m, v) => {
  const s = lower(v);
  return m[s] ?? s;
};

// ---------- values ----------
const arr = (v) => (Array.isArray(v) ? v.filter(has) : has(v) ? [v] : []);
function sameCapacity(p, l) {
  // p: prediction value, l: label
  const P = arr(p)
      .map(Number)
      .sort((a, b) => a - b),
    L = arr(l.capacity_ml)
      .map(Number)
      .sort((a, b) => a - b);
  if (Array.isArray(l.capacity_range_ml)) {
    const R = (Array.isArray(l.capacity_range_ml[0]) ? l.capacity_range_ml : [l.capacity_range_ml])
      .map((r) => [...r])
      .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
    if (P.length === R.length && P.every((x, i) => x >= R[i][0] - 5 && x <= R[i][1] + 5)) return true;
  }
  if (P.length === L.length) return P.every((x, i) => isCap(x, L[i]));
  if (L.length === 1 && P.length === l.quantity) return P.every((x) => isCap(x, L[0])); // [1000,1000] for 2 x 1000
  if (P.length === 1 && L.length > 1) return L.every((x) => isCap(P[0], x));
  return false;
}
function sameMass(p, l, pred) {
  const m = l.mass_g;
  if (isMass(p, m)) return true;
  const q = l.quantity;
  if (q > 1 && l.mass_basis === 'line' && pred.mass_basis === 'each') return isMass(p * q, m);
  if (q > 1 && l.mass_basis === 'each' && pred.mass_basis === 'line') return isMass(p, m * q);
  return false;
}
function sameQuantity(p, l) {
  if (Array.isArray(l.quantity_range)) {
    const [a, b] = l.quantity_range;
    return Array.isArray(p) ? p[0] === a && p[p.length - 1] === b : p >= a && p <= b;
  }
  return Number(p) === Number(l.quantity);
}
// one field: returns 'right' | 'missed' | 'wrong' | 'over' | 'silent' | 'skip'
export function judge(field, p, l) {
  if ((l.contested_fields ?? []).includes(field)) return 'skip';
  const v = p[field],
    given = Array.isArray(v) ? v.length > 0 : has(v) && v !== '';
  if (field === 'quantity') {
    if (l.quantity_by_trip) {
      const values = Object.values(l.quantity_by_trip);
      return !given ||
        values.includes(Number(v)) ||
        (typeof v === 'object' && JSON.stringify(v) === JSON.stringify(l.quantity_by_trip))
        ? 'skip'
        : 'wrong';
    }
    if (Array.isArray(l.quantity_range)) return !given ? 'skip' : sameQuantity(v, l) ? 'right' : 'wrong';
    if (!has(l.quantity)) return given ? 'over' : 'silent';
    return !given ? 'missed' : sameQuantity(v, l) ? 'right' : 'wrong';
  }
  if (field === 'diameter_mm' || field === 'height_mm') {
    if (has(l.size_mm)) return !given || isDim(Number(v), l.size_mm) ? 'skip' : 'over';
  }
  if (['capacity_ml', 'mass_g', 'fuel_mass_g', 'diameter_mm', 'height_mm'].includes(field)) {
    const range =
      field === 'capacity_ml' ? l.capacity_range_ml : field === 'diameter_mm' ? l.diameter_range_mm : undefined;
    if (!has(l[field]) && has(range))
      return !given ? 'missed' : arr(v).every((x) => x >= range[0] - 5 && x <= range[1] + 5) ? 'right' : 'wrong';
    if (!has(l[field])) {
      if (!given) return 'silent';
      const i = l.inferred?.[field];
      if (has(i)) {
        const ok =
          field === 'capacity_ml'
            ? sameCapacity(v, { ...l, capacity_ml: i })
            : field === 'mass_g'
              ? sameMass(Number(v), { ...l, mass_g: i }, p)
              : isMass(Number(v), i);
        if (ok) return 'skip';
      }
      return 'over';
    }
    if (!given) return 'missed';
    if (field === 'capacity_ml') return sameCapacity(v, l) ? 'right' : 'wrong';
    if (field === 'mass_g') return sameMass(Number(v), l, p) ? 'right' : 'wrong';
    if (field === 'fuel_mass_g') return isMass(Number(v), l[field]) ? 'right' : 'wrong';
    return isDim(Number(v), l[field]) ? 'right' : 'wrong';
  }
  if (field === 'material' || field === 'stove_type') {
    if (!has(l[field])) return 'skip';
    const m = field === 'material' ? MATERIAL : STOVE;
    return !given ? 'missed' : mapped(m, v) === mapped(m, l[field]) ? 'right' : 'wrong';
  }
  if (field === 'lid' || field === 'bail') {
    if (!has(l[field])) return 'skip';
    return !given ? 'missed' : Boolean(v) === Boolean(l[field]) ? 'right' : 'wrong';
  }
  return 'skip';
}
const FIELDS = [
  'quantity',
  'capacity_ml',
  'mass_g',
  'fuel_mass_g',
  'diameter_mm',
  'height_mm',
  'material',
  'stove_type',
  'lid',
  'bail',
];
const CONTEXT = ['people', 'days', 'season', 'winter'];
function judgeContext(field, p, l) {
  if ((l.contested ?? []).includes(field)) return 'skip';
  const v = p[field],
    given = has(v) && v !== '' && !(field === 'winter' && v === false);
  if (field === 'people' && Array.isArray(l.people_range))
    return !given ? 'missed' : v >= l.people_range[0] && v <= l.people_range[1] ? 'right' : 'wrong';
  if (!has(l[field])) return given ? 'over' : 'silent';
  if (!given) return 'missed';
  if (field === 'season') return mapped(SEASON, v) === mapped(SEASON, l[field]) ? 'right' : 'wrong';
  if (field === 'winter') return v === l[field] ? 'right' : 'wrong';
  return near(Number(v), l[field], field === 'days' ? 0.03 : 0, 0) ? 'right' : 'wrong';
}

// ---------- matching ----------
function status(l) {
  // what a label row is for the count
  if (l.contested) return 'contested';
  if (l.carried === false) return 'away';
  if (l.mention) return 'mention';
  if (l.needs_brand_knowledge) return 'brand';
  return PRIMARY.has(l.kind) ? 'counts' : 'secondary';
}
function weight(p, l, slack) {
  const lines = [l.line, ...(l.line_alt ?? [])],
    d = Math.min(...lines.map((n) => Math.abs(n - p.line)));
  if (!(d <= slack)) return 0;
  let w = p.kind === l.kind ? 100 : (l.kind_alt ?? []).includes(p.kind) ? 80 : 0;
  if (!w) return 0;
  w += { counts: 20, contested: 10, brand: 10, secondary: 8, mention: 8, away: 6 }[status(l)];
  w += p.line === l.line ? 5 : d === 0 ? 3 : -3 * d;
  for (const f of FIELDS) {
    const j = judge(f, p, { ...l, contested_fields: [] }),
      k = f === 'capacity_ml' || f === 'mass_g' ? 8 : f === 'quantity' ? 4 : 3;
    if (j === 'right') w += k;
    else if (j === 'wrong') w -= k / 2;
    else if (j === 'over') w -= 1;
  }
  return Math.max(w, 1);
}
// maximum-weight one-to-one assignment (Hungarian algorithm on a square cost matrix)
function assign(P, L, wfun) {
  const n = Math.max(P.length, L.length);
  if (!P.length || !L.length) return [];
  const W = P.map((p) => L.map((l) => wfun(p, l))),
    big = 1 + Math.max(0, ...W.flat());
  const cost = (i, j) => big - (W[i]?.[j] ?? 0);
  const u = Array(n + 1).fill(0),
    v = Array(n + 1).fill(0),
    col = Array(n + 1).fill(0),
    way = Array(n + 1).fill(0);
  for (let i = 1; i <= n; i++) {
    col[0] = i;
    let j0 = 0;
    const min = Array(n + 1).fill(Infinity),
      used = Array(n + 1).fill(false);
    do {
      used[j0] = true;
      const i0 = col[j0];
      let delta = Infinity,
        j1 = 0;
      for (let j = 1; j <= n; j++)
        if (!used[j]) {
          const c = cost(i0 - 1, j - 1) - u[i0] - v[j];
          if (c < min[j]) {
            min[j] = c;
            way[j] = j0;
          }
          if (min[j] < delta) {
            delta = min[j];
            j1 = j;
          }
        }
      for (let j = 0; j <= n; j++)
        if (used[j]) {
          u[col[j]] += delta;
          v[j] -= delta;
        } else min[j] -= delta;
      j0 = j1;
    } while (col[j0] !== 0);
    do {
      const j1 = way[j0];
      col[j0] = col[j1];
      j0 = j1;
    } while (j0);
  }
  const out = [];
  for (let j = 1; j <= n; j++) {
    const i = col[j] - 1;
    if (i < P.length && j - 1 < L.length && W[i][j - 1] > 0) out.push([i, j - 1]);
  }
  return out;
}

// ---------- one list ----------
export function scoreList(label, pred, { slack = 0 } = {}) {
  const L = label.items,
    all = (pred.items ?? []).map((p) => ({ ...p, kind: lower(p.kind ?? '').replace('_', '-'), line: Number(p.line) }));
  const carried = all.filter((p) => p.carried !== false),
    aside = all.filter((p) => p.carried === false);
  const r = {
    id: label.id,
    labels: L.filter((l) => status(l) === 'counts').length,
    hits: [],
    missed: [],
    falses: [],
    neutral: 0,
    mentions: 0,
    skipped: 0,
    away: L.filter((l) => status(l) === 'away' && PRIMARY.has(l.kind)).length,
    asideRight: 0,
    asideWrong: [],
    unknownKinds: [],
    fields: {},
    context: {},
  };
  const takenP = new Set(),
    takenL = new Set();
  for (const [i, j] of assign(carried, L, (p, l) => weight(p, l, slack))) {
    const p = carried[i],
      l = L[j],
      s = status(l);
    takenP.add(p);
    takenL.add(l);
    if (s === 'counts') r.hits.push({ p, l });
    else if (s === 'away') {
      if (PRIMARY.has(p.kind)) r.falses.push({ p, why: 'not carried', l });
    } else if (s === 'mention') r.mentions++;
    else if (s === 'secondary') r.neutral++;
    else r.skipped++;
  }
  const awayLeft = L.filter((l) => status(l) === 'away' && !takenL.has(l));
  const asideTaken = new Set();
  for (const [i, j] of assign(aside, awayLeft, (p, l) => weight(p, l, slack))) {
    asideTaken.add(aside[i]);
    if (PRIMARY.has(awayLeft[j].kind)) r.asideRight++;
  }
  const missed = L.filter((l) => status(l) === 'counts' && !takenL.has(l));
  const asideRest = aside.filter((p) => !asideTaken.has(p));
  for (const [i, j] of assign(asideRest, missed, (p, l) => weight(p, l, slack))) r.asideWrong.push(missed[j]);
  r.missed = missed;
  const onLine = (n) => L.filter((l) => l.line === n || (l.line_alt ?? []).includes(n));
  const traps = new Map(label.traps.map((t) => [t.line, t.why]));
  for (const p of carried) {
    if (takenP.has(p)) continue;
    if (!PRIMARY.has(p.kind)) {
      if (SECONDARY.has(p.kind)) r.neutral++;
      else r.unknownKinds.push(p.kind);
      continue;
    }
    const here = onLine(p.line);
    if (p.kind === 'lid' && here.some((l) => l.lid === true)) {
      r.neutral++;
      continue;
    }
    const why = !here.length
      ? traps.has(p.line)
        ? `trap: ${traps.get(p.line)}`
        : 'no label on this line'
      : here.some((l) => l.kind === p.kind || (l.kind_alt ?? []).includes(p.kind))
        ? 'counted twice'
        : missed.some((l) => here.includes(l))
          ? `other kind (label: ${missed
              .filter((l) => here.includes(l))
              .map((l) => l.kind)
              .join(', ')})`
          : 'no such item on this line';
    r.falses.push({ p, why });
  }
  for (const f of FIELDS) r.fields[f] = { right: 0, missed: 0, wrong: 0, over: 0, silent: 0, skip: 0 };
  r.details = [];
  for (const { p, l } of r.hits)
    for (const f of FIELDS) {
      const j = judge(f, p, l);
      r.fields[f][j]++;
      if (j === 'missed' || j === 'wrong' || j === 'over')
        r.details.push({
          line: l.line,
          kind: l.kind,
          field: f,
          is: j,
          label: f === 'quantity' && l.quantity_by_trip ? l.quantity_by_trip : (l[f] ?? null),
          pred: p[f] ?? null,
        });
    }
  for (const f of CONTEXT) {
    const j = judgeContext(f, pred.context ?? {}, label.context ?? {});
    r.context[f] = { right: 0, missed: 0, wrong: 0, over: 0, silent: 0, skip: 0, [j]: 1 };
    if (j === 'missed' || j === 'wrong' || j === 'over')
      r.details.push({
        line: 0,
        kind: 'context',
        field: f,
        is: j,
        label: label.context?.[f] ?? null,
        pred: pred.context?.[f] ?? null,
      });
  }
  return r;
}

// ---------- all lists ----------
/** Adds up the results of some lists. */
export function sum(lists) {
  const add = (a, b) => {
    for (const k in b) a[k] = (a[k] ?? 0) + b[k];
    return a;
  };
  const total = {
    lists: lists.length,
    labels: 0,
    hits: 0,
    missed: 0,
    falses: 0,
    away: 0,
    asideRight: 0,
    fields: {},
    context: {},
  };
  for (const r of lists) {
    total.labels += r.labels;
    total.hits += r.hits.length;
    total.missed += r.missed.length;
    total.falses += r.falses.length;
    total.away += r.away;
    total.asideRight += r.asideRight;
    for (const f of FIELDS) total.fields[f] = add(total.fields[f] ?? {}, r.fields[f]);
    for (const f of CONTEXT) total.context[f] = add(total.context[f] ?? {}, r.context[f]);
  }
  return total;
}

/** Share of the labels that were found, and of the readings that are right. */
export const recall = (total) => (total.labels ? total.hits / total.labels : 1);
export const precision = (total) => (total.hits + total.falses ? total.hits / (total.hits + total.falses) : 1);

/** Over some fields or hints: right of those stated, and read where nothing is stated. */
export function shares(counts) {
  const all = Object.values(counts).reduce(
    (a, c) => ({
      right: a.right + c.right,
      stated: a.stated + c.right + c.missed + c.wrong,
      over: a.over + c.over,
      unstated: a.unstated + c.over + c.silent,
    }),
    { right: 0, stated: 0, over: 0, unstated: 0 },
  );
  return { right: all.stated ? all.right / all.stated : 1, over: all.unstated ? all.over / all.unstated : 0 };
}
