/**
 * Orders to work on a film, found in the words shown. A clause counts where its first word is the bare verb,
 * nothing in the sentence puts it off (wait, until, once dry, tomorrow …) or forbids it (do not, never), and it is
 * the film that is worked on, not the room around it.
 */
export const TOUCHING =
  'brush|roll|sand|wipe|scrape|shave|heat|warm|coat|recoat|rub|tip|lift|pick|press|wash|cut|dab|blot|pull|peel|spray|apply|strip|pad|buff|stroke|touch|smooth|scrub|polish|level|flatten|fill|pop|prick|clean|wick|work|add|lay';
/** Work that no film stands before it is dry through. */
export const WORKING = 'sand|scrape|shave|heat|coat|recoat|roll|strip|spray|polish|level|flatten|fill';

const PUT_OFF = /\b(wait|until|once|when|after|later|tomorrow|leave|let|before|if|as soon as|then look)\b/i;
const FORBIDDEN = /\b(do not|don['’]t|never|no|not)\b/i;
const LEAD_IN = '(?:(?:and|then|now|first|just|only|gently|quickly|please|so|or|but) )*';

/** The clauses of `text` that order one of `verbs` for now. */
export const ordersIn = (text: string, verbs: string): string[] => {
  const order = new RegExp(
    `^${LEAD_IN}(?:${verbs})\\b(?!\\s+(?:(?:is|are|was|has|had|can|will|marks?|of)\\b|the (?:room|air|wood)\\b))`,
    'i',
  );
  return text.split(/(?<=[.!?])\s+/).flatMap((sentence) => {
    let before = '';
    return sentence.split(/[,;:]\s+|\s+(?=and |then |or )/).flatMap((clause) => {
      const put = PUT_OFF.test(before) || FORBIDDEN.test(before) || FORBIDDEN.test(clause);
      before += ` ${clause}`;
      return order.test(clause.trim()) && !put ? [clause.trim()] : [];
    });
  });
};
