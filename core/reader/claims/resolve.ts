import type { Claim } from './claim.js';

export interface Resolved {
  /** What is told of the things, the strongest first. */
  readonly won: readonly Claim[];
  readonly lost: readonly Claim[];
}

/**
 * Decides between claims: the strongest first, then the nearest, then the first of the text. A field of a thing is told once, and a
 * token serves one claim.
 */
export function resolve(claims: readonly Claim[]): Resolved {
  const ordered = claims.toSorted(
    (a, b) => b.strength - a.strength || a.distance - b.distance || startOf(a) - startOf(b) || a.of - b.of,
  );
  const told = new Set<string>();
  const served = new Set<number>();
  const won: Claim[] = [];
  const lost: Claim[] = [];
  for (const claim of ordered) {
    const place = `${claim.of} ${claim.field}`;
    if (told.has(place) || isServed(claim, served)) {
      lost.push(claim);
      continue;
    }
    told.add(place);
    for (const [first, last] of claim.tokens) for (let at = first; at <= last; at++) served.add(at);
    won.push(claim);
  }
  return { won, lost };
}

function startOf({ tokens }: Claim): number {
  return tokens[0]?.[0] ?? 0;
}

function isServed({ tokens }: Claim, served: ReadonlySet<number>): boolean {
  return tokens.some(([first, last]) => {
    for (let at = first; at <= last; at++) if (served.has(at)) return true;
    return false;
  });
}
