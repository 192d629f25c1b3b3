/** A post in MDX, as a site that renders with React makes it: HTML from the server, and a script that takes it over in the browser. */
import { compile, evaluate } from '@mdx-js/mdx';
import { build as bundle } from 'esbuild';
import { createElement } from 'react';
import { renderToString } from 'react-dom/server';
import * as runtime from 'react/jsx-runtime';
import remarkGfm from 'remark-gfm';
import { ROOT } from '../../scripts/files.mjs';

const OPTIONS = { remarkPlugins: [remarkGfm] };

/**
 * The HTML that the server sends.
 * @param {string} source
 * @param {Record<string, unknown>} props
 */
export async function renderedOnServer(source, props) {
  const { default: Post } = await evaluate(source, { ...runtime, ...OPTIONS });
  return renderToString(createElement(Post, props));
}

/**
 * A script whose `post.hydrate(props)` takes over the post in `#post`, and whose `post.render(props)` renders it again, or anew where nothing was
 * taken over. React in its form for development says on the console what of the page is not as the server had it.
 * @param {string} source
 */
export async function browserScript(source) {
  const post = String(await compile(source, OPTIONS));
  const { outputFiles } = await bundle({
    stdin: {
      contents: `
        import { createElement } from 'react';
        import { flushSync } from 'react-dom';
        import { createRoot, hydrateRoot } from 'react-dom/client';
        import Post from 'post';
        let root;
        const place = () => document.querySelector('#post');
        globalThis.post = {
          hydrate: (props) => flushSync(() => (root = hydrateRoot(place(), createElement(Post, props)))),
          render: (props) => flushSync(() => (root ??= createRoot(place())).render(createElement(Post, props))),
        };
      `,
      resolveDir: ROOT,
    },
    plugins: [
      {
        name: 'post',
        setup({ onResolve, onLoad }) {
          onResolve({ filter: /^post$/ }, () => ({ path: 'post', namespace: 'post' }));
          onLoad({ filter: /.*/, namespace: 'post' }, () => ({ contents: post, resolveDir: ROOT }));
        },
      },
    ],
    define: { 'process.env.NODE_ENV': '"development"' },
    bundle: true,
    format: 'iife',
    write: false,
  });
  return outputFiles[0].text;
}
