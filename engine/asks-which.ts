/** What a top coat is called, and what joins the question to it. */
const COAT =
  '(?:top ?-?coats?|coats?|coating|finish(?:es)?|seal(?:er|ant)?s?|varnish(?:es)?|poly(?:urethane)?|clear|topcoat)';
const KIND =
  '(?:kind|kinds|type|sort|of|a|the|is|are|clear|water|based|oil|top|best|good|right|safe|hard|hardest|tough|toughest|durable|matte|flat|satin|gloss|protective)';
const BY_NAME = new RegExp(`\\b(?:what|which|best|right|recommended)\\s+(?:${KIND}\\s+){0,5}${COAT}\\b`, 'i');
const WITH = /\b(?:what|which)\b.{0,40}\b(?:seal|protect|finish|coat|top ?-?coat)\b.{0,60}\bwith\b/i;
const PUT = /\bwhat\b.{0,20}\b(?:should|can|do|would)\b.{0,12}\b(?:put|use|go)\b.{0,40}\b(?:seal|protect)\b/i;
/** Then it is about a coat that lies there, or about something else than its kind. */
const NOT_THAT =
  /\b(?:wrong|happen\w*|remov\w*|strip\w*|sand\w*|grit|fix|repair|get off|take off|how long|how many|dry(?:ing)?|why|caus\w*)\b/i;

/** Whether a text asks which top coat to take, and tells of none that lies there. */
export const asksWhich = (text: string): boolean =>
  (BY_NAME.test(text) || WITH.test(text) || PUT.test(text)) && !NOT_THAT.test(text);
