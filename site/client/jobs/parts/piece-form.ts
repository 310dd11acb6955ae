import * as v from 'valibot';
import { type CardChange, type CardField, type CardStart, MOST_LETTERS } from '#engine/jobs.ts';
import { FACTS } from '#engine/model/facts.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { isKeyOf } from '#engine/plain/entry-of.ts';
import {
  anyOf,
  type Field,
  maybeOneOf,
  oneOf,
  optionalInstant,
  optionalNumber,
} from '../../shared/form/fields.ts';
import { type Draft, type FieldFault, readForm, type Values, writeForm } from '../../shared/form/form.ts';
import { draftIn, fillForm, nameUnits } from '../../shared/form/in-page.ts';
import { TRIALS } from '../../shared/form/trials.ts';
import type { Units } from '../../shared/form/units.ts';
import { onlyDefined } from '../../shared/only-defined.ts';
import type { Refusal } from '../store/fault.ts';

const pieceName: Field<string> = {
  schema: () =>
    v.pipe(
      v.string(),
      v.trim(),
      v.nonEmpty('Give the piece a name, so that you find it again.'),
      v.maxLength(MOST_LETTERS.name, `A name takes ${MOST_LETTERS.name} letters at most.`),
    ),
  write: (name) => name,
};
const PRODUCT_ID = /^[a-z][a-z0-9-]{0,60}$/;
/** The id of a product, also of one that is not known here. */
const product: Field<string | undefined> = {
  schema: () =>
    v.pipe(
      v.string(),
      v.check((id) => !id || PRODUCT_ID.test(id), 'Choose one of these products.'),
      v.transform((id) => id || undefined),
    ),
  write: (id) => id ?? '',
};

const COLDEST = -30;
const WARMEST = 50;
/** What of a card the form does not ask: it comes of a plan, of other parts of the page, or under another name. */
type NotAsked = 'label' | 'parts' | 'plan' | 'notes' | 'finishedAt' | 'handedOverAt' | 'baseLaidAt';
/** A field that the card gets does not compile until it stands in the form, or above. */
type AskedOfPiece = Exclude<CardField, NotAsked>;
/** Fields of the card that the form calls otherwise. */
const NAMED_OTHERWISE: Readonly<Record<string, PieceField>> = { baseLaidAt: 'base-laid' };

/** What is asked of a piece, by the names of the form’s fields. */
export const PIECE_FIELDS = {
  name: pieceName,
  kind: oneOf(FACTS.piece.values),
  base: oneOf(FACTS.base.values),
  'base-laid': optionalInstant('the day when the base was laid'),
  tone: oneOf(FACTS['base-tone'].values),
  age: oneOf([...FACTS.age.values, 'none']),
  product,
  sheen: maybeOneOf(FACTS.sheen.values),
  trials: anyOf(TRIALS),
  night: optionalNumber({
    what: 'the coldest night',
    least: COLDEST,
    most: WARMEST,
    quantity: 'fine-degrees',
  }),
  'night-humidity': optionalNumber({
    what: 'the humidity by night',
    unit: 'percent',
    least: 0,
    most: 100,
    digits: 0,
  }),
} as const satisfies Readonly<Record<AskedOfPiece, unknown> & Record<string, unknown>>;
type PieceField = keyof typeof PIECE_FIELDS;
type PieceValues = Values<typeof PIECE_FIELDS>;

const isPieceField = (name: string): name is PieceField => isKeyOf(PIECE_FIELDS, name);

const within = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

const nightOf = ({ night, 'night-humidity': damp }: Partial<PieceValues>): JobCard['night'] =>
  night === undefined
    ? undefined
    : {
        celsius: within(night, COLDEST, WARMEST),
        ...(damp !== undefined && { relativeHumidity: within(damp, 0, 100) / 100 }),
      };

/** What each field is on the card. */
const changeOf = (field: PieceField, read: Partial<PieceValues>): CardChange => {
  if (field === 'night' || field === 'night-humidity') return { night: nightOf(read) };
  if (field === 'base-laid') return { baseLaidAt: read['base-laid'] };
  if (field === 'trials') return { trials: [...(read.trials ?? [])] };
  return { [field]: read[field] };
};

/** Humidity without a temperature tells nothing. */
const aloneFault = (draft: Draft): readonly FieldFault[] =>
  draft['night-humidity']?.trim() && !draft['night']?.trim()
    ? [
        {
          field: 'night-humidity',
          says: 'Give the coldest temperature too: humidity alone tells nothing.',
        },
      ]
    : [];

export type PieceRead = {
  /** Every fault of the form, by its field. */
  readonly faults: readonly FieldFault[];
  /** What a field changes; nothing where it is at fault, or no field of the piece. */
  readonly changeOf: (field: string) => CardChange | undefined;
  /** All of it, for a new card; nothing where a field is at fault. */
  readonly given: CardStart | undefined;
};

/** Reads the form of a piece as it stands, each field by itself. */
export const readPiece = (draft: Draft, units: Units): PieceRead => {
  const read = readForm(PIECE_FIELDS, draft, units);
  const faults = [...read.faults, ...aloneFault(draft)];
  const wrong = new Set(faults.map(({ field }) => field));
  const values: Partial<PieceValues> = read.values;
  const fields = Object.keys(PIECE_FIELDS).filter(isPieceField);
  const nightWrong = wrong.has('night') || wrong.has('night-humidity');
  return {
    faults,
    changeOf: (field) => {
      if (!isPieceField(field) || wrong.has(field)) return undefined;
      return field.startsWith('night') && nightWrong ? undefined : changeOf(field, values);
    },
    given:
      read.ok && !faults.length
        ? {
            name: read.values.name,
            kind: read.values.kind,
            base: read.values.base,
            tone: read.values.tone,
            age: read.values.age,
            ...onlyDefined(Object.assign({}, ...fields.map((field) => changeOf(field, values)))),
          }
        : undefined,
  };
};

const EMPTY: Draft = Object.fromEntries(Object.keys(PIECE_FIELDS).map((field) => [field, '']));

/** A card as it stands in the form. */
export const pieceDraft = (card: JobCard, units: Units): Draft => ({
  ...EMPTY,
  ...writeForm(
    PIECE_FIELDS,
    {
      ...card,
      'base-laid': card.baseLaidAt,
      trials: card.trials ?? [],
      night: card.night?.celsius,
      'night-humidity':
        card.night?.relativeHumidity === undefined ? undefined : card.night.relativeHumidity * 100,
    },
    units,
  ),
});

/** Puts a card into the form, with what was there `before`. What she is typing, or is told to mend, stays as typed. */
export const fillPiece = (
  form: HTMLFormElement,
  card: JobCard,
  before: JobCard | undefined,
  units: Units,
): void => {
  const [was, is, now] = [before && pieceDraft(before, units), pieceDraft(card, units), draftIn(form)];
  const typing = (name: string) => {
    const field = form.elements.namedItem(name);
    if (!was || !(field instanceof HTMLElement) || (now[name] ?? '') === was[name]) return false;
    return document.activeElement === field || field.getAttribute('aria-invalid') === 'true';
  };
  fillForm(form, Object.fromEntries(Object.entries(is).filter(([name]) => !typing(name))));
  nameUnits(form, units);
};

/** Why the store would not take a card, beside the fields that it lies in. */
export const refusedFields = (refusals: readonly Refusal[]): readonly FieldFault[] =>
  refusals.flatMap(({ field: at, says }) => {
    const [name = ''] = at.split(', ');
    const field = NAMED_OTHERWISE[name] ?? name;
    return isPieceField(field) ? [{ field, says }] : [];
  });

/** A name without the tag that says it is still needed: what stands on the card has been said. */
const plainName = (name: Element): string =>
  [...name.childNodes]
    .map((part) => (part instanceof Element && part.matches('[data-needed]') ? '' : part.textContent))
    .join('')
    .trim();

/** What the form holds, as the head of the card: each thing by the name of its field, what is not said left out. */
export const pieceFacts = (form: HTMLFormElement): readonly (readonly [name: string, says: string])[] => {
  const chosen = [...form.querySelectorAll('select, fieldset:has([type=radio])')].flatMap((field) => {
    const list = field instanceof HTMLSelectElement ? field : undefined;
    const name = list ? list.labels[0] : field.querySelector('legend');
    const choice = list ? list.value && list.selectedOptions[0] : field.querySelector('label:has(:checked)');
    return name && choice ? [[plainName(name), choice.textContent.trim()] as const] : [];
  });
  const ticks = [...form.querySelectorAll<HTMLInputElement>('[name=trials]:checked')];
  const meets = ticks.flatMap((tick) => tick.parentElement?.textContent?.trim() ?? []);
  const name = ticks[0]?.closest('fieldset')?.querySelector('legend')?.textContent?.trim();
  return name ? [...chosen, [name, meets.join(', ').toLowerCase()]] : chosen;
};
