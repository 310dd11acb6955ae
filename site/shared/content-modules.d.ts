declare module 'virtual:choices' {
  export const CHOICES: import('../../engine/model/choices.ts').Choices;
}
declare module 'virtual:clock-words' {
  export const CLOCK_WORDS: import('../../engine/model/clock-words.ts').ClockWords;
}
