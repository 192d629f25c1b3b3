import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import path from 'node:path';

/** @type {Record<string, string>} */
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.txt': 'text/plain; charset=utf-8',
};

/** Where a live page listens for changes, and what makes it listen. A page's own policy forbids both, so it is left out while developing. */
const CHANGES = '/-changes';
const RELOADING = `<script>new EventSource('${CHANGES}').onmessage = () => location.reload();</script>`;
const POLICY = /<meta\s+http-equiv="Content-Security-Policy"[^>]*>/;

/**
 * Serves the files of a folder to this machine alone.
 * @param {string} folder
 * @param {number} [port] the port to prefer; any free one where it is taken or left out
 * @param {{ live?: boolean }} [options] live: each HTML page reloads when `reload` is called
 * @returns {Promise<{ address: string, reload: () => void, close: () => void }>}
 */
export async function serve(folder, port = 0, { live = false } = {}) {
  /** @type {Set<import('node:http').ServerResponse>} */
  const open = new Set();
  const server = createServer(async (request, response) => {
    if (live && request.url === CHANGES) {
      response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' }).flushHeaders();
      open.add(response.on('close', () => open.delete(response)));
      return;
    }
    try {
      const file = fileOf(folder, request.url ?? '/');
      const extension = path.extname(file);
      const bytes = await readFile(file);
      const body = live && extension === '.html' ? bytes.toString('utf8').replace(POLICY, '') + RELOADING : bytes;
      response.writeHead(200, { 'content-type': TYPES[extension] ?? 'application/octet-stream' }).end(body);
    } catch {
      response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found');
    }
  });
  await listen(server, port).catch((error) => {
    if (error.code !== 'EADDRINUSE') throw error;
    return listen(server, 0);
  });
  const bound = /** @type {import('node:net').AddressInfo} */ (server.address());
  return {
    address: `http://localhost:${bound.port}/`,
    reload() {
      for (const page of open) page.write('data: changed\n\n');
    },
    close() {
      server.close();
      server.closeAllConnections();
    },
  };
}

/**
 * @param {string} folder
 * @param {string} url as it was asked for
 * @throws Error where it is no address, or leads out of the folder
 */
function fileOf(folder, url) {
  const { pathname } = new URL(url, 'http://localhost');
  const file = path.join(folder, decodeURIComponent(pathname.endsWith('/') ? `${pathname}index.html` : pathname));
  if (!file.startsWith(path.join(folder, path.sep))) throw new Error(`${url} leads out of the folder.`);
  return file;
}

/** @param {import('node:http').Server} server @param {number} port */
function listen(server, port) {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve(undefined);
    });
  });
}
