import '../../widget/index.js';
import { takeArrivals, taker } from '../arrival.js';
import { mount } from '../face.js';
import { offerThisPage } from '../this-page.js';

const check = await mount();
offerThisPage(taker(check));
await takeArrivals(check);
