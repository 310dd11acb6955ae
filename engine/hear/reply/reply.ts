import type { Stage } from '../../model/stage.ts';
import { firstSentence, lower } from '../../plain/text.ts';
import { isSeen } from '../asked/asks-for.ts';
import type { ActNow, Considered } from '../belief/consider.ts';
import { type Heard, SURE } from '../words/heard.ts';
import type { Span } from '../words/words.ts';
import { type AskedHand, askedHands } from './asked-hands.ts';
import { safetySaid } from './reply-safety.ts';
import { fitted } from './reply-words.ts';

export type ReplyOptions = {
  /** What can not wait for any question, as a spill that stands there; it takes the place of leaving it alone. */
  readonly atOnce?: string | undefined;
  /** The address of the page of a flaw, at the stage where that is known, with its site. */
  readonly linkTo: (defect: string, stage?: Stage) => string;
  /** What was told: what is told is not asked again, and what was asked about is answered first. */
  readonly heard?: Heard | undefined;
  /** The address of the page of a rule: where no flaw is told a reply leads there. */
  readonly ruleAt?: ((rule: string) => string) | undefined;
  /** The address of the page that names a top coat, where that alone is asked. */
  readonly whichAt?: string | undefined;
  /** The page that answers what is asked, where no flaw is told; that of a rule with its first sentence, which does alone. */
  readonly page?:
    | { readonly title: string; readonly at: string; readonly says?: string | undefined }
    | undefined;
  /** The address of a page by its name, for what is asked besides. */
  readonly pageAt?: ((page: string) => string | undefined) | undefined;
  /** The address where what is seen can be told anew. */
  readonly tellAt?: string | undefined;
};

/** A reply to copy: `short` has 500 characters at most. */
export type Reply = { readonly short: string; readonly long: string };

const SHORT = 500;
/** How sure is said in words of one and of several, never more than the engine is. */
const HOW_SURE: readonly (readonly [from: number, one: string, several: string, whole: string])[] = [
  [0.9, 'That looks like', 'Those look like', 'It looks as if'],
  [0.6, 'Most likely that is', 'Most likely those are', 'Most likely'],
  [0.3, 'That may be', 'Those may be', 'It may be that'],
];

/** A name that tells of one coat or film, and of nothing in it or on it: it takes an article in a sentence. */
const ONE =
  /^(?!.*?\b(?:in|into|on|of|the|under|from)\b.*\b(?:coat|film|skin)\b)[\w, ]+?\b(?:coat|film|skin)\b/i;

/** A name that begins with what is many, before it says where or of what: "Marks from heat", "Runs and sags". */
const SEVERAL =
  /\b(?:blotches|bubbles|cobwebs|cracks|craters|dots|edges|fisheyes|hairs|holidays|laps|lines|marks|patches|pinholes|pools|prints|rings|runs|sags|scratches|smears|specks|spits|spots|stains|streaks|stripes|swirls|wrinkles)\b/i;
const HEAD = /^.*?(?=:|\b(?:in|on|of|from|through|that|under|after|by|while|with)\b|$)/i;

const isSeveral = (name: string): boolean => SEVERAL.test(HEAD.exec(name)?.[0] ?? name);

/** A name that is a sentence of its own: "The finish in the can has gone bad", "Paint comes off while waxing". */
const TELLS = /^(?:The finish|Finish|Paint)\b.*\b(?:has|crawls|comes|grabs)\b/;
const inSentence = (name: string): string =>
  ONE.test(name) ? `${/^[aeiou]/i.test(name) ? 'an' : 'a'} ${lower(name)}` : lower(name);

/** What it most likely is, in words no surer than the chances. */
const whatItIs = ({ likely }: Considered): string => {
  const [first, second, third] = likely;
  if (!first) return '';
  const said = HOW_SURE.find(([from]) => first.chance >= from);
  if (said && TELLS.test(first.name)) return `${said[3]} ${lower(first.name)}.`;
  if (said) return `${isSeveral(first.name) ? said[2] : said[1]} ${inSentence(first.name)}.`;
  const names = [first, second, third].flatMap((one) => (one ? [lower(one.name)] : []));
  return `Hard to say from here. It could be: ${names.join('; or ')}.`;
};

/** Acts that leave the film alone: what not to do is all that is done. */
const QUIET = ['leave', 'wait', 'accept', 'stop'];
/** Acts after which nobody need fear for the coat today. */
const KEPT = ['leave', 'wait'];
/** From here on what it is stands, and how dry it is, or what mends it, alone is open. */
const FLAW_SURE = 0.9;
/** A likely flaw stands as well where no other is nearly as likely: "72 %, and the next one 1 %". */
const FAR_AHEAD = { first: 0.6, second: 0.06 } as const;

const isFlawSure = ({ likely: [first, second] }: Considered): boolean =>
  (first?.chance ?? 0) >= FLAW_SURE ||
  ((first?.chance ?? 0) >= FAR_AHEAD.first && (second?.chance ?? 1) <= FAR_AHEAD.second);
const KEEP_IT = 'Nothing has to be stripped or sanded today.';

type Told = { readonly short: string; readonly long: string };

/** What to do and what not, no surer than the verdict: until hands are known, that it is left alone but for what can not wait. */
const ordersOf = (now: ActNow | undefined, firm: boolean, atOnce: string, stands = false): Told => {
  const wary = 'No sanding and no new coat before you know.';
  if (!now || !(firm || (now.flaw && KEPT.includes(now.do)))) {
    const open = !stands ? 'which it is' : now ? 'what mends it' : 'how dry it is';
    const alone = atOnce ? `${atOnce} ${wary}` : `Until we know ${open}, leave it alone. ${wary}`;
    return { short: alone, long: alone };
  }
  if (!firm)
    return {
      short: `${now.verdict}. ${firstSentence(now.say)} ${wary}`,
      long: `${now.verdict}. ${now.say} ${wary}`,
    };
  if (now.hangs) {
    const held = stands
      ? `${now.verdict}: ${lower(now.not)}`
      : `${now.verdict} until we know which it is. ${now.not}`;
    return { short: held, long: held };
  }
  const forbids = /^(?:no|nothing|do not|don[’']t)\b/i.test(now.not);
  if (!QUIET.includes(now.do))
    return {
      short: `${now.verdict}. ${firstSentence(now.say)} ${now.not}`,
      long: `${now.verdict}. ${now.say} ${now.not}`,
    };
  const order = forbids ? `${now.verdict}: ${lower(now.not)}` : `${now.verdict}. ${now.not}`;
  return { short: order, long: `${order} ${now.say}` };
};

/** Kinds that are wiped while they are wet: there a cloth may be right. */
const WIPED = ['oil', 'hardwax-oil', 'wax'];

/**
 * "No, do not wipe them." It is said where hands are off, or where nobody knows yet; what may be right of an oil, of a
 * spill, or of a film that is dry, is left to the verdict.
 */
const denials = (
  { now, stage }: Considered,
  firm: boolean,
  atOnce: string,
  heard: ReplyOptions['heard'],
): string => {
  if (!heard || (firm && now && !QUIET.includes(now.do))) return '';
  const told = (fact: string) => heard.facts.find((one) => one.fact === fact && one.sure >= SURE)?.value;
  const family = told('family');
  const kinds =
    family === undefined
      ? (heard.among.find(({ fact }) => fact === 'family')?.values ?? WIPED)
      : [String(family)];
  const mayWipe = atOnce !== '' || kinds.some((kind) => WIPED.includes(kind));
  // "Can I just poly over it?" of wax: the plan's own row on wax below any film (content/plan.yaml) says why not.
  const overWax = family === 'wax' && askedHands(heard.text).some(({ hand }) => hand === 'coat');
  if (overWax) return 'No, lay no coat over the wax: a film over wax peels, so the wax comes off first.';
  const open: readonly AskedHand[] = mayWipe && !firm ? ['wipe'] : [];
  const denied = askedHands(heard.text)
    .filter(({ hand }) => !open.includes(hand))
    .map((one) => one.denied);
  if (!denied.length) return '';
  const fresh = stage === 'wet' || stage === 'setting';
  return `No, ${denied.slice(0, 2).join(' and ')}${fresh ? '' : ' yet'}.`;
};

/** So long after it was laid, in hours, no coat of the kinds that dry by themselves is dry: nobody is asked how dry it is. */
const SETS = 0.5;
const STILL_SETS = 'Hands off while it sets: no brush, roller, cloth, finger, heat or second coat.';

/** "It's been like twenty minutes, water based": what is wiped while it is open is another matter. */
const stillSets = ({ stage }: Considered, heard: ReplyOptions['heard']): boolean => {
  const told = (fact: string) => heard?.facts.find((one) => one.fact === fact && one.sure >= SURE)?.value;
  const [hours, family] = [told('hours-since-coat'), told('family')];
  if (stage !== undefined || hours === undefined || family === undefined) return false;
  return Number(hours) <= SETS && !WIPED.includes(String(family));
};

/** What would tell how dry it is, where the time of the coat is told already or not. */
const stageAsked = (heard: ReplyOptions['heard']): string =>
  heard?.facts.some(({ fact, sure }) => fact === 'hours-since-coat' && sure >= SURE)
    ? 'Tell me one thing more: how dry is it now? Do not touch it; a drip on paper beside it tells.'
    : 'Tell me one thing more: how dry is it, and when was the coat laid?';

/**
 * So likely must a flaw be to stand beside a danger where nothing that is seen was told, and to be named at all then.
 */
const BESIDE_DANGER = 0.6;
const NAMED = 0.3;

const asked = (next: Considered['next'], heard: ReplyOptions['heard']): string => {
  switch (next?.kind) {
    case 'question':
      return `One thing to check: ${next.ask} ${next.how}`;
    case 'stage':
      return stageAsked(heard);
    case 'age':
      return 'Tell me one thing more: how old is the paint or varnish below?';
    default:
      return '';
  }
};

/**
 * What is said first of what was asked; nothing where harm is under way, and beside a stop nothing that says how to sand.
 */
export const answerTo = (considered: Considered, heard: Heard | undefined): string | undefined => {
  const { rule, calls } = safetySaid(considered);
  if (!heard?.asksFor || calls || rule?.atOnce || (rule?.isStop && heard.asksFor.sands)) return undefined;
  return heard.asksFor.answer;
};

/** What is asked besides, and where that is answered. */
const alsoOf = ({ alsoAsks }: Heard, pageAt: ReplyOptions['pageAt']) => {
  const at = alsoAsks && pageAt?.(alsoAsks.page);
  return at ? { also: { answer: alsoAsks.answer, last: `${alsoAsks.lead} ${at}` } } : {};
};

/** What hands do to a coat that still moves, whatever else is said of it. */
const handsOff = ({ stage, now }: Considered): readonly string[] =>
  (stage === 'wet' || stage === 'setting') && now ? [ordersOf(now, true, '').short] : [];

/** A reply that tells of no flaw: of a danger alone, of a coat that is yet to be chosen, or that the words say too little. */
const withoutFlaw = (
  considered: Considered,
  { ruleAt, whichAt, page, pageAt, tellAt, heard, linkTo }: ReplyOptions,
):
  | {
      readonly says: readonly string[];
      readonly last: string;
      readonly answer?: string;
      /** What a short one says of a stop where an answer stands right behind it. */
      readonly stop?: string;
      /** What is asked besides: its answer, and the words before the address that goes on from there. */
      readonly also?: { readonly answer: string; readonly last: string };
    }
  | undefined => {
  const { rule, calls, line } = safetySaid(considered);
  if (heard && tellAt && !rule && isContent(heard))
    return {
      says: [
        ...(THANKS.test(heard.text) ? ['You are welcome.'] : []),
        'From these words nothing is wrong with it now, so there is nothing to do.',
      ],
      last: `If something shows again, tell it here: ${tellAt}`,
    };
  const { likely } = considered;
  const chance = likely[0]?.chance ?? 0;
  const seen = heard === undefined || heard.signs.some((sign) => isSeen(sign, restsOf(heard), heard.named));
  const more = rule && ruleAt ? `Why, and what to do: ${ruleAt(rule.id)}` : '';
  const answer = answerTo(considered, heard);
  // A stop goes before any answer, and leads to its own page.
  if (heard?.asksFor && rule?.isStop && more && !calls)
    return answer
      ? { says: [answer], last: more, stop: line, ...alsoOf(heard, pageAt) }
      : { says: [], last: more };
  if (heard?.asksFor && page && answer)
    return { says: [], last: `${heard.asksFor.lead} ${page.at}`, answer, ...alsoOf(heard, pageAt) };
  if (rule && (calls || page?.at === ruleAt?.(rule.id) || (!seen && chance < BESIDE_DANGER)) && more)
    // "Look after the child" takes nothing back from hands off a coat that still moves.
    return { says: calls ? [] : handsOff(considered), last: more };
  if (whichAt) return { says: [], last: `Which top coat fits it, with the reason: ${whichAt}` };
  const hands = handsOff(considered);
  // A rule that is told already is led to, and not said again.
  const isToldOf = considered.warnings.some(({ id }) => ruleAt && page?.at === ruleAt(id));
  if (page && rule?.isStop && more) return { says: hands, last: more };
  if (page)
    return {
      says: [...hands, ...(page.says && !isToldOf ? [page.says] : [])],
      last: `A page for that, ${page.title}: ${page.at}`,
    };
  const feared = likely[0];
  if (feared && heard?.feared?.includes(feared.defect) && !heard.otherTongue)
    return {
      says: [
        ...hands,
        `You ask of ${inSentence(feared.name.replace(/:.*/, ''))}, and tell of none that is there.`,
      ],
      last: `What it looks like, why it comes, and what to do: ${linkTo(feared.defect)}`,
    };
  if (!tellAt || !(heard?.otherTongue || (!seen && chance < NAMED))) return undefined;
  const why = heard.otherTongue ? 'I read only English, so' : 'From these words';
  return {
    says: [
      `${why} I cannot tell what it is.`,
      'Until we know which it is, leave it alone: no sanding and no new coat.',
      'Tell me what you see, what was laid and when, and how dry it is.',
    ],
    last: `Or tell it here: ${tellAt}`,
  };
};

/** Words of somebody who thanks or is glad, and of one who has more to ask all the same. */
const THANKS = /\b(?:thanks|thank you|thx|ty so much|grateful)\b/i;
const GLAD =
  /\b(?:looks?|looking|came out|turned out|went|is|are|feels?) (?:\w+ )?(?:perfect(?:ly)?|great|beautiful(?:ly)?|amazing|lovely|awesome|fantastic|gorgeous|wonderful|flawless)\b/i;
const ASKS_ON =
  /\?|\b(?:but|though|however|still|except|now|again|yet|help|how|what|why|when|should|can i|could|advance|tia|problem|issue|wrong|wondering|until|before|otherwise|(?<!the )advice on|any (?:idea|tip|advice|suggestion)s?|please)\b/i;
/** A longer one tells a story. */
const THANKED = 200;

/** Thanks or praise and nothing more: nobody asks, and nothing stands there that has to be mended. */
const isContent = ({ text, names }: Heard): boolean =>
  text.length <= THANKED &&
  !ASKS_ON.test(text) &&
  (THANKS.test(text) || (GLAD.test(text) && !names.some(({ denied }) => !denied)));

/** The words that facts rest on. */
const restsOf = ({ facts, among }: Heard): readonly Span[] =>
  [...facts, ...among].flatMap(({ rests }) => rests);

/**
 * A reply to somebody else's post: what saves first, the most pressing caution, what it most likely is, what to do now and
 * what not, when to look again, the one thing to check, and the page that goes on from there. The long one says why, too.
 */
export const reply = (considered: Considered, options: ReplyOptions): Reply => {
  const { linkTo, atOnce = '', heard } = options;
  const { likely, warnings, now, next, stage } = considered;
  const [first] = likely;
  const link = first ? linkTo(first.defect, stage) : '';
  const { urgent, first: caution, besides, later, all, allLater } = safetySaid(considered);
  const fresh = stage === 'wet' || stage === 'setting';
  const firm = now !== undefined && (now.sure || fresh);
  // "No, do not sand it yet" is no answer to "do I have to sand between coats".
  const no = options.page && !fresh ? '' : denials(considered, firm, atOnce, heard);
  // What hangs on a unit that was not told is said, so that a reader can put it right.
  const taken = heard?.taken ?? '';
  const alone = withoutFlaw(considered, options);
  if (alone) {
    // What is asked for has its own answer.
    const denied = alone.answer ? '' : no;
    const { also, last } = alone;
    // The short one keeps the first answer, and names the other question by its page.
    const second = also && `And: ${lower(also.last)}`;
    const room = SHORT - (second ? second.length + 1 : 0);
    // Behind a long link an answer keeps what it says first.
    const answer = alone.answer ?? '';
    const answers = answer.length + last.length < room ? [answer] : answer.split(/(?<=\.) (?=[A-Z\d])/);
    const short = fitted(
      alone.stop
        ? [alone.stop, ...alone.says, ...besides, taken]
        : [...urgent, denied, ...answers, caution, ...besides, ...alone.says, taken],
      last,
      room,
    );
    return {
      short: second ? `${short} ${second}` : short,
      long: [
        ...(urgent.length ? all : [denied, alone.answer ?? '', ...all]),
        ...allLater,
        urgent.length ? denied : '',
        alone.says.join(' '),
        taken,
        last,
        ...(also ? [also.answer, also.last] : []),
      ]
        .filter(Boolean)
        .join('\n\n'),
    };
  }
  const drying = fresh ? heard?.stillDrying : undefined;
  const what = drying?.answer ?? whatItIs(considered);
  const sets = stillSets(considered, heard);
  const doing = sets
    ? { short: STILL_SETS, long: STILL_SETS }
    : ordersOf(now, firm, firm ? '' : atOnce, isFlawSure(considered));
  // What hangs on a question is looked into now: there is nothing to wait for yet.
  const settled = firm && !now?.hangs ? now : undefined;
  const again = settled?.again ?? '';
  const kept = settled && KEPT.includes(settled.do) && !warnings.length ? KEEP_IT : '';
  const check = sets ? '' : asked(next, heard);
  // On a coat that still moves the short one says hands off and no more: there is nothing to try on it.
  const shortCheck = fresh ? '' : firstSentence(check);
  const way =
    drying?.lead ??
    (now?.hangs
      ? 'A question or two there tell what may be done now:'
      : firm
        ? 'What to do, step by step:'
        : 'What it is, and what to do:');
  const otherFlaws = likely
    .slice(1, 3)
    .filter(({ chance }) => chance >= 0.1)
    .map(({ defect, name }) => `Or ${lower(name)}: ${linkTo(defect, stage)}`);
  const before = [...urgent, no, caution, ...besides].filter(Boolean);
  // Where dangers leave no room for the flaw, no sentence may lead on from its name.
  const isSaid = !urgent.length || (first?.chance ?? 0) >= NAMED;
  const named = isSaid && [...before, what, `${way} ${link}`].join(' ').length <= SHORT;
  return {
    short: fitted(
      [...before, ...(named ? [what, taken, doing.short, again, kept, shortCheck, ...later] : [])],
      link && `${named ? way : 'On the coat itself, after that:'} ${link}`,
      SHORT,
    ),
    long: [
      ...(urgent.length ? [...all, no] : [no, ...all]),
      [what, taken].filter(Boolean).join(' '),
      doing.long,
      [again, kept].filter(Boolean).join(' '),
      check,
      ...allLater,
      link && `${way} ${link}`,
      ...otherFlaws,
    ]
      .filter(Boolean)
      .join('\n\n'),
  };
};
