import type { Messages } from '../model/check.js';

/** What the report says besides its checks: the headline, the count of lines, the parts of a remark. */
export const REPORT_MESSAGES = {
  lines: '{used#} {used:line|lines} used, {off#} not cook kit, {unknown#} not understood',
  day: 'A day with this kit',
  assumed: 'Assumed',
  caution: 'Caution: {words}',
  published: 'Published: {sources}.',
  foot: 'A second opinion. Local fire rules, land managers and licensed instruction come first.',
  to: 'to',
  fault: 'This check failed on this kit; the others went on.',
  'fault-margin': 'no answer',
} as const satisfies Messages;
