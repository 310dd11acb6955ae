declare module 'virtual:choices' {
  export const CHOICES: import('../../engine/model/choices.ts').Choices;
}
