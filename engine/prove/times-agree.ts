import type { Issue } from '../faults/issue.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { STANDINGS } from '../model/stage.ts';
import { isOneLine } from './one-line.ts';

/** Words for a time of more than a day. */
const DAYS =
  /\b(?:two|three|four|five|six|some|several|\d+)(?: (?:to|or) \w+)?(?: more)? (?:days|weeks)\b|\b(?:a|one|another|full) (?:week|month)\b|\b(?:weeks|months)\b/i;
const NEXT_DAY = /\b(?:tomorrow|the next day)\b/i;
const DRY_TO_TOUCH = /\bwhen it is dry to the touch\b/i;

/**
 * What is said of now and when to look again are read in one breath: "give it a week" beside "look again tomorrow" would
 * leave her with neither, and a film that is dry to the touch has nothing to become.
 */
export function* timesAgree(known: Knowledge): Generator<Issue> {
  for (const remedy of known.remedies)
    for (const stage of STANDINGS) {
      const act = remedy.now[stage];
      // Where steps follow they say themselves when to look again.
      if (!act || act.do === 'repair' || act.do === 'stop') continue;
      const again = act.again ?? known.get('doing', act.do).again;
      const [days] = (NEXT_DAY.test(again) && act.say.match(DAYS)) || [];
      const past = stage !== 'wet' && stage !== 'setting' && stage !== 'overdue' && DRY_TO_TOUCH.test(again);
      if (days !== undefined || past)
        yield {
          file: remedy.file,
          line: remedy.lineOf(['now', stage]),
          code: 'times-differ',
          again,
          isOwn: act.again !== undefined,
          days,
          isOneLine: isOneLine(remedy.lineOf, ['now', stage], act),
        };
    }
}
