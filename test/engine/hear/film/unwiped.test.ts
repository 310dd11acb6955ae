/** Oil that nobody wiped off: after a day no waiting helps. Common practice, no source; sentences are our own. */
import { describe, expect, it } from 'vitest';
import { fact } from '../hearing.ts';

describe('oil that was not wiped off', () => {
  it.each([
    'I put Danish oil on three days ago and I am afraid I forgot to wipe it off. It is sticky.',
    'I brushed boiled linseed oil on a stool two days ago without wiping and it is tacky all over',
    'left the excess on, hardwax oil, 30 hours ago, sticky',
    'teak oil on the table 4 days ago, didn’t wipe off the extra, sticky',
    'two days ago I oiled the shelf with tung oil and never wiped it, now it is gummy',
    'The surplus was not wiped, drying oil, 50 hours ago, still sticky',
  ])('is past its time after a day: %s', (text) => {
    expect(fact(text, 'overdue')?.value).toBe('yes');
    expect(fact(text, 'stage')?.value).not.toBe('setting');
  });

  it.each([
    // It was wiped.
    'I wiped the danish oil off after 15 minutes and three days later it is tacky',
    // Not a day ago.
    'Danish oil six hours ago, forgot to wipe it off, sticky now',
    // What is brushed on is not wiped off.
    'brushed oil-based poly two days ago, forgot to wipe the dust, it is tacky',
    'water based poly yesterday morning, did not wipe the dust off, still tacky',
  ])('is not else: %s', (text) => expect(fact(text, 'overdue')?.value).not.toBe('yes'));
});
