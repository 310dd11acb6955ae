import { CoatsElement } from './coats.tsx';

customElements.define('hd-coats', CoatsElement);
