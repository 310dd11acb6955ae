/** The looks of a film in section, on a card and in the example of one. */
import looks from '../../../styles/jobs-film.css?inline';
import colors from '../../../styles/tokens-film.css?inline';
import { wear } from '../../shared/late-style.ts';

wear(colors);
wear(looks);
