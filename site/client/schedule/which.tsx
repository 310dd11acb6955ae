import { render } from 'preact';
import * as v from 'valibot';
import { type Choice, chooseCoat, type Wanted } from '#engine/fitness.ts';
import { FACTS } from '#engine/model/facts.ts';
import { choices } from '../../shared/choices.ts';
import type { PlanData } from '../../shared/plan-data.ts';
import { planRules } from '../../shared/plan-rules.ts';
import { ruleUrl, SAFETY, SCHEDULE } from '../../shared/urls.ts';
import { statusLine } from '../shared/element.ts';
import { NetworkFault } from '../shared/fetch-json.ts';
import { draftIn, fillForm } from '../shared/form/in-page.ts';
import { saidTone, toneOver } from '../shared/form/tone-over.ts';
import { TRIALS } from '../shared/form/trials.ts';
import { readPageData } from '../shared/page-data.ts';
import { planTables } from '../shared/plan-tables.ts';

const WEARS = ['low', 'normal', 'high'] as const;
const PRESETS = v.array(
  v.object({
    id: v.string(),
    wear: v.picklist(WEARS),
    piece: v.picklist(FACTS.piece.values),
    trials: v.array(v.picklist(TRIALS)),
  }),
);
type Preset = v.InferOutput<typeof PRESETS>[number];
type Draft = Readonly<Record<string, string>>;

const AGES = [...FACTS.age.values, 'none'] as const;
const oneOf = <T extends string>(values: readonly T[], text: string | undefined): T | undefined =>
  values.find((value) => value === text);

/** Of the ready-made pieces of a kind the one that meets most: who asks for a table means one that is used. */
const presetOf = (presets: readonly Preset[], piece: string): string =>
  presets
    .filter((one) => one.piece === piece)
    .sort((a, b) => b.trials.length - a.trials.length || WEARS.indexOf(b.wear) - WEARS.indexOf(a.wear))[0]
    ?.id ?? piece;

/** What the form tells. A piece without a preset is one that no kind is named for. */
const wantedIn = (draft: Draft, presets: readonly Preset[]): Wanted => {
  const preset = presets.find(({ id }) => id === draft['preset']);
  return {
    kind: preset?.piece ?? oneOf(FACTS.piece.values, draft['preset']),
    wear: preset?.wear ?? 'normal',
    trials: TRIALS.filter((trial) => draft['trials']?.split(',').includes(trial)),
    base: oneOf(FACTS.base.values, draft['base']),
    tone: oneOf(FACTS['base-tone'].values, draft['tone']),
    age: oneOf(AGES, draft['age']) ?? 'none',
  };
};

/** All that the answer assumes, in the words of the form, in one line: paper has no form. */
const toldIn = (form: HTMLFormElement): string => {
  const chosen = [...form.querySelectorAll('select')].map(({ selectedOptions: [one] }) => one?.text ?? '');
  const [piece = '', base = '', tone = '', age = ''] = chosen;
  const ticked = [...form.querySelectorAll<HTMLInputElement>('input:checked')].map(
    (tick) => tick.labels?.[0]?.textContent?.trim() ?? '',
  );
  const below = [base, tone].filter(Boolean).join(', ').toLowerCase();
  const older = age.startsWith('None: ') ? age.slice('None: '.length) : `older paint: ${age}`;
  const parts = [piece, below, older.toLowerCase(), ticked.join(', ').toLowerCase()];
  return parts.filter(Boolean).join(' · ');
};

/** What stands in the form and was not said, in its words: a text or a link tells of some fields alone. */
const exampleIn = (form: HTMLFormElement): string => {
  const said = new URLSearchParams(location.hash.slice(1));
  const open = (name: string) => !said.has(name) && !(name === 'preset' && said.has('piece'));
  const words = [...form.querySelectorAll('select')].flatMap(({ name, value, selectedOptions: [one] }) =>
    open(name) && value && one ? [one.text] : [],
  );
  return words.map((text, at) => (at ? text.toLowerCase() : text)).join(', ');
};

const familyNames = (families: readonly string[]): string =>
  Object.entries(choices.family.values)
    .filter(([family]) => families.includes(family))
    .map(([, name]) => name)
    .join(', ');

type Props = {
  readonly choice: Choice;
  readonly told: string;
  readonly planLink: string;
  /** What nobody has said yet, as the form begins with it: the answer is an example for that. Nothing once all is said. */
  readonly example: string;
  /** Nobody has said yet whether older paint lies below: the answer is that for a piece without. */
  readonly ageOpen: boolean;
};

/** One kind with its reason, what to mind, and why not the others; or a plain no. */
const Chosen = ({ choice: { chosen, noes, others }, told, planLink, ageOpen, example }: Props) => {
  if (!chosen)
    return (
      <>
        <p class="of for-paper">{told}</p>
        <h2 class="verdict stop">
          <span>{noes.some(({ code }) => code === 'rule') ? 'Stop first' : 'None'}</span>
        </h2>
        {noes.map(({ says, instead }) => (
          <div key={says}>
            <p class="why">{says}</p>
            {instead && (
              <p>
                <b>Instead: </b>
                {instead}
              </p>
            )}
          </div>
        ))}
        <p>
          <a href={SAFETY}>All of safety</a>
        </p>
      </>
    );
  // Of a kind that two rows speak of, the first is enough.
  const against = others
    .map(({ families, why }, at) => ({
      families: families.filter(
        (family) => !others.slice(0, at).some((row) => row.families.includes(family)),
      ),
      why,
    }))
    .filter(({ families }) => families.length);
  const minded = chosen.care.filter((row, at) => chosen.care.findIndex(({ why }) => why === row.why) === at);
  return (
    <>
      {/* The form stands beside it, or right above; paper has none. */}
      <p class="of for-paper">{told}</p>
      {example && <p class="small example">For example, until you say yours: {example}</p>}
      <h2 class="verdict repair">
        <span>{chosen.product.name}</span>
      </h2>
      {ageOpen && (
        <p class="older">
          <b>Only where nothing older lies below.</b> Old paint or varnish may hold lead: no sanding before
          every layer is tested. <a href={ruleUrl('is-there-old-paint-below')}>Is there old paint below?</a>
        </p>
      )}
      <p class="why">{chosen.why}</p>
      {(chosen.wait || minded.length > 0) && (
        <>
          <h3>Mind</h3>
          <ul>
            {chosen.wait && (
              <li>
                <b>Let what lies below dry first.</b> {chosen.wait}
              </li>
            )}
            {minded.map(({ why, instead }) => (
              <li key={why}>
                {why} {instead}
              </li>
            ))}
          </ul>
        </>
      )}
      <a class="tape strip" href={planLink}>
        <b>Plan it</b> <span>Coats, how much to buy, and clock times</span>
      </a>
      {against.length > 0 && (
        <>
          <h3>Why not another?</h3>
          <dl>
            {against.map(({ families, why }) => (
              <div key={why}>
                <dt>{familyNames(families)}</dt>
                <dd>{why}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
      <p class="small">The label on the can wins. Try it on a hidden spot first.</p>
    </>
  );
};

/** The form that asks what the piece is, and beside it the kind of top coat to take. What is told stands behind #. */
export class WhichElement extends HTMLElement {
  #stop = new AbortController();
  #data: PlanData | undefined;
  /** She chose what shows through herself: another base does not change it. */
  #toneHers = false;

  connectedCallback() {
    this.#stop = new AbortController();
    const { signal } = this.#stop;
    const form = this.querySelector('form');
    const place = this.querySelector<HTMLElement>('[data-part=chosen]');
    if (!form || !place) throw new Error('the page brought no form and no place for its answer');
    // What does without script is folded away where there is one.
    document.querySelector('[data-part=by-hand]')?.removeAttribute('open');
    const presets = readPageData(PRESETS, form.dataset['presets']);
    form.addEventListener('change', ({ target }) => this.#changed(target, form, presets, place), { signal });
    form.addEventListener('submit', (event) => event.preventDefault(), { signal });
    addEventListener('hashchange', () => this.#follow(form, presets, place), { signal });
    void this.#open(form, presets, place);
  }

  disconnectedCallback() {
    this.#stop.abort();
  }

  async #open(form: HTMLFormElement, presets: readonly Preset[], place: HTMLElement): Promise<void> {
    try {
      this.#data = await planTables();
      this.#follow(form, presets, place);
    } catch (error) {
      if (!(error instanceof NetworkFault)) throw error;
      place.replaceChildren(
        statusLine('The tables could not be loaded: no signal? Most answers stand below, at a glance.'),
      );
    }
  }

  #follow(form: HTMLFormElement, presets: readonly Preset[], place: HTMLElement): void {
    const { piece, ...told } = Object.fromEntries(new URLSearchParams(location.hash.slice(1)));
    const preset = piece === undefined ? told['preset'] : presetOf(presets, piece);
    this.#toneHers = saidTone({ ...draftIn(form), ...told });
    // A text or a link may tell of the base alone.
    const tone = this.#toneHers || !told['base'] ? {} : { tone: toneOver(told['base']) };
    this.#put(form, presets, { ...tone, ...told, ...(preset !== undefined && { preset }) });
    this.#show(form, presets, place);
  }

  /** What a ready-made piece meets comes with it, where nothing else is told. */
  #put(form: HTMLFormElement, presets: readonly Preset[], draft: Draft): void {
    const found = presets.find(({ id }) => id === draft['preset']);
    fillForm(form, { ...(found && { trials: found.trials.join(',') }), ...draft });
    // An old finish is older paint or varnish; where nobody has said how old, it is not known. What she said stays.
    const { base, age } = draftIn(form);
    if (base === 'old-finish' && !age) fillForm(form, { age: 'unknown' });
  }

  #changed(
    target: EventTarget | null,
    form: HTMLFormElement,
    presets: readonly Preset[],
    place: HTMLElement,
  ): void {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    if (target.name === 'tone') this.#toneHers = true;
    const tone = target.name === 'base' && !this.#toneHers ? { tone: toneOver(target.value) } : {};
    this.#put(form, presets, target.name === 'preset' ? { preset: target.value } : tone);
    history.replaceState(history.state, '', `#${new URLSearchParams(this.#draft(form))}`);
    this.#show(form, presets, place);
  }

  #draft(form: HTMLFormElement): Record<string, string> {
    return { trials: '', ...draftIn(form) };
  }

  #show(form: HTMLFormElement, presets: readonly Preset[], place: HTMLElement): void {
    if (!this.#data) return;
    const draft = this.#draft(form);
    const wanted = wantedIn(draft, presets);
    const choice = chooseCoat(this.#data.plan, planRules(this.#data), wanted, this.#data.products);
    const planLink = `${SCHEDULE}#${new URLSearchParams({
      ...draft,
      kind: wanted.kind ?? 'furniture',
      wear: wanted.wear ?? 'normal',
      product: choice.chosen?.product.id ?? '',
    })}`;
    render(
      <Chosen
        choice={choice}
        told={toldIn(form)}
        planLink={planLink}
        ageOpen={!draft['age']}
        example={exampleIn(form)}
      />,
      place,
    );
  }
}
