import '../../widget/index.js';
import { message } from '../browser.js';
import { byId, keep, mount } from '../face.js';
import { onHandedOver } from '../handover.js';

const check = await mount();
const bringBack = byId('bring-back');
bringBack.textContent = message('bringBack');

await onHandedOver(({ text, asTold }) => {
  const before = check.draft;
  const take = (draft: typeof before) => {
    check.draft = draft;
    void keep(draft);
  };
  take({ ...before, entrance: 'list', text, corrections: [] });
  byId('told').textContent = asTold ? message('pageNotRead') : '';
  bringBack.hidden = before.text === '';
  bringBack.onclick = () => {
    take(before);
    bringBack.hidden = true;
    check.focus();
  };
});
