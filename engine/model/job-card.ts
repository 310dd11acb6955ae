import { z } from 'zod';
import { AIR_CELSIUS } from '../calc/air.ts';
import {
  AMOUNT,
  CARD_LISTS,
  CARD_VERSION,
  LATEST_INSTANT,
  MOST,
  MOST_CARDS_REMOVED,
  MOST_LETTERS,
} from './card-limits.ts';
import { FACTS } from './facts.ts';
import { PARTS, TRIALS } from './plan.ts';

/** What every object inherits names nothing of ours: looked up, it would give a function. */
const own = (name: string): boolean => !(name in Object.prototype);

const Id = z
  .string()
  .regex(/^[A-Za-z0-9-]{1,64}$/)
  .refine(own, 'this name is taken by the language')
  .describe('Letters, digits and hyphens.');
const Name = z
  .string()
  .regex(/^[a-z][a-z0-9-]{0,60}$/)
  .refine(own, 'this name is taken by the language');
/** Epoch milliseconds, 1970 to 2200. */
const Instant = z.int().min(0).max(LATEST_INSTANT);
const Words = z.string().max(MOST_LETTERS.notes);
const Span = z
  .strictObject({ from: z.number(), to: z.number() })
  .refine(({ from, to }) => from <= to, 'the smaller number first');
const Humidity = z.number().min(0).max(1);

const celsius = ([least, most]: readonly [number, number]) => z.number().min(least).max(most);

const Climate = z.strictObject({
  celsius: celsius(AIR_CELSIUS.kept),
  relativeHumidity: Humidity,
  surfaceCelsius: celsius(AIR_CELSIUS.kept).optional(),
});

/** What the can says. Times in minutes since the coat was laid. */
const CanLabel = z.strictObject({
  minutes: z.partialRecord(
    z.enum(['open', 'touch', 'recoat', 'light-use', 'cure', 'sand-if-beyond', 'handle', 'no-coat']),
    Span,
  ),
  climate: Climate.optional(),
  limits: z.strictObject({ celsius: Span.optional(), relativeHumidity: Span.optional() }).optional(),
  squareMetersPerLiter: z.number().min(0.01).max(10_000).optional(),
  volumeSolids: Humidity.optional(),
  coats: z.int().min(1).max(20).optional(),
  coatsPerDay: z.int().min(1).max(20).optional(),
});

const Changed = Instant.optional().describe(
  'When it was last corrected or put back; of two versions the later one counts.',
);

const Coat = z.strictObject({
  id: Id,
  changedAt: Changed,
  laidAt: Instant,
  product: Name.describe('The id of a product.'),
  label: CanLabel.optional(),
  celsius: celsius(AIR_CELSIUS.laid).describe('Air, °C.'),
  relativeHumidity: Humidity.describe('Air, 0–1.'),
  surfaceCelsius: celsius(AIR_CELSIUS.laid).optional().describe('The coldest place of the piece, °C.'),
  applicator: z.enum(FACTS.applicator.values).optional(),
  hardener: z.enum(FACTS.hardener.values).optional().describe('What was mixed in; left out where not said.'),
  amount: z
    .strictObject({
      milliliters: z.number().min(AMOUNT.milliliters.min).max(AMOUNT.milliliters.max),
      squareMeters: z.number().min(AMOUNT.squareMeters.min).max(AMOUNT.squareMeters.max),
    })
    .optional(),
  note: Words.optional(),
});

const Flaw = z.strictObject({
  id: Id,
  changedAt: Changed,
  foundAt: Instant,
  defect: Name.describe('The id of a defect.'),
  coat: Id.optional().describe('The coat that lay on top then.'),
  answers: z
    .array(z.tuple([Name, z.enum(['yes', 'no', 'unsure'])]))
    .max(60)
    .describe('The answers of the walk, in their order.'),
  address: z
    .string()
    .max(2000)
    .optional()
    .describe('The page of the walk where it ended, from the site’s root.'),
  part: z.enum(FACTS.part.values).optional().describe('Where on the piece it is, if told.'),
  settledAt: Instant.optional().describe('When it was repaired or found good enough.'),
});

const Repair = z.strictObject({
  id: Id,
  changedAt: Changed,
  doneAt: Instant,
  remedy: Name.describe('The id of a remedy.'),
  flaw: Id.optional(),
  laidNoCoat: z.literal(true).optional().describe('That it laid no coat this time, where its steps lay one.'),
  note: Words.optional(),
});

const Photo = z.strictObject({
  id: Id,
  changedAt: Changed,
  takenAt: Instant,
  width: z.int().min(1).max(4096),
  height: z.int().min(1).max(4096),
  caption: z.string().max(MOST_LETTERS.caption).optional(),
});

const Part = z.strictObject({
  count: z.int().min(0).max(60),
  long: z.number().min(0).max(5000),
  wide: z.number().min(0).max(5000),
});

const Removal = z.strictObject({ list: z.enum(CARD_LISTS), id: Id, at: Instant });

/** One piece of furniture from plan to hand-over. Times in epoch milliseconds, sizes in mm. */
export const JobCard = z.strictObject({
  version: z.literal(CARD_VERSION),
  id: Id,
  madeAt: Instant,
  /** Raised by every change: the newer of two cards with one id is the later one. */
  changedAt: Instant,
  name: z.string().trim().min(1).max(MOST_LETTERS.name),
  kind: z.enum(FACTS.piece.values),
  base: z.enum(FACTS.base.values),
  baseLaidAt: Instant.optional(),
  tone: z.enum(FACTS['base-tone'].values),
  age: z
    .enum([...FACTS.age.values, 'none'])
    .describe('Of the oldest paint below; none where all is her own.'),
  sheen: z.enum(FACTS.sheen.values).optional(),
  product: Name.optional().describe('The id of the product that is planned.'),
  label: CanLabel.optional(),
  parts: z.partialRecord(z.enum(PARTS), Part).optional(),
  trials: z.array(z.enum(TRIALS)).max(TRIALS.length).optional().describe('What the buyer does to it.'),
  plan: z.string().max(4000).optional().describe('The part of the plan’s address behind #.'),
  coats: z.array(Coat).max(MOST.coats),
  flaws: z.array(Flaw).max(MOST.flaws),
  repairs: z.array(Repair).max(MOST.repairs),
  photos: z.array(Photo).max(MOST.photos),
  notes: Words,
  removed: z
    .array(Removal)
    .max(MOST.removed)
    .optional()
    .describe('What was taken off, and when: a file that still holds it does not bring it back.'),
  night: z
    .strictObject({ celsius: celsius(AIR_CELSIUS.laid), relativeHumidity: Humidity.optional() })
    .optional()
    .describe(
      'The coldest air of the nights where it dries. Without a humidity it holds the water of the day.',
    ),
  finishedAt: Instant.optional().describe(
    'When she said that the last coat is laid; from then on it only cures.',
  ),
  handedOverAt: Instant.optional(),
});
export type JobCard = z.infer<typeof JobCard>;
export type CardRemoval = NonNullable<JobCard['removed']>[number];
export type CardCoat = JobCard['coats'][number];
export type CardFlaw = JobCard['flaws'][number];
export type CardRepair = JobCard['repairs'][number];
export type CardPhoto = JobCard['photos'][number];

/** A card that was taken away. */
export const RemovedCard = z.strictObject({ id: Id, name: z.string().max(MOST_LETTERS.name), at: Instant });
export type RemovedCard = z.infer<typeof RemovedCard>;

/** What an export holds. Photos stand beside the cards, by id, as data addresses. */
export const JobFile = z.strictObject({
  format: z.literal('halfdry-jobs'),
  version: z.literal(CARD_VERSION),
  writtenAt: Instant,
  cards: z.array(JobCard),
  removed: z
    .array(RemovedCard)
    .max(MOST_CARDS_REMOVED)
    .optional()
    .describe('Cards that were taken away on this device, and when.'),
  photos: z.record(Id, z.string().regex(/^data:image\/(jpeg|webp|png);base64,[A-Za-z0-9+/=]*$/)).optional(),
  practice: z.unknown().optional().describe('Progress in practice, as the file of practice alone holds it.'),
});
export type JobFile = z.infer<typeof JobFile>;
