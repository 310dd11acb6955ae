/** What is told of boards. */

import { list, type Of, type Say, type Told } from './told.ts';

const A_BOARD = '{ base: { wood: oak }, features: [], alt: … }';

/** What a board does not show, and how large it would be seen, or on how wide a board. */
const notShown = (issue: Of<'not-shown'>): Told => {
  const { kind, field, mm, wide, why, bound, board } = issue;
  const [than, size, width] =
    why === 'large'
      ? [`larger than the piece, which is ${wide} mm wide`, 'less', 'more']
      : [`too fine to be seen on a piece ${wide} mm wide`, 'more', 'less'];
  return [
    `"${kind}" has ${field} ${mm}, ${than}`,
    `write ${bound} or ${size}${board === undefined ? '' : `, or give the board width-mm: ${board} or ${width}`}`,
  ];
};

export const OF_BOARDS: Say<'no-board' | 'off-the-board' | 'not-shown' | 'size-differs'> = {
  'no-board': (issue) => [
    `no picture is described for "${issue.id}"`,
    `write above the second line --- of this file: ${issue.kind === 'defect' ? `boards: [${A_BOARD}]` : `boards: { yes: ${A_BOARD}, no: ${A_BOARD} }`}, with what tells it apart in place of the dots, and between the [ ] of features: what npm run board -- --sheet shows that comes nearest${issue.kind === 'defect' ? '' : '; or a line no-boards: with the reason why there is nothing to draw'}`,
  ],
  'off-the-board': (issue) => [
    `"${issue.kind}" is laid at ${list(issue.at.map(String))} mm, off a piece ${issue.wide} mm wide and ${issue.high} mm high`,
    'give an at: within it, from the left and top edge, or leave at: out',
  ],
  'not-shown': notShown,
  'size-differs': (issue) => {
    const [least, most] = issue.drawn;
    return [
      `the words after "${issue.in}:" say ${issue.said}, and here ${issue.field} is ${least === most ? least : `${least} to ${most}`}`,
      'write the same measure in both',
    ];
  },
};
