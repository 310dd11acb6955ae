/** The names behind the two doors: a change here is a change for everyone who calls the engine. */
import { expect, it } from 'vitest';
import * as door from '#engine/index.ts';
import * as service from '#engine/model/index.ts';

it('pins the names of the door', () => {
  expect(Object.keys(door).sort()).toEqual([
    'STAGES',
    'STANDINGS',
    'actOf',
    'addressOf',
    'answerOf',
    'answersOverdue',
    'asksOf',
    'canCheck',
    'cautionsApart',
    'decide',
    'disturbsOldFilm',
    'emptyCase',
    'factsIn',
    'isAsk',
    'isOfSteps',
    'knowledgeOf',
    'nextQuestion',
    'nodesOf',
    'partOf',
    'possible',
    'reached',
    'readAddress',
    'remediesTold',
    'resolve',
    'separatedBy',
    'stageOf',
    'stretches',
    'visits',
    'walk',
    'withAnswer',
    'withFact',
    'withStanding',
    'without',
  ]);
});

it('pins the names of the service door', () => {
  expect(Object.keys(service).sort()).toEqual(['ENTRY_KINDS', 'FOLDERS', 'ID_PATTERN', 'SCHEMAS']);
});
