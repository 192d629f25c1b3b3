import '../../widget/index.js';
import { takeArrivals } from '../arrival.js';
import { message } from '../browser.js';
import { byId, mount } from '../face.js';
import { showDefaults } from './defaults.js';
import { showKits } from './kits.js';

byId('to-kept').textContent = message('openPage');
const check = await mount();
await takeArrivals(check);
await showKits(check);
await showDefaults(check);
