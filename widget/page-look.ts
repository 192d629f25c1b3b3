import type { LitElement, ReactiveController } from 'lit';

const DARK = '(prefers-color-scheme: dark)';

/**
 * The page's own ink, paper and face, read from what is around the element and handed to its styles. A custom property cannot carry
 * `inherit` or `currentColor` to where colours are mixed, so they are read; a change of the inherited colour is told by a transition.
 */
export class PageLook implements ReactiveController {
  /** Whether words stand light on dark. */
  dark = false;
  #host: LitElement;
  #look: () => string;
  #scheme = matchMedia(DARK);

  /** `look` tells which look the element has: "page", or one of its own. */
  constructor(host: LitElement, look: () => string) {
    this.#host = host;
    this.#look = look;
    host.addController(this);
  }

  hostConnected(): void {
    this.#scheme.addEventListener('change', this.#again);
    window.addEventListener('load', this.#again);
    this.#host.addEventListener('transitionend', this.#again);
  }

  hostDisconnected(): void {
    this.#scheme.removeEventListener('change', this.#again);
    window.removeEventListener('load', this.#again);
    this.#host.removeEventListener('transitionend', this.#again);
  }

  #again = (): void => this.#host.requestUpdate();

  hostUpdate(): void {
    const look = this.#look();
    this.dark =
      look === 'page'
        ? isLight(getComputedStyle(this.#host).color)
        : look === 'notebook-dark' || (look === 'notebook' && this.#scheme.matches);
  }

  hostUpdated(): void {
    const frame = this.#host.renderRoot.querySelector<HTMLElement>('.bw');
    if (frame === null) return;
    const { color, fontFamily, fontSize } = getComputedStyle(this.#host);
    const root = Number.parseFloat(getComputedStyle(this.#host.ownerDocument.documentElement).fontSize);
    const size = Math.min(1.25, Math.max(0.875, Number.parseFloat(fontSize) / root));
    const read = {
      '--page-ink': color,
      '--page-paper': paperUnder(this.#host) ?? (this.dark ? '#121212' : '#fff'),
      '--page-words': fontFamily,
      '--page-size': `${size}rem`,
    };
    for (const [name, value] of Object.entries(read)) {
      if (this.#look() === 'page') frame.style.setProperty(name, value);
      else frame.style.removeProperty(name);
    }
  }
}

/** The nearest ground that hides what is under it; undefined where the page leaves that to the browser. */
function paperUnder(element: Element): string | undefined {
  for (let at: Element | null = element; at !== null; at = parentOf(at)) {
    const { backgroundColor } = getComputedStyle(at);
    if (alphaOf(backgroundColor) > 0.5) return backgroundColor;
  }
  return undefined;
}

function parentOf(element: Element): Element | null {
  if (element.assignedSlot !== null) return element.assignedSlot;
  const root = element.getRootNode();
  return element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
}

/** A computed colour is "rgb(1, 2, 3)", "rgba(1, 2, 3, 0.4)", "color(srgb 0.1 0.2 0.3 / 0.4)", "oklch(0.4 0.1 20 / 0.4)". */
function alphaOf(color: string): number {
  const figures = figuresOf(color);
  return color.startsWith('rgba') || color.includes('/') ? (figures.at(-1) ?? 1) : 1;
}

/** Whether a colour is lighter than the grey on which black and white are read alike. */
function isLight(color: string): boolean {
  const [a = 0, b = 0, c = 0] = figuresOf(color);
  if (/^(ok)?l(ab|ch)/.test(color)) return a > (color.startsWith('ok') ? 0.57 : 49);
  const most = color.startsWith('rgb') ? 255 : 1;
  const [red, green, blue] = [a, b, c].map((part) => (part / most) ** 2.2) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue > 0.18;
}

function figuresOf(color: string): number[] {
  const inside = color.slice(color.indexOf('('));
  return (inside.match(/-?\d*\.?\d+(e-?\d+)?/g) ?? []).map(Number);
}
