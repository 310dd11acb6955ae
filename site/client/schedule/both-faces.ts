import { keysOf } from '#engine/plain/entry-of.ts';
import type { LoosePart, Turning } from '#engine/schedule.ts';
import { asPart, element, partIn } from '../shared/element.ts';
import type { Draft } from '../shared/form/form.ts';
import { readNumber } from '../shared/form/number.ts';
import { LOOSE } from '../shared/say-both-faces.ts';

/** Parts of which there is at least one. */
const thereIs = (draft: Draft, part: LoosePart): boolean =>
  Number(readNumber(draft[`${part}-count`] ?? '')) > 0;

/** What the draft says is coated on both faces, and is there. */
export const bothIn = (draft: Draft): readonly LoosePart[] =>
  LOOSE.filter((part) => draft['both']?.split(',').includes(part) && thereIs(draft, part));

const FACES: Readonly<Record<LoosePart, string>> = { front: 'Drawer fronts, doors', top: 'Loose tops' };
const TURNED: Readonly<Record<Turning, string>> = {
  'each-coat': 'After each coat',
  'each-face': 'Once, with all coats on the back',
};

/** A line for the fault of a field, which names the field's own element by it. */
const faultOf = (field: HTMLElement, name: string): HTMLElement => {
  const fault = element('p', { id: `plan-${name}-fault`, className: 'fault', ariaLive: 'polite' });
  field.setAttribute('aria-describedby', fault.id);
  return fault;
};

const tick = (value: LoosePart): HTMLElement =>
  element(
    'label',
    {},
    element('input', { type: 'checkbox', name: 'both', value }),
    element('span', {}, FACES[value]),
  );

/**
 * The fields for both faces, behind the sizes. The script brings them, since the page has no room left in its one
 * flight, and without a script nothing is planned. They say one face until something is ticked.
 */
export const addBothFaces = (form: HTMLFormElement): void => {
  const sizes = form.querySelector('#plan-sizes');
  if (!sizes || form.querySelector('[name=both]')) return;
  const both = element('fieldset', { className: 'pick' }, element('legend', {}, 'Coat both faces of'));
  both.append(...LOOSE.map(tick), faultOf(both, 'both'));
  const turned = element(
    'select',
    { id: 'plan-turned', name: 'turned' },
    ...keysOf(TURNED).map((value) => element('option', { value }, TURNED[value])),
  );
  const when = element(
    'div',
    { className: 'fit' },
    element('label', { htmlFor: turned.id }, 'Turn it'),
    turned,
    faultOf(turned, 'turned'),
  );
  sizes.after(asPart('both', both), asPart('turned', when));
};

/** Asks for both faces of what can be turned, and for the turning once one is ticked. */
export const askBothFaces = (form: HTMLFormElement, draft: Draft): void => {
  for (const part of LOOSE) {
    const label = form.querySelector(`[name=both][value=${part}]`)?.closest('label');
    if (label) label.hidden = !thereIs(draft, part);
  }
  const [both, turned] = [partIn(form, 'both'), partIn(form, 'turned')];
  if (both) both.hidden = !LOOSE.some((part) => thereIs(draft, part));
  if (turned) turned.hidden = !bothIn(draft).length;
};
