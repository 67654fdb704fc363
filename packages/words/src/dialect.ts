/** Which English: British is the default; American says "bumper" and spells its own way. */
export type Dialect = 'en-GB' | 'en-US';
