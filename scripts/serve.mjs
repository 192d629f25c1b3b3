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

/**
 * Serves the files of a folder to this machine alone.
 * @param {string} folder
 * @param {number} [port] the port to prefer; any free one where it is taken or left out
 * @returns {Promise<{ address: string, close: () => void }>}
 */
export async function serve(folder, port = 0) {
  const server = createServer(async (request, response) => {
    try {
      const file = fileOf(folder, request.url ?? '/');
      const bytes = await readFile(file);
      response.writeHead(200, { 'content-type': TYPES[path.extname(file)] ?? 'application/octet-stream' }).end(bytes);
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
