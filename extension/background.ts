/** Wiring only. Every listener is registered at the top level: the browser may stop this at any time and wake it for an event. */
import { onInstalled, onPanelCommand, onSelectionItem, onWindowClosed, openPanel } from './browser.js';
import { fillMenu, giveSecondOpinion } from './menu.js';
import { forgetWindow } from './windows.js';

onInstalled(() => void fillMenu());
onSelectionItem(giveSecondOpinion);
onPanelCommand(openPanel);
onWindowClosed(forgetWindow);
