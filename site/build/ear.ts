import { atOnceOf, mindOf } from '#engine/hear.ts';
import { readHearing } from '../../content/tools/hear.ts';
import type { Ear } from '../shared/ear.ts';
import { questionBoards } from './boards.ts';
import { places } from './calls.ts';
import { knowledge } from './knowledge.ts';

/** What a phone needs to hear and to weigh; the search's index is a file of its own. */
export const ear = (): Ear => ({
  hearing: readHearing(knowledge, process.cwd()),
  mind: mindOf(knowledge),
  pictured: knowledge.questions.filter((question) => questionBoards(question)).map(({ id }) => id),
  boarded: knowledge.defects.filter(({ boards }) => boards.length).map(({ id }) => id),
  dries: Object.fromEntries(
    [...new Set(knowledge.products.map(({ family }) => family))].map((family) => {
      const cans = knowledge.products.filter((one) => one.family === family);
      const latest = (of: (can: (typeof cans)[number]) => number) => Math.max(...cans.map(of));
      return [
        family,
        [
          latest((can) => can['touch-minutes'][1] / 60),
          latest((can) => can['recoat-hours'][1]),
          latest((can) => can['cure-days'][1] * 24),
        ],
      ] as const;
    }),
  ),
  atOnce: atOnceOf(knowledge),
  whileSetting: Object.fromEntries(
    knowledge.defects.flatMap(({ id, 'while-setting': says }) => (says ? [[id, says]] : [])),
  ),
  places,
  whileWet: Object.fromEntries(knowledge.defects.map((defect) => [defect.id, defect['while-wet']])),
});
