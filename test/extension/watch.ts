import type { Page } from 'puppeteer-core';

/** What a page complains of, and what it asks for; filled as it happens. */
export function watch(page: Page): { complaints: string[]; requests: string[] } {
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => complaints.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('requestfailed', (request) => complaints.push(`failed: ${request.url()}`));
  page.on('request', (request) => requests.push(request.url()));
  return { complaints, requests };
}
