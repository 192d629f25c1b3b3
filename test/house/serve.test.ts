import { get } from 'node:http';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';
import { serve } from '../../scripts/serve.mjs';

describe('the server of npm start', () => {
  let site: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    site = await serve(path.join(ROOT, 'extension', 'icons'));
  });
  afterAll(() => site.close());

  /** Asks for a path as it is written: fetch would tidy it. */
  const status = (asked: string) =>
    new Promise<number | undefined>((resolve, reject) => {
      get({ port: Number(new URL(site.address).port), host: '127.0.0.1', path: asked }, (response) => {
        response.resume();
        resolve(response.statusCode);
      }).on('error', reject);
    });

  it('gives the files of its folder', async () => {
    expect(await status('/16.png')).toBe(200);
  });

  it.each(['/', '/none.png', '/../README.md', '/%2e%2e/README.md', '/%E0%A4%A', '/%00', '//', '/16.png/..'])(
    'gives nothing else: %s',
    async (asked) => {
      expect(await status(asked)).toBe(404);
    },
  );

  it('takes another port where the one it prefers is taken', async () => {
    const taken = Number(new URL(site.address).port);
    const second = await serve(path.join(ROOT, 'extension', 'icons'), taken);
    expect(Number(new URL(second.address).port)).not.toBe(taken);
    second.close();
  });
});
