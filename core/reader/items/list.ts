import type { Row as Source } from '../../reading/formats/rows.js';
import type { Context } from '../../reading/items/context.js';
import type { Draft } from '../../reading/items/draft.js';
import type { Stretch } from '../../reading/items/stretch.js';
import type { Thing as Noun } from '../../reading/items/things.js';
import { Reader } from '../../reading/reader.js';
import type { Row } from '../rows/row.js';
import { decide, type Report } from './decide.js';

/** The list as it is read, row by row: headings, things and trip as today's reader takes them, what is told of a thing by claims. */
export class List extends Reader {
  private readonly report: Report;
  /** Rows whose things may still be told more of, by what today's reader knows them as. */
  private readonly rowOf = new Map<Stretch, Row>();

  constructor(report: Report, ...args: ConstructorParameters<typeof Reader>) {
    super(...args);
    this.report = report;
  }

  readRow(row: Row, sources: readonly Source[], index: number): void {
    this.rowOf.set(row.stretch, row);
    this.read(row.stretch, sources, index);
  }

  protected override fillIn(
    stretch: Stretch,
    drafts: readonly Draft[],
    parts: readonly Noun[],
    context: Context,
  ): void {
    const row = this.rowOf.get(stretch);
    if (row === undefined) return super.fillIn(stretch, drafts, parts, context);
    decide(row, drafts, parts, context, this.order, this.columnsOf(stretch, drafts, context), this.report);
  }
}
