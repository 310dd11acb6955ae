import type { BoardRecipe } from '#engine/model/board.ts';

/** As drawn: large enough to tell a ridge from a dip, small enough for an old phone to turn without a stutter. */
const WIDTH = 240;
const HEIGHT = 180;
/** Where the slider begins and ends: the lights of the two pictures. */
const LOW = { azimuthDegrees: 142, elevationDegrees: 14 };
const FACING = { azimuthDegrees: 118, elevationDegrees: 58 };
const WORDS = ['low from the left', 'higher from the left', 'high from the left', 'facing you'] as const;

const lightAt = (share: number) => ({
  azimuthDegrees: LOW.azimuthDegrees + (FACING.azimuthDegrees - LOW.azimuthDegrees) * share,
  elevationDegrees: LOW.elevationDegrees + (FACING.elevationDegrees - LOW.elevationDegrees) * share,
});

/** A slider below a pair of boards: turns the light on the first. Nothing is loaded or drawn before it is moved. */
export class TurnLightElement extends HTMLElement {
  #slider = document.createElement('input');
  #canvas: HTMLCanvasElement | undefined;
  #draw: Promise<(share: number) => void> | undefined;
  #waiting = false;

  connectedCallback() {
    const label = Object.assign(document.createElement('label'), { textContent: 'Turn the light ' });
    Object.assign(this.#slider, { type: 'range', min: '0', max: '100', value: '0' });
    this.#slider.setAttribute('aria-valuetext', WORDS[0]);
    this.#slider.addEventListener('input', this.#turn);
    label.append(this.#slider);
    this.append(label);
  }

  disconnectedCallback() {
    this.#canvas?.remove();
    this.#draw = undefined;
    this.replaceChildren();
  }

  #turn = () => {
    const share = Number(this.#slider.value) / 100;
    const words = WORDS[Math.round(share * (WORDS.length - 1))] ?? WORDS[0];
    // Written anew only where it changes: each time costs a layout.
    if (words !== this.#slider.getAttribute('aria-valuetext')) {
      this.#slider.setAttribute('aria-valuetext', words);
      const caption = this.parentElement?.querySelector('figcaption');
      if (caption) caption.textContent = words.charAt(0).toUpperCase() + words.slice(1);
    }
    if (this.#waiting) return;
    this.#waiting = true;
    requestAnimationFrame(() => void this.#show());
  };

  async #show() {
    try {
      this.#draw ??= this.#start();
      const draw = await this.#draw;
      draw(Number(this.#slider.value) / 100);
    } catch {
      // Offline before it was ever loaded: both pictures still stand there.
      this.#draw = undefined;
    } finally {
      this.#waiting = false;
    }
  }

  async #start() {
    const { turnable } = await import('#engine/board/turn.ts');
    const recipe = JSON.parse(this.dataset['recipe'] ?? '') as BoardRecipe;
    const at = turnable(recipe, WIDTH, HEIGHT);
    const canvas = Object.assign(document.createElement('canvas'), { width: WIDTH, height: HEIGHT });
    canvas.setAttribute('aria-hidden', 'true');
    this.#canvas = canvas;
    const on = canvas.getContext('2d');
    const picture = new ImageData(WIDTH, HEIGHT);
    this.parentElement?.querySelector('.board img')?.after(canvas);
    return (share: number) => {
      picture.data.set(at(lightAt(share)).data);
      on?.putImageData(picture, 0, 0);
    };
  }
}
