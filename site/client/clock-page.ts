import { CoatsElement } from './clock-coats.ts';

customElements.define('hd-coats', CoatsElement);
