import { MISSING, valueOf, type Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import { readCarried } from '../../reading/items/away.js';
import type { ColumnFigures } from '../../reading/items/columns.js';
import type { Context } from '../../reading/items/context.js';
import { doubt } from '../../reading/items/doubt.js';
import type { Draft } from '../../reading/items/draft.js';
import type { Order } from '../../reading/items/size.js';
import type { Thing as OldThing } from '../../reading/items/things.js';
import { readFuelWords, shareTraits } from '../../reading/items/traits.js';
import type { Claim } from '../claims/claim.js';
import { columnClaims } from '../claims/columns.js';
import { RULES } from '../claims/index.js';
import { resolve, type Resolved } from '../claims/resolve.js';
import { Scene } from '../claims/scene.js';
import type { Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';

/** Hears how a row was decided, and which rules are left out. */
export interface Report {
  readonly without: ReadonlySet<string>;
  readonly decided?: (row: Row, things: readonly Thing[], resolved: Resolved) => void;
}

/** Fills in what a row tells of its things: every rule claims, and the resolver decides. */
export function decide(
  row: Row,
  drafts: readonly Draft[],
  parts: readonly OldThing[],
  context: Context,
  order: Order,
  columns: readonly (readonly [own: readonly Draft[], figures: ColumnFigures])[],
  report: Report,
): void {
  if (drafts.length === 0) return;
  const things = drafts.map((draft, id) => thingOf(row, draft, id, parts, context));
  const said = columns.flatMap(([own, figures]) =>
    columnClaims(
      own.map((draft) => things[drafts.indexOf(draft)]!),
      figures,
    ),
  );
  const scene = new Scene(row, things, context, said, order);
  const claims: Claim[] = [...said];
  for (const rule of RULES)
    if (!report.without.has(rule.id) && (rule.needs === undefined || row.may(rule.needs)))
      claims.push(...rule.find(scene));
  const resolved = resolve(claims);
  report.decided?.(row, things, resolved);
  for (const claim of resolved.won) {
    const draft = drafts[claim.of]!;
    Object.assign(draft, { [claim.field]: claim.given });
    if (claim.basis !== undefined) draft.massBasis = claim.basis;
  }
  shareTraits(row.stretch, drafts);
  for (const draft of drafts) {
    takeForPot(row, draft);
    doubt(row.stretch, draft);
    readCarried(row.stretch, draft, context);
  }
}

function thingOf(row: Row, draft: Draft, id: number, parts: readonly OldThing[], context: Context): Thing {
  const lid = parts.find((part) => part.partOf === draft.thing && draft.thing !== undefined);
  readFuelWords(row.stretch, draft, context);
  const fuel = draft.kind === 'fuel' ? valueOf(draft.fuelType) : undefined;
  draft.fuelType = draft.stoveType = draft.stoveForm = draft.gasMix = draft.gasShares = MISSING as Given<never>;
  return {
    id,
    kind: draft.kind,
    first: draft.noun[0],
    last: draft.noun[1],
    many: draft.thing?.term.many ?? (draft.thing === undefined ? false : undefined),
    noun: draft.thing?.term,
    because: draft.kindBecause,
    lid: lid === undefined ? undefined : { phrase: lid.term, denied: lid.denied },
    fuel,
  };
}

/** mL: a pan that holds less may be one to fry in. */
const LEAST_SAUCEPAN_ML = 800;

/** "2 pans 1.5 l": British for a saucepan; a pan to fry in is named by its width. */
function takeForPot(row: Row, draft: Draft): void {
  const [size] = draft.capacitiesMl;
  if (draft.kind !== 'pan' || size?.grounds !== 'stated' || size.value < LEAST_SAUCEPAN_ML) return;
  const [first, last] = draft.noun;
  if (row.opens('saucepans', first)?.last !== last) return;
  draft.kind = 'pot';
  draft.kindBecause = phrase`a pan of so many litres is taken for a pot`;
}
