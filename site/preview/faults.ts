/** In the preview alone: what `npm run check` says of the content as it is saved, over the page that is looked at. */
import * as v from 'valibot';

const FAULT = v.object({ file: v.string(), line: v.number(), says: v.string() });
const STATE = v.object({ faults: v.array(FAULT), checking: v.boolean() });
type Fault = v.InferOutput<typeof FAULT>;

const LOOK = `
hd-faults { position: fixed; z-index: 99; inset: auto 1rem 1rem auto; max-inline-size: min(46rem, calc(100vw - 2rem));
  max-block-size: 60vh; overflow: auto; padding: 0.75rem 1rem; font: 0.95rem/1.4 system-ui, sans-serif;
  color: #2b0d08; background: #fff3ee; border: 2px solid #b3391f; border-radius: 0.5rem; }
hd-faults[hidden] { display: none; }
hd-faults summary { font-weight: bold; cursor: pointer; }
hd-faults ol { margin: 0.5rem 0 0; padding-inline-start: 1.5rem; }
hd-faults a { color: inherit; font-family: ui-monospace, monospace; }`;

const element = (name: string, ...children: (Node | string)[]): HTMLElement => {
  const made = document.createElement(name);
  made.append(...children);
  return made;
};

/** Opens the file at the line in the editor that runs. */
const place = ({ file, line }: Fault): HTMLElement => {
  const link = element('a', `${file}:${line}`);
  link.setAttribute('href', `/__open-in-editor?file=${encodeURIComponent(`${file}:${line}`)}`);
  link.addEventListener('click', (event) => {
    event.preventDefault();
    void fetch(link.getAttribute('href') ?? '');
  });
  return link;
};

const panel = element('hd-faults');
panel.setAttribute('role', 'status');
panel.hidden = true;

const show = (state: unknown): void => {
  const { faults, checking } = v.parse(STATE, state);
  panel.hidden = faults.length === 0;
  const many = `${faults.length} ${faults.length === 1 ? 'fault' : 'faults'} in the content${checking ? ', checking again …' : ''}`;
  const list = element('ol', ...faults.map((fault) => element('li', place(fault), ` ${fault.says}`)));
  const details = element('details', element('summary', many), list);
  details.setAttribute('open', '');
  panel.replaceChildren(details);
};

// The frame within a preview would say the same twice.
if (window.top === window) {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(LOOK);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  document.body.append(panel);
  import.meta.hot?.on('halfdry:faults', show);
  void fetch('/preview/faults.json')
    .then((answer) => answer.json())
    .then(show);
}
