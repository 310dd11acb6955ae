/** Whoever has a found piece has no can, no tool and no memory of the day: each check has a way for her. Common practice. */
import { expect, it } from 'vitest';
import { nodesOf } from '#engine/index.ts';
import { visits } from '#engine/knowledge/tree.ts';
import { known } from './knowledge.ts';

const asked = new Set(
  known.defects.flatMap(({ tree }) =>
    [...visits(tree)].flatMap(({ branch }) => ('ask' in branch ? [branch.ask as string] : [])),
  ),
);
/** A check that nobody can make who has only the piece. */
const BY_THE_CAN =
  /\b(?:the can|a can|tin|look up|data sheet|product name|thermometer|tray|on (?:a piece of )?glass|on white paper|on a scrap|photo|strainer|message|whoever)\b/i;
/** Of what is asked of the can, the tool or the open coat alone nothing is left on a finished piece. */
const OF_OWN_WORK = [
  'just-laid',
  'within-wash-time',
  'can-still-frozen',
  'stirs-smooth',
  'thin-skin-only',
  'smells-sour',
  'pad-felt-wet',
  'tool-was-damp',
  'dark-wax-used',
  'tin-lists-oil',
  'base-color-in-the-clear',
];

it('a check by the can, the day or the maker has one on the piece beside it', () => {
  const without = known.questions
    .filter(
      ({ id, by }) => asked.has(id) && (by === 'remember' || by === 'probe') && !OF_OWN_WORK.includes(id),
    )
    .filter(
      (one) =>
        BY_THE_CAN.test(one.sure) &&
        !/\b(?:look|count|put|lay|wet) /i.test(
          one.sure.replace(
            /look up[^;.]*|look for the date[^;.]*|look at (?:a photo|the can|the tray)[^;.]*/gi,
            '',
          ),
        ),
    )
    .filter((one) => !one['on-the-piece'])
    .map(({ id, sure }) => `${id}: ${sure}`);
  expect(without).toEqual([]);
});

it('an end that waits for a check says what each answer would mean', () => {
  const silent = known.defects.flatMap(({ id }) =>
    [...nodesOf(known, id)].flatMap(({ walked, address }) => {
      if (walked.kind !== 'outcome' || walked.alike || !walked.check) return [];
      const { yes, no } = walked.check;
      const tells = [yes, no].every(({ action, leaves }) => action ?? leaves.some(({ cause }) => cause));
      return tells ? [] : [[id, ...address].join('/')];
    }),
  );
  expect(silent).toEqual([]);
});
