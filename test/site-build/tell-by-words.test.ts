/**
 * What the page that listens does with a time, with a post of somebody else and with words that tell of no coat. All
 * texts are invented. That a water-based coat is ready for the next one by the next morning, and an oil-based one is not,
 * is common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { isSilent } from '#engine/hear/belief/silent.ts';
import { byTime } from '#engine/hear.ts';
import { ear } from '../../site/build/ear.ts';
import { wantsReply } from '../../site/client/tell/words.ts';
import { heard } from '../engine/hear/hearing.ts';

const { dries } = ear();
const stageOf = (text: string) => byTime(heard(text), dries)?.stage;

describe('how dry it mostly is by a told time', () => {
  it.each([
    ['bubbles in the water-based poly I brushed on last night', 'recoatable'],
    ['oil-based poly laid 14 hours ago shows brush marks', 'dry-to-touch'],
    ['shellac laid yesterday has bubbles', 'recoatable'],
  ])('%s', (text, stage) => {
    expect(stageOf(text)).toBe(stage);
  });

  it.each([
    'bubbles in the water-based poly, ten minutes after I brushed it',
    'bubbles in the water-based poly',
    'bubbles in a coat that I laid last night',
    'the water-based poly that I brushed last night in a cold garage at 45 °F has bubbles',
  ])('leaves open: %s', (text) => {
    expect(stageOf(text)).toBeUndefined();
  });
});

describe('an answer to send', () => {
  const POST = 'My coat of poly has gone all cloudy over the navy paint, can I sand it now or not?';
  it('stands first for a post that was pasted and asks, or tells of somebody else', () => {
    expect(wantsReply(POST, true)).toBe(true);
    expect(wantsReply(POST.replace('My', 'My follower has trouble: her'), false)).toBe(true);
  });

  it('stands first for a post that greets or thanks, whoever typed it', () => {
    for (const greeting of [`Hi everyone! ${POST}`, `${POST} Thanks in advance!`, `Help please. ${POST}`])
      expect(wantsReply(greeting, false), greeting).toBe(true);
    // A name that only begins so, or a greeting that asks for nothing.
    expect(wantsReply(`Hide glue was first. ${POST}`, false)).toBe(false);
    expect(wantsReply(`Hello. ${POST.replace(/, can.*/, '')}`, false)).toBe(false);
  });

  it('does not for her own words, nor for a few', () => {
    expect(wantsReply(POST, false)).toBe(false);
    expect(wantsReply('cloudy poly, can I sand it?', true)).toBe(false);
    expect(wantsReply(POST.replace(/, can.*/, ''), true)).toBe(false);
  });
});

describe('words that look for a page', () => {
  const silent = (text: string) => isSilent(heard(text));
  it.each([
    'where can I read about the people who made this page',
    'how do I send all this to my other phone',
  ])('%s', (text) => {
    expect(silent(text)).toBe(true);
  });
  it.each([
    'there is something wrong with my finish',
    'my dresser looks odd now',
    'there are bubbles in it and I do not know why',
    '',
  ])('but not: %s', (text) => {
    expect(silent(text)).toBe(false);
  });
});

describe('what is asked while nothing is wrong', () => {
  it.each([
    ['print a handout for my class', 'page/learn/practice/sheet'],
    ['where do I get a worksheet for my students', 'page/learn/practice/sheet'],
    ['how do I print the wall poster', 'page/learn/wall-card'],
    ['how do I print a job card', 'page/jobs'],
    ['can I print the care card for a buyer', 'page/jobs'],
  ])('%s', (text, page) => {
    expect(heard(text).asksFor?.page).toBe(page);
  });
  it.each([
    'a printed handout lay on my table and left marks in the varnish',
    'I tore the poster off the wall and the lacquer peeled',
    'the wall card fell into the wet varnish and stuck',
  ])('but not: %s', (text) => {
    expect(heard(text).asksFor).toBeUndefined();
  });
});
