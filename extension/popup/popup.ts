import '../../widget/index.js';
import { taker } from '../arrival.js';
import { message, openPanel, thisWindow } from '../browser.js';
import { byId, kept, mount } from '../face.js';
import { offerThisPage } from '../this-page.js';

offerThisPage(taker(await mount()));

const beside = byId('beside');
beside.textContent = message('openBeside');
// Asked for now: within the click there is no time to wait.
const { id } = await thisWindow();
beside.addEventListener('click', () => void openPanel(id).then(() => window.close()));

// The browser closes a popup on Escape as well, but waits for nothing.
window.addEventListener('keydown', (event) => {
  if (event.key !== 'Escape' || event.defaultPrevented || event.isComposing) return;
  event.preventDefault();
  // Where the draft is not kept, the popup stays, and says so.
  void kept().then(
    () => window.close(),
    () => undefined,
  );
});
