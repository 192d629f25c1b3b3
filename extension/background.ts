/** Wiring only. Every listener is registered at the top level: the browser may stop this at any time and wake it for an event. */
import { onInstalled, onPanelCommand, onSelectionItem, onWindowClosed } from './browser.js';
import { fillMenu, giveSecondOpinion, openWithSelection } from './menu.js';
import { forgetWindow } from './windows.js';

onInstalled(() => void fillMenu());
onSelectionItem(giveSecondOpinion);
onPanelCommand(openWithSelection);
onWindowClosed(forgetWindow);
