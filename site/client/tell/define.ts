import { TellElement } from './element.tsx';

customElements.define('hd-tell', TellElement);
