/** The sense of a phrase that answers a question, as the lexicon names it. */
export const senseOfSign = (question: string, answer: 'yes' | 'no'): string => `sign ${question} ${answer}`;
