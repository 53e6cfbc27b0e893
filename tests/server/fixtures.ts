import { createApp } from '../../src/server/app.ts';
import { fakeAsk } from './fake.ts';

export const reports: string[] = [];
export const app = createApp({ ask: fakeAsk, version: 'test0001', report: (line) => reports.push(line) });

/** Sends a request to the API: an object goes as JSON, text as it is. */
export function post(body: unknown, headers: Record<string, string> = { 'Content-Type': 'application/json' }) {
  return app.request('/api/ask', {
    method: 'POST',
    headers,
    body: typeof body === 'string' ? body : JSON.stringify(body),
  });
}

/** Sends the form of the page, as a browser does. */
export function submit(fields: Record<string, string> | [string, string][]) {
  return app.request('/', { method: 'POST', body: new URLSearchParams(fields) });
}

/** The form fields a page carries in hidden inputs, read back from its markup. */
export function hiddenFields(html: string): Record<string, string> {
  const inputs = html.matchAll(/<input type="hidden" name="([^"]*)" value="([^"]*)"/g);
  return Object.fromEntries([...inputs].map(([, name, value]) => [name!, unescaped(value!)]));
}

export function unescaped(text: string): string {
  const marks: Record<string, string> = { '&quot;': '"', '&#39;': "'", '&lt;': '<', '&gt;': '>', '&amp;': '&' };
  return text.replace(/&(?:quot|#39|lt|gt|amp);/g, (mark) => marks[mark]!);
}
