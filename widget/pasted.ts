/** Tags that end a line; a row of a table is one. */
const BREAKS = new Set(
  'br p div li ul ol dl dt dd tr table thead tbody caption h1 h2 h3 h4 h5 h6 section article header footer blockquote pre hr'.split(
    ' ',
  ),
);
/** Tags whose text is not read. */
const UNREAD = new Set(['style', 'script', 'head', 'title', 'template']);
const NAMED: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: '\u00a0',
  times: '×',
  frac12: '½',
  frac14: '¼',
  frac34: '¾',
  deg: '°',
  middot: '·',
  bull: '•',
  ndash: '–',
  mdash: '—',
  hellip: '…',
  szlig: 'ß',
  auml: 'ä',
  ouml: 'ö',
  uuml: 'ü',
  Auml: 'Ä',
  Ouml: 'Ö',
  Uuml: 'Ü',
  eacute: 'é',
  egrave: 'è',
  oslash: 'ø',
  aring: 'å',
  Oslash: 'Ø',
  prime: '′',
  Prime: '″',
};

/**
 * What a paste puts into the list: the plain text, but for a table whose cells the plain text has lost; then a line for each row, a tab
 * between its cells. Works on the text of the clipboard's HTML, so that nothing pasted ever becomes part of the page.
 */
export function pastedText(plain: string, html: string): string {
  return /<t[dh][\s>]/i.test(html) && !plain.includes('\t') ? textOfHtml(html) : plain;
}

/** The text of HTML source: a line for each block, list item, row and break, and of preformatted text, a tab between cells. Linear in its length. */
export function textOfHtml(html: string): string {
  const lines: string[] = [];
  let line = '';
  let unread = '';
  let cells = 0;
  let preformatted = false;
  const endLine = () => {
    if (line.trim() !== '') lines.push(line.trim());
    line = '';
    cells = 0;
  };
  for (let at = 0; at < html.length;) {
    const open = html.indexOf('<', at);
    const text = html.slice(at, open === -1 ? html.length : open);
    if (unread === '') {
      const kept = preformatted ? decoded(text).split(/\r?\n/) : [decoded(text)];
      kept.forEach((part, i) => {
        if (i > 0) endLine();
        const words = part.replace(/[ \t\r\n\f]+/g, ' ');
        line += /(^|[ \t])$/.test(line) ? words.trimStart() : words;
      });
    }
    if (open === -1) break;
    const comment = html.startsWith('<!--', open);
    const end = html.indexOf(comment ? '-->' : '>', open);
    if (end === -1) break;
    at = end + (comment ? 3 : 1);
    const closing = html[open + 1] === '/';
    const name = (
      /^[a-z][a-z0-9]{0,12}/i.exec(html.slice(open + (closing ? 2 : 1), open + 16))?.[0] ?? ''
    ).toLowerCase();
    if (unread !== '') {
      if (closing && name === unread) unread = '';
    } else if (UNREAD.has(name) && !closing) unread = name;
    else if (name === 'td' || name === 'th') {
      if (!closing && cells++ > 0) line = `${line.trimEnd()}\t`;
    } else if (BREAKS.has(name)) {
      // Within a cell a line break is a space: the row is the line.
      if (cells === 0 || name === 'tr' || name === 'table') endLine();
      else if (!/[ \t]$/.test(line)) line += ' ';
      if (name === 'pre') preformatted = !closing;
    }
  }
  endLine();
  return lines.join('\n');
}

function decoded(text: string): string {
  return text.replace(
    /&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|([a-z][a-z0-9]{1,9}));/gi,
    (whole, decimal?: string, hex?: string, name?: string) => {
      if (name !== undefined) return NAMED[name] ?? whole;
      const code = decimal === undefined ? Number.parseInt(hex ?? '', 16) : Number(decimal);
      return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
    },
  );
}
