import { expect } from 'chai';
import type * as Axe from 'axe-core';
import 'axe-core';
import { render } from 'lit';
import { loadJudge } from '../../widget/judging.js';
import { dress } from '../../widget/styles/index.js';

// Tests of what is said need not wait for the part that says it; judging.test.ts waits.
await loadJudge('list');

const { axe } = globalThis as unknown as { axe: typeof Axe };

/** Renders into a new element of the page. */
export function mount(template: unknown, parent: Node = document.body): HTMLElement {
  const place = document.createElement('main');
  parent.appendChild(place);
  render(template, place);
  return place;
}

/** Renders a part of the widget by itself, with the widget's own styles. */
export function mountStyled(template: unknown): HTMLElement {
  const host = document.createElement('div');
  const root = host.attachShadow({ mode: 'open' });
  document.body.append(host);
  dress(root);
  const frame = document.createElement('div');
  frame.className = 'bw';
  root.append(frame);
  return mount(template, frame);
}

/** Nothing that axe-core finds wrong with the element. */
export async function expectAccessible(element: Element): Promise<void> {
  const { violations } = await axe.run(element);
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).to.deep.equal([]);
}

/** What the console is told while something is done. */
export async function hints(act: () => Promise<unknown>): Promise<string[]> {
  const told: string[] = [];
  const page = globalThis.console;
  const { warn } = page;
  page.warn = (...words: unknown[]) => told.push(words.join(' '));
  try {
    await act();
  } finally {
    page.warn = warn;
  }
  return told.filter((words) => words.includes('brimwise'));
}

/** Waits until something holds that comes later than an update. */
export async function until(holds: () => boolean): Promise<void> {
  for (let waited = 0; !holds(); waited += 20) {
    if (waited > 8000) throw new Error(`In vain: ${holds.toString()}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
