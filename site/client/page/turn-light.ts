import type { BoardRecipe } from '#engine/model/board.ts';
import { upper } from '#engine/plain/text.ts';
import { element } from '../shared/element.ts';
import { late, NetworkFault } from '../shared/fetch-json.ts';
import { lightAt } from '../shared/lights.ts';
import { objectWith, readPageData } from '../shared/page-data.ts';

const RECIPE = objectWith<BoardRecipe>('width-mm', 'features');

/** As drawn: large enough to tell a ridge from a dip, small enough for an old phone to turn without a stutter. */
const WIDTH = 240;
const HEIGHT = 180;
const WORDS = ['low from the left', 'higher from the left', 'high from the left', 'facing you'] as const;

/** A slider below a pair of boards: turns the light on the first. Nothing is loaded or drawn before it is moved. */
class TurnLightElement extends HTMLElement {
  #slider = element('input', { type: 'range', min: '0', max: '100', value: '0' });
  #canvas: HTMLCanvasElement | undefined;
  #draw: Promise<(share: number) => void> | undefined;
  #waiting = false;

  connectedCallback() {
    this.#slider.setAttribute('aria-valuetext', WORDS[0]);
    this.#slider.addEventListener('input', this.#turn);
    this.append(element('label', {}, 'Turn the light ', this.#slider));
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
      if (caption) caption.textContent = upper(words);
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
    } catch (error) {
      this.#draw = undefined;
      // Offline before it was ever loaded: both pictures still stand there.
      if (!(error instanceof NetworkFault)) throw error;
    } finally {
      this.#waiting = false;
    }
  }

  async #start() {
    const { turnable } = await late(() => import('#engine/board/turn.ts'));
    const at = turnable(readPageData(RECIPE, this.dataset['recipe']), WIDTH, HEIGHT);
    const canvas = element('canvas', { width: WIDTH, height: HEIGHT });
    canvas.setAttribute('aria-hidden', 'true');
    this.#canvas = canvas;
    const on = canvas.getContext('2d');
    const picture = new ImageData(WIDTH, HEIGHT);
    this.parentElement?.querySelector('img')?.after(canvas);
    return (share: number) => {
      picture.data.set(at(lightAt(share)).data);
      on?.putImageData(picture, 0, 0);
    };
  }
}

customElements.define('hd-turn-light', TurnLightElement);
