/** `npm run test:slow` looks at everything; `npm test` at one of each kind, so that it ends within minutes. */
export const THOROUGH = process.env['THOROUGH'] === '1';
