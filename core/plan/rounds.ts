import type { Grade, Range } from '../model/finding.js';

/** What the rounds of a meal are graded by; options of the check of the room for the meal. */
export const ROUNDS = {
  /** A shortfall under this share is inside what labels are off by: measured −2 to +7 % (`cp-label-tolerance`). */
  labelSlack: 0.02,
  /** Rounds from which it falls short: for one, and for several from the same pots (common practice). */
  failsAt: { one: 2, several: 3 },
  /** Minutes that the last may wait where each cooks in a pot of their own (common practice, no source). */
  waitsMin: 60,
} as const;

/** Fillings of a room that a need takes: one at least. Every round that is told of a meal or a drink comes from here. */
export function fillings(needMl: number, roomMl: number): number {
  return Math.max(1, Math.ceil(needMl / (roomMl * (1 + ROUNDS.labelSlack)) - 1e-9));
}

/** The rounds of those who share their pots: all of them hold up, the least fails. */
export function gradeOf(rounds: Range, people: number): Grade {
  const fails = people === 1 ? ROUNDS.failsAt.one : ROUNDS.failsAt.several;
  if (rounds.low >= fails) return 'falls-short';
  return rounds.high === 1 ? 'holds-up' : 'costs-you';
}
