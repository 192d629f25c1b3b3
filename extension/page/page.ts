import '../../widget/index.js';
import { takeArrivals } from '../arrival.js';
import { mount } from '../face.js';
import { showDefaults } from './defaults.js';
import { showKits } from './kits.js';

const check = await mount();
await takeArrivals(check);
await showKits(check);
await showDefaults(check);
