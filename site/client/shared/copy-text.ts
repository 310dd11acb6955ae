/** Copies a text. False where the browser keeps its clipboard shut: it can still be marked by hand. */
export const copyText = async (text: string): Promise<boolean> => {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch (error) {
    // Refused is a DOMException; on a page without a secure connection there is no clipboard at all.
    if (error instanceof DOMException || error instanceof TypeError) return false;
    throw error;
  }
};
