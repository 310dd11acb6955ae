import * as v from 'valibot';
import { holds } from '#engine/case/condition.ts';
import { stageOf } from '#engine/index.ts';
import type { ConditionInput } from '#engine/model/condition.ts';
import { reached, STAGES, type Stage } from '#engine/model/stage.ts';
import { isOneOf } from '#engine/plain/entry-of.ts';
import { STAGE_WORDS } from '../../shared/stages.ts';
import { readCase } from '../case/store.ts';
import { caseNow } from '../clock/case-now.ts';
import { asPart, element, partIn } from '../shared/element.ts';
import { openedAfresh } from '../shared/opened-afresh.ts';
import { objectWith, readPageData } from '../shared/page-data.ts';
import { tellAtCheck } from './at-check.ts';
import { keepTapped, questionOf } from './tapped.ts';

const KNOWN = v.array(v.object({ when: objectWith<ConditionInput>(), answer: v.picklist(['yes', 'no']) }));

/** Whoever goes down to what is left sees all of it. */
const openRest = () => document.querySelector('#left > details')?.setAttribute('open', '');

/** The answers to a question of the search for the flaw: keeps what is tapped, and passes over what is known. */
export class SeenElement extends HTMLElement {
  #stop = new AbortController();

  connectedCallback() {
    this.#stop = new AbortController();
    this.addEventListener('click', keepTapped, { signal: this.#stop.signal });
    this.querySelector('[href="#left"]')?.addEventListener('click', openRest, { signal: this.#stop.signal });
    void this.#passOver(tellAtCheck(this, readCase()));
  }

  disconnectedCallback() {
    this.#stop.abort();
  }

  /**
   * Someone who goes back wants to see the question again. Can't tell is asked again: she may know by now. What would
   * harm the film as wet as it is known to be is not checked at all.
   */
  async #passOver(toldAtCheck: Promise<void>) {
    const on = await caseNow();
    this.#leaveOut(on['family']?.value);
    const { safeFrom } = this.dataset;
    const stage = stageOf(on);
    const harms = stage && isOneOf(STAGES, safeFrom) && !reached(stage, safeFrom) ? stage : undefined;
    if (harms) {
      await toldAtCheck;
      this.#forbid(harms);
    }
    if (!openedAfresh()) return;
    const given = on[questionOf(this) ?? '']?.value;
    const follows = readPageData(KNOWN, this.dataset['known'] ?? '[]').find(
      (rule) => holds(rule.when, (fact) => on[fact]?.value) === 'yes',
    );
    const answer = given === 'yes' || given === 'no' ? given : (follows?.answer ?? (harms && 'unsure'));
    const strip = this.querySelector<HTMLAnchorElement>(`a[data-answer="${answer}"]`);
    // Where doubt is kept open no longer, can't tell leads down this page, to what is left.
    if (answer && strip && strip.pathname !== location.pathname) location.replace(strip.href);
  }

  /** What her kind of top coat never shows is not still possible; the count that stood there holds no more. */
  #leaveOut(family: unknown) {
    if (typeof family !== 'string') return;
    const never = [...document.querySelectorAll<HTMLElement>('#left [data-on]')].filter(
      ({ dataset }) => !dataset['on']?.split(' ').includes(family),
    );
    for (const one of never) one.hidden = true;
    if (never.length) partIn(document, 'still')?.replaceChildren('Still possible');
  }

  #forbid(stage: Stage) {
    const how = partIn(document, 'how');
    if (!how || partIn(document, 'not-yet')) return;
    how.hidden = true;
    const now = STAGE_WORDS[stage].name.toLowerCase();
    const words = element('b', {}, `Your coat is ${now} now: do not touch it. Tap “Can’t tell”.`);
    how.after(asPart('not-yet', element('p', { className: 'how' }, words)));
  }
}
