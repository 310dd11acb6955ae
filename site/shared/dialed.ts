/** A number that is called in an emergency: the US one, or a free line with its area code. */
const NUMBER = /(\b911\b|\b1(?:-\d{3}){2}-\d{4}\b)/;

/** A stretch of a text; a number that can be dialed has its address. */
type Stretch = { readonly text: string; readonly tel?: string };

/** A text cut at the numbers in it, so that each is dialed with one tap and never broken over two lines. */
export const dialedIn = (text: string): readonly Stretch[] =>
  text
    .split(NUMBER)
    .map((part, at) => (at % 2 ? { text: part, tel: `tel:${part.replaceAll('-', '')}` } : { text: part }));

/** Who answers at a number: the name that stands before it, as in `Poison Help, 1-800-222-1222`. */
const NAME_BEFORE = /([A-Z]\w+(?: [A-Z]\w+)*), $/;

/** The numbers of a text, each as what a button says. */
export const callsIn = (text: string): readonly { readonly says: string; readonly tel: string }[] => {
  const parts = dialedIn(text);
  return parts.flatMap(({ text: number, tel }, at) => {
    if (!tel) return [];
    const name = NAME_BEFORE.exec(parts[at - 1]?.text ?? '')?.[1] ?? 'Call';
    return [{ says: `${name} ${number}`, tel }];
  });
};

/** Whether a text says whom to call: what it is about can not wait for a page to be read. */
export const namesNumber = (text: string): boolean => NUMBER.test(text);
