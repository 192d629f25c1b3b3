import '../../widget/index.js';
import { currentWindowId, message, openPanel } from '../browser.js';
import { byId, mount } from '../face.js';

await mount();

const beside = byId('beside');
beside.textContent = message('openBeside');
// Asked for now: within the click there is no time to wait.
const windowId = await currentWindowId();
beside.addEventListener('click', () => void openPanel(windowId).then(() => window.close()));
