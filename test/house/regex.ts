/** What a part of a regular expression can do to the time it takes. */
interface Shape {
  /** It has an unbounded repeat in it. */
  readonly unbounded: boolean;
  /** One can be the first thing in it, or the last. */
  readonly opens: boolean;
  readonly closes: boolean;
  /** It can match nothing. */
  readonly empty: boolean;
}

const CHARACTER: Shape = { unbounded: false, opens: false, closes: false, empty: false };
const NOTHING: Shape = { ...CHARACTER, empty: true };

/**
 * Why a pattern may take more than linear time: an unbounded repeat within another, or right beside another. Empty where neither
 * is. It is stricter than needed: what two neighbours match is not compared.
 */
export function faultOf(pattern: string): string {
  let at = 0;
  let fault = '';

  function alternatives(): Shape {
    let shape = sequence();
    while (pattern[at] === '|') {
      at++;
      const other = sequence();
      shape = {
        unbounded: shape.unbounded || other.unbounded,
        opens: shape.opens || other.opens,
        closes: shape.closes || other.closes,
        empty: shape.empty || other.empty,
      };
    }
    return shape;
  }

  function sequence(): Shape {
    let whole = NOTHING;
    while (at < pattern.length && pattern[at] !== '|' && pattern[at] !== ')') {
      const part = repeated(atom());
      if (whole.closes && part.opens) fault = 'adjacent unbounded repeats';
      whole = {
        unbounded: whole.unbounded || part.unbounded,
        opens: whole.opens || (whole.empty && part.opens),
        closes: part.closes || (part.empty && whole.closes),
        empty: whole.empty && part.empty,
      };
    }
    return whole;
  }

  function atom(): Shape {
    const char = pattern[at++];
    if (char === '\\') {
      const property = /^[pPk][{<][^}>]*[}>]/.exec(pattern.slice(at));
      at += property === null ? 1 : property[0].length;
      return pattern[at - 1] === 'b' ? NOTHING : CHARACTER;
    }
    if (char === '[') {
      while (pattern[at] !== ']') at += pattern[at] === '\\' ? 2 : 1;
      at++;
      return CHARACTER;
    }
    if (char === '(') {
      const opening = /^\?(?:<?[=!]|:|<\w*>)/.exec(pattern.slice(at))?.[0] ?? '';
      at += opening.length;
      const inside = alternatives();
      at++;
      return /[=!]/.test(opening) ? { ...inside, opens: false, closes: false, empty: true } : inside;
    }
    return char === '^' || char === '$' ? NOTHING : CHARACTER;
  }

  function repeated(shape: Shape): Shape {
    const [sign, low = '', comma, high = ''] =
      /^(?:[*+?]|\{(\d+)(,)?(\d*)\})\??/.exec(pattern.slice(at)) ?? ([''] as string[]);
    if (sign === undefined || sign === '') return shape;
    at += sign.length;
    const least = sign.startsWith('+') ? 1 : Number(low);
    const most = sign.startsWith('?')
      ? 1
      : low === ''
        ? Infinity
        : comma === undefined
          ? least
          : Number(high || Infinity);
    if (most === Infinity) {
      if (shape.unbounded) fault = 'nested unbounded repeats';
      return { unbounded: true, opens: true, closes: true, empty: least === 0 || shape.empty };
    }
    if (most > 1 && shape.opens && shape.closes) fault = 'adjacent unbounded repeats';
    return { ...shape, empty: least === 0 || shape.empty };
  }

  alternatives();
  return fault;
}
