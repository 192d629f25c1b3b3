import { expect, it } from 'vitest';

/** A table as it stands in print: in its own units, figures as strings. */
export interface PrintedTable {
  /** Entry of `core/data/sources`. */
  readonly source: string;
  readonly title: string;
  readonly year?: number;
  /** Table, page or clause. */
  readonly place: string;
  /** What the figures are. */
  readonly quantity: string;
  readonly unit: string;
  /** How the print was seen. */
  readonly seen: string;
  /** Wider than half a unit of the last printed place, with the reason. */
  readonly tolerance?: Tolerance;
  readonly rows: readonly PrintedRow[];
}

export interface PrintedRow {
  /** The row's other columns, as printed. */
  readonly at: Readonly<Record<string, string>>;
  readonly printed: string;
  readonly tolerance?: Tolerance;
}

interface Tolerance {
  /** In the table's unit, or a share of the figure where it ends in %. */
  readonly by: string;
  readonly because: string;
}

/** A column of a printed row as a number. */
export function column(row: PrintedRow, name: string): number {
  const text = row.at[name];
  if (text === undefined) throw new TypeError(`The row has no column "${name}".`);
  return number(text);
}

/** One test a printed figure: ours, in the table's unit, is within half a unit of its last place. */
export function compare(table: PrintedTable, ours: (row: PrintedRow) => number): void {
  for (const row of table.rows) {
    const at = Object.entries(row.at).map(([name, text]) => `${name} ${text}`);
    it(
      `${table.source}, ${table.place}: ${table.quantity} ${at.join(', ')} is ${row.printed} ${table.unit}`.trim(),
      () => {
        const printed = number(row.printed);
        const allowed = allowance(row.printed, row.tolerance ?? table.tolerance);
        expect(Math.abs(ours(row) - printed), `ours ${ours(row)}`).toBeLessThanOrEqual(allowed * (1 + 1e-9));
      },
    );
  }
}

/** Half a unit of the last place of a figure as printed: "0.353658941e-2" → 0.5e-11, "8.98763e4" → 0.05, "203" → 0.5. */
export function halfUnit(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.replace(' ', '').split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

function allowance(printed: string, tolerance: Tolerance | undefined): number {
  if (tolerance === undefined) return halfUnit(printed);
  return tolerance.by.endsWith('%')
    ? (Math.abs(number(printed)) * number(tolerance.by.slice(0, -1))) / 100
    : number(tolerance.by);
}

function number(text: string): number {
  const value = Number(text.replaceAll(' ', '').replace('−', '-'));
  if (text.trim() === '' || Number.isNaN(value)) throw new TypeError(`"${text}" is not a printed figure.`);
  return value;
}
