import '../../widget/index.js';
import { takeArrivals } from '../arrival.js';
import { mount } from '../face.js';

await takeArrivals(await mount());
