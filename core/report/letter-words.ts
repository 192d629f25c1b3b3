import type { Messages } from '../model/check.js';

/** What a letter says besides the findings, and what stands beside it while it is written. */
export const LETTER_MESSAGES = {
  title: 'An answer to send',
  beforeYouGo: 'Before you go',
  smallGain: 'A small gain',
  question: 'One question',
  questions: 'Questions',
  writeBack: 'Write back with the answer, and I will look again.',
  writeBackMany: 'Write back with the answers, and I will look again.',
  allWell: 'Nothing I read here falls short.',
  sources: 'Sources',

  beforeTheyGo: 'Before they go',
  toAsk: 'To ask',
  letter: 'The letter',
  firstLine: 'First line',
  caution: 'caution',
  settles: 'settles {checks}',
  stays:
    'Cautions, at the thick line, stay while their finding is ticked. What you wrote stays until the list changes.',
  copyAs: 'Copy as',
  rich: 'letter',
  plain: 'plain text',
  markdown: 'Markdown',
  atTheEnd: 'Sources at the end',
  copy: 'Copy the letter',
  copied: 'Copied',
  refused: 'The browser refused to copy. Copy the text here by hand.',
  count: '{n#} {n:sentence|sentences}. Nothing is sent from here.',
  close: 'Back to the findings',
} as const satisfies Messages;
