import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';
import { manifestFor } from '../../scripts/manifest.mjs';

const source = JSON.parse(readFileSync(path.join(ROOT, 'manifest.json'), 'utf8')) as Record<string, unknown>;
const chrome = manifestFor('chrome', source, '1.2.3');
const firefox = manifestFor('firefox', source, '1.2.3');

describe('what the extension may do', () => {
  it('is this and nothing more; a new permission is a decision of its own', () => {
    expect(chrome['permissions']).toEqual(['activeTab', 'contextMenus', 'scripting', 'storage', 'sidePanel']);
    expect(firefox['permissions']).toEqual(['activeTab', 'contextMenus', 'scripting', 'storage']);
    for (const manifest of [chrome, firefox]) {
      expect(Object.keys(manifest).filter((key) => /permissions|scripts|externally|accessible/.test(key))).toEqual([
        'permissions',
      ]);
    }
  });

  it('runs and loads nothing but its own files, and sends nothing', () => {
    const policy = (source['content_security_policy'] as { extension_pages: string }).extension_pages;
    const directives = Object.fromEntries(
      policy.split(';').map((directive) => {
        const [name = '', ...values] = directive.trim().split(' ');
        return [name, values.join(' ')] as const;
      }),
    );
    expect(directives).toEqual({
      'default-src': "'none'",
      'script-src': "'self'",
      'style-src': "'self'",
      'img-src': "'self'",
      'connect-src': "'none'",
      'object-src': "'none'",
      'base-uri': "'none'",
      'form-action': "'none'",
      'require-trusted-types-for': "'script'",
      'trusted-types': 'lit-html',
    });
  });
});

describe('one manifest for two browsers', () => {
  it('gives Chrome a service worker and the side panel', () => {
    expect(chrome['background']).toEqual({ service_worker: 'background.js', type: 'module' });
    expect(chrome).toHaveProperty('side_panel');
    expect(chrome).toHaveProperty('minimum_chrome_version');
    expect(chrome).not.toHaveProperty('sidebar_action');
    expect(chrome).not.toHaveProperty('browser_specific_settings');
  });

  it('gives Firefox background scripts, the sidebar and the statement that no data are collected', () => {
    expect(firefox['background']).toEqual({ scripts: ['background.js'], type: 'module' });
    expect(firefox).toHaveProperty('sidebar_action');
    expect(firefox).toHaveProperty('browser_specific_settings.gecko.data_collection_permissions', {
      required: ['none'],
    });
    expect(firefox).not.toHaveProperty('side_panel');
    expect(firefox).not.toHaveProperty('minimum_chrome_version');
  });

  it('takes the version from package.json and leaves its source alone', () => {
    expect(chrome['version']).toBe('1.2.3');
    expect(source).not.toHaveProperty('version');
  });

  it.each([
    ['chrome', chrome],
    ['firefox', firefox],
  ])('names files that the build of %s has', (browser, manifest) => {
    const named = JSON.stringify(manifest).match(/[\w/-]+\.(html|js|png)/g) ?? [];
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter((file) => !existsSync(path.join(ROOT, 'dist', browser, file)))).toEqual([]);
  });
});

describe('the icons', () => {
  const icons = source['icons'] as Record<string, string>;
  const { default_icon: toolbar } = source['action'] as { default_icon: Record<string, string> };

  it.each([...Object.entries(icons), ...Object.entries(toolbar)])('are %s pixels wide and high: %s', (size, file) => {
    const png = readFileSync(path.join(ROOT, 'extension', file));
    expect(png.subarray(1, 4).toString()).toBe('PNG');
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([Number(size), Number(size)]);
  });

  it('are there at the sizes that browsers and stores ask for', () => {
    expect(Object.keys(icons)).toEqual(['16', '32', '48', '128']);
  });
});
