/** What shows through where nobody said: wood where no paint lies on it, a dark color else, which asks for most care. */
export const toneOver = (base: string | undefined): string =>
  base === 'stain' || base === 'bare-wood' ? 'wood' : 'dark';

/** Whether she said herself what shows through: what the base brings is told along in links, and is no answer of hers. */
export const saidTone = ({ base, tone }: Readonly<Record<string, string | undefined>>): boolean =>
  Boolean(tone) && tone !== toneOver(base);
