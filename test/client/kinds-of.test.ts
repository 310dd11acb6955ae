/** Which kinds of top coat a page names beside a flaw that is still possible, so that what hers never shows is left out. */
import { expect, it } from 'vitest';
import { FAMILIES } from '#engine/model/family.ts';
import { kindsOf } from '../../site/shared/kinds-of.ts';
import { known } from '../engine/schedule/sheet.ts';

it('names the kinds of a flaw that not all show', () => {
  const blotchy = known.get('defect', 'blotchy-oil');
  expect(kindsOf(blotchy.families)?.split(' ')).not.toContain('water-based');
  expect(kindsOf(FAMILIES)).toBeUndefined();
});
