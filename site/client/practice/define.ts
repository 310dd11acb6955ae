import { practiceElement } from './element.tsx';
import { PracticePage } from './page.tsx';
import { PicturesPage } from './pictures.tsx';
import { ShowPage } from './show.tsx';

customElements.define('hd-practice', practiceElement(PracticePage));
customElements.define('hd-show', practiceElement(ShowPage));
customElements.define('hd-pictures', practiceElement(PicturesPage));
