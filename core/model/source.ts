/** Names an entry of the bibliography in `core/data/sources`, as a slug: "nist-handbook-44". */
export type SourceId = string;

/** Published: title, year and place can be shown. Common practice: no published source, or the practitioners' range. */
export type SourceGrade = 'published' | 'common-practice';

export interface Source {
  readonly id: SourceId;
  readonly grade: SourceGrade;
  /** Title of the publication; for common practice, what the practice is. */
  readonly title: string;
  /** Author or issuing body. */
  readonly by?: string;
  /** Year of publication. */
  readonly year?: number;
  /** Table, clause or page. */
  readonly place?: string;
  /** What to know before trusting it: seen only in a copy, from memory, sources disagree. */
  readonly note?: string;
}
