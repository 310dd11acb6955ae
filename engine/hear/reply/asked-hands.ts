/** What hands are asked about: "can I wipe them off?" A reply answers that first. */

/** A question about one's own hands: may I, should she, is it all right to. */
const ASKS =
  /\b(?:(?:can|could|should|may|must|do|shall|would) (?:i|we|she|he|they|you)|(?:is it|would it be|am i|are we) (?:ok|okay|safe|fine|all right|alright|allowed|best|better) (?:to|if (?:i|we|she|he|they))|(?:ok|okay|safe|fine|allowed|better|best) to|need to|have to|want to|tempted to)\b/i;

/** How each is said, and how it is denied; `{it}` is the word that stands for the flaw or the coat. */
const HANDS = [
  { hand: 'wipe', said: /\bwip(?:e|ing)\b|\bblot\b/i, denied: 'do not wipe {it}' },
  {
    hand: 'coat',
    said: /\b(?:another|second|next|more|one more|new|fresh) coats?\b|\b(?:re-?coat|coat|paint|go|brush|roll|poly|varnish|seal|lacquer|shellac|top-?coat|finish|spray) over\b|\bre-?coat\b|\badd (?:a|another|more)\b/i,
    denied: 'do not lay another coat',
  },
  {
    hand: 'sand',
    said: /\bsand(?:ing)?\b|\bbuff(?:ing)?\b|\brub (?:it|them|this|that) (?:out|down|off)\b/i,
    denied: 'do not sand {it}',
  },
  {
    hand: 'brush',
    said: /\b(?:brush|roll|smooth|tip)(?:ing)? (?:it|them|this|that|those|these)?\s*(?:out|off|again|down)\b|\bgo(?:ing)? back over\b/i,
    denied: 'do not brush {it} again',
  },
  { hand: 'pop', said: /\b(?:pop|prick|poke)\b/i, denied: 'do not pop {it}' },
  {
    hand: 'scrape',
    said: /\b(?:scrape|peel|pick|shave|slice|razor|scalpel|chisel|trim|cut (?:it|them|that|this) off)\b/i,
    denied: 'do not scrape {it}',
  },
  { hand: 'strip', said: /\bstrip\b|\bstart(?:ing)? (?:all )?over\b/i, denied: 'do not strip {it}' },
  {
    hand: 'heat',
    said: /\b(?:hair ?dryer|heat gun|(?<!(?:water|gas) )heater|heat (?:it|them))\b/i,
    denied: 'do not heat {it}',
  },
  { hand: 'touch', said: /\b(?:touch|press|feel) (?:it|them|this|that)\b/i, denied: 'do not touch {it}' },
] as const;
/** "How do I fix it, no sanding please": what is not wanted is not asked for. */
const SPARED = /\b(?:no|without|avoid|skip)\s+$/i;

export type AskedHand = (typeof HANDS)[number]['hand'];

export type AskedHands = { readonly hand: AskedHand; readonly denied: string };

/** What the text asks to be allowed, in the order of the words; nothing where it only tells what was done. */
export const askedHands = (text: string): readonly AskedHands[] => {
  const found = new Map<AskedHand, { at: number; denied: string }>();
  let before = 0;
  for (const sentence of text.split(/(?<=[.!?\n])/)) {
    const asks = ASKS.exec(sentence);
    const rest = asks ? sentence.slice(asks.index) : '';
    for (const { hand, said, denied } of rest ? HANDS : []) {
      const word = said.exec(rest);
      if (!word || found.has(hand) || SPARED.test(rest.slice(0, word.index))) continue;
      const it = /\b(?:them|those|these)\b/i.test(rest.slice(word.index)) ? 'them' : 'it';
      found.set(hand, { at: before + (asks?.index ?? 0) + word.index, denied: denied.replace('{it}', it) });
    }
    before += sentence.length;
  }
  return [...found].sort(([, a], [, b]) => a.at - b.at).map(([hand, { denied }]) => ({ hand, denied }));
};
