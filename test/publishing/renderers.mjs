/** Software that a post goes through, as far as it is light: what renders Markdown, and what filters HTML. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { HtmlRenderer, Parser } from 'commonmark';
import { convert } from 'html-to-text';
import MarkdownIt from 'markdown-it';
import { marked } from 'marked';
import sanitizeHtml from 'sanitize-html';
import { renderedOnServer } from '../extension/mdx.mjs';

/** Markdown to HTML. @type {Readonly<Record<string, (markdown: string) => string | Promise<string>>>} */
export const MARKDOWN = {
  'CommonMark, its reference implementation': (markdown) => new HtmlRenderer().render(new Parser().parse(markdown)),
  'markdown-it': (markdown) => new MarkdownIt({ html: true, typographer: true, linkify: true }).render(markdown),
  marked: (markdown) => marked.parse(markdown),
};

/** MDX to HTML. @param {string} source @returns {Promise<string>} */
export const mdx = (source) => renderedOnServer(source, {});

/** @param {string} html @returns {string} */
export const sanitized = (html) => sanitizeHtml(html);

/** @param {string} html @returns {string} */
export const asText = (html) => convert(html, { wordwrap: false });

/** The script that gives a page the filter of its name. */
export const DOMPURIFY = readFileSync(createRequire(import.meta.url).resolve('dompurify/dist/purify.min.js'), 'utf8');
