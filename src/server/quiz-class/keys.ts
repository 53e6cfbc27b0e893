import { createHash, randomBytes } from 'node:crypto';

/** A key that opens a class: 128 bits, in letters that an address takes. */
export const newKey = (): string => randomBytes(16).toString('base64url');

/** What is kept of a key: from it nobody finds the key. */
export const hashOfKey = (key: string): string => createHash('sha256').update(`quiz class ${key}`).digest('hex');

/** True for what may be a key. */
export const isKey = (text: string): boolean => /^[A-Za-z0-9_-]{22}$/.test(text);
