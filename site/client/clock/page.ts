import { CoatsElement } from './coats.ts';

customElements.define('hd-coats', CoatsElement);
