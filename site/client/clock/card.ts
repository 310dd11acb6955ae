import { sayWeather } from '#engine/calc/say-weather.ts';
import { weatherVerdict } from '#engine/calc/weather.ts';
import {
  type ClockProduct,
  clockNow,
  type LaidCoat,
  lifeLine,
  type Running,
  sayInstant,
  sayMoment,
  sayNow,
  sayReasons,
  type TimeStyle,
} from '#engine/clock.ts';
import { cardUrl } from '../../shared/jobs-urls.ts';
import { STAGE_WORDS } from '../../shared/stages.ts';
import { sayAir } from '../shared/clock-units.ts';

const LINE = 320;

/** One coat on the page. It is written once and then only its words change, so that a finger never misses a button. */
export class CoatCard {
  readonly element: HTMLElement;
  readonly #coat: LaidCoat;

  constructor(coat: LaidCoat) {
    this.#coat = coat;
    const template = document.getElementById('coat-card') as HTMLTemplateElement;
    this.element = (template.content.cloneNode(true) as DocumentFragment).firstElementChild as HTMLElement;
    this.element.dataset['coat'] = coat.id;
    this.#write('piece', coat.piece);
    if (coat.card) this.#link(coat.card);
  }

  /** To its job card, which also tells two pieces of one name apart. */
  #link(card: string): void {
    const link = Object.assign(document.createElement('a'), {
      className: 'quiet',
      href: cardUrl(card),
      textContent: 'Its job card',
    });
    this.element.querySelector('.acts')?.append(link);
  }

  #write(part: string, words: string): void {
    const place = this.element.querySelector(`[data-part=${part}]`);
    if (place && place.textContent !== words) place.textContent = words;
  }

  tell(product: ClockProduct | undefined, now: number, style: TimeStyle): void {
    const coat = this.#coat;
    if (!product) {
      this.doubt(
        `This coat was kept with a product, “${coat.product}”, that this clock does not know. Lay it again with the product that is on the can.`,
      );
      return;
    }
    this.#write(
      'what',
      `Coat ${coat.coatNumber}, ${product.name.toLowerCase()}, laid ${sayInstant(coat.laidAt, now, style)} at ${sayAir(coat)}`,
    );
    const reading = clockNow(product, coat, now);
    const { doing, verdict, why } = sayNow(reading, now, style);
    this.#write('verdict', verdict);
    this.#write('why', why);
    this.#tape(doing);
    this.#weather(product);
    if (reading.kind === 'running') this.#run(reading, now, style);
    else this.#still();
  }

  /** Something stands against every time of this coat. */
  doubt(why: string): void {
    this.#write('verdict', 'Hands off, and no time can be told');
    this.#write('why', why);
    this.#tape('leave');
    this.#still();
  }

  #tape(doing: string): void {
    const tape = this.element.querySelector('.verdict');
    if (tape) tape.className = `verdict ${doing}`;
  }

  /** No time is told, so none is shown. */
  #still(): void {
    this.#write('stage', '');
    this.#write('doubt', '');
    this.element.classList.add('still');
  }

  #run(reading: Running, now: number, style: TimeStyle): void {
    this.element.classList.remove('still');
    this.#write(
      'stage',
      `By the clock it is: ${STAGE_WORDS[reading.stage].name.toLowerCase()}, ${reading.sureness}.`,
    );
    const common = sayReasons(reading.moments.touch.reasons);
    this.#write('doubt', common);
    for (const row of this.element.querySelectorAll<HTMLElement>('[data-moment]')) {
      const moment = reading.moments[row.dataset['moment'] as keyof Running['moments']];
      row.hidden = !moment;
      const [time, reasons] = [row.querySelector('b'), row.querySelector('.small')];
      if (!moment || !time || !reasons) continue;
      const words = sayMoment(row.dataset['moment'] as keyof Running['moments'], moment, now, style);
      if (time.textContent !== words) time.textContent = words;
      const own = now >= moment.to ? '' : sayReasons(moment.reasons);
      const doubt = own === common ? '' : own;
      if (reasons.textContent !== doubt) reasons.textContent = doubt;
    }
    this.#line(reading, now);
  }

  #line(reading: Running, now: number): void {
    const { now: place, bands } = lifeLine(reading, this.#coat.laidAt, now);
    for (const [index, bar] of [...this.element.querySelectorAll('.maybe')].entries()) {
      const band = bands[index];
      bar.setAttribute('x', String((band?.sure ?? 0) * LINE));
      bar.setAttribute('width', String(((band?.to ?? 0) - (band?.sure ?? 0)) * LINE));
    }
    const at = Math.min(LINE - 12, Math.max(12, place * LINE));
    this.element.querySelector('.now path')?.setAttribute('d', `M${place * LINE} 14v24`);
    this.element.querySelector('.now text')?.setAttribute('x', String(at));
  }

  #weather(product: ClockProduct): void {
    const judged = weatherVerdict(product, this.#coat);
    const list = this.element.querySelector('.weather-now');
    const words = judged.ok ? judged.value.reasons.map((reason) => sayWeather(reason, 'during')) : [];
    if (!list || list.children.length === words.length) return;
    list.replaceChildren(
      ...words.map((said) => Object.assign(document.createElement('li'), { textContent: said })),
    );
  }
}
