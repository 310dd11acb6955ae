/** An id that no other device makes: 128 random bits. Also where the page has no secure connection. */
export const newId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
