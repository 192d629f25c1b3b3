import '../../widget/index.js';
import { message, openTab } from '../browser.js';
import { byId, mount } from '../face.js';

const tab = byId('tab');
tab.textContent = message('openInTab');
tab.addEventListener('click', () => void openTab('panel/index.html'));

await mount();
