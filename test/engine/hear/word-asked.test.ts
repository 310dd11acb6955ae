/** What a word of the trade means, where no more is asked. Questions of our own, invented; what they mean is the glossary's. */
import { describe, expect, it } from 'vitest';
import { understand } from '#engine/hear.ts';
import { known } from '../../content/real/knowledge.ts';
import { understanding } from './hearing.ts';
import { links } from './links.ts';

const asked = (text: string) => understand(understanding, { text }, links);

describe('a word that is asked for', () => {
  it.each([
    ['what does recoat window mean', 'recoat-window'],
    ['What is a holiday in a finish?', 'holiday'],
    ['whats back priming', undefined],
    ['definition of burnishing', 'burnishing'],
    ['what are witness lines', 'witness-line'],
    ['explain coalescence', 'coalescence'],
  ])('is told as the glossary has it: %s', (text, id) => {
    const { answer, page } = asked(text);
    const word = known.terms.find((one) => one.id === id);
    expect(page?.id).toBe(word && `glossary/${word.id}`);
    expect(word && asked(text).considered.stage).toBeUndefined();
    if (word) expect(answer.short).toContain(word.means.slice(0, 40));
  });
  it('leaves a danger a danger', () =>
    expect(asked('what is wax, son swallowed some').considered.warnings[0]?.id).toBe('emergency'));
  it.each([
    'what is this haze on my table',
    'what is wrong with the sheen, it has blotches',
    'what is the orange peel from, sprayed it yesterday',
    'sprayed a dresser with lacquer, it got blush all over and I want to know what blush does mean for the coats',
  ])('is none where a coat is told of: %s', (text) => {
    expect(asked(text).page?.id ?? '').not.toMatch(/^glossary\//);
  });
});
