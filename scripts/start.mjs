/** npm start: installs if needed, builds, serves the page with the widget, and says where everything is. */
import path from 'node:path';
import { ROOT } from './files.mjs';
import { ensureInstalled } from './install.mjs';
import { serve } from './serve.mjs';

const PREFERRED_PORT = 4173;

ensureInstalled();
console.log('Building …');
// Loaded only now: it needs the packages.
const { build } = await import('./build.mjs');
await build();
const { address } = await serve(path.join(ROOT, 'dist', 'demo'), PREFERRED_PORT);
console.log(`
The page with the widget and a demo list:
  ${address}

The extension, unpacked:
  Chrome, Edge   ${path.join(ROOT, 'dist', 'chrome')}
                 chrome://extensions, Developer mode, Load unpacked
  Firefox        ${path.join(ROOT, 'dist', 'firefox', 'manifest.json')}
                 about:debugging, This Firefox, Load Temporary Add-on

Ctrl+C ends it.`);
