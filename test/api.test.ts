/** The names behind each door of the engine: a change here is a change for everyone who calls it. */
import { expect, it } from 'vitest';
import packaged from '../package.json' with { type: 'json' };

/** What a door opens to, sorted; the service door, which is none of the package, brings the schemas. */
const NAMES: Readonly<Record<string, string>> = {
  'engine/index.ts':
    'STAGES STANDINGS actOf addressOf answerOf answersOverdue asksOf canCheck cautionsApart decide disturbsOldFilm emptyCase factsIn isAsk isOfSteps knowledgeOf nextQuestion nodesOf partOf possible reached readAddress remediesTold resolve separatedBy stageOf stretches visits walk withAnswer withFact withStanding without',
  'engine/calc.ts':
    'bubbleRise cie76 ciede2000 clearTransmittance coatsFor dewPoint dewPointMargin dryFilmMicrometers drying fallingFilm gradesOf grainMicrometers hazeDifference humidityRatio labFromHex labFromXyz levelingSeconds litersFor nearestP quickestLevelingSeconds reflectanceOver sagLimitMicrometers saturationPressure sayGrit sayProblem sayValue sayWeather scratchDepth squareMetersPerLiter vaporPressureDeficit water waterSurfaceTension weatherVerdict wetBulb wetFilmFromCoverage wetFilmMicrometers woodMoisturePercent woodMoistureRange yellowness',
  'engine/link.ts': 'link',
  'engine/find.ts': 'buildIndex documentsOf find indexNames isNamedInSight pageName stem',
  'engine/hear.ts':
    'LIKELY LONGEST SURE answerFor answerTo atOnceOf buildLexicon byTime carriedTo consider dangerName dryHoursOf firstOfRule flawName flawWords hear hearSigns hearsNothing isCall mindOf reply thisMinute understand waitsOf weigh',
  'engine/clock.ts':
    'MOST_ON_CLOCK adopted askAboutLabel caseFromClock checkCoat clockDoubt clockNow clockProduct dateFormat dueOf emptyStore factsOf isLateAtOnce jumpedBack labelHere laidBeforeClocks lateAt layOnClock lifeLine mayHoldLead nextCoatAt nextCoatSpan onOnePiece readStore remindersOf replaceOnClock rightAgain sayDoubt sayInstant sayMoment sayNow sayReasons saySpan sayUntil takeOffClock touchBounds unreadyOf unsandedFor untilOf wetFilmOf wettestFirst withLaid',
  'engine/jobs.ts':
    'LATEST_INSTANT MOST MOST_LETTERS adviceOf anotherLike bothTexts cardsRemoved careOf changed coatOfRepair coatOwed coatsInOrder datesOfCard factsOfCard filmBelow fitting flawOver isSameFlaw laidCoatOf layersOf layingOfCard mergeCards mergeChange mergeShelves newCard openFlaw passedBy previewImport previewShelves productOfRepair putBack roomOf sameCard sayCardFault sayLayer sayLayers sectionOf summaryOf trialsOf withCoat withFlaw withMine withPhoto withRepair withoutCoat withoutFlaw withoutItsCoat withoutPhoto withoutRepair',
  'engine/schedule.ts':
    'areaOf buildOf cansFor datesOf firstFit fitnessOf largestFace litersOf nightOf sayStep schedule wetEdgeOf',
  'engine/fitness.ts':
    'chooseCoat judgeLaying layingOfCase layingOfCoat noesOfAll overCoat pieceOf pieceOfCase underCan',
  'engine/practice.ts':
    'PRACTICE_LEVELS PRACTICE_TIME SOUND dealPractice drawSet flawOfSeed practised readPracticeId',
  'engine/model/index.ts': 'ENTRY_KINDS FOLDERS ID_PATTERN SCHEMAS',
};

it('pins every door of the package', () => {
  const doors = Object.values(packaged.exports).map((door) => door.slice(2));
  expect([...doors, 'engine/model/index.ts'].sort()).toEqual(Object.keys(NAMES).sort());
});

it.each(Object.keys(NAMES))('pins the names behind %s', async (door) => {
  const opened: object = await import(new URL(`../${door}`, import.meta.url).href);
  expect(Object.keys(opened).sort().join(' ')).toBe(NAMES[door]);
});
