/** What is told of names: links, pages that nothing leads to, names almost alike. */

import { FOLDERS } from '../model/index.ts';
import { short } from './found.ts';
import { inTree } from './mend.ts';
import { maybe, type Of, type Say, type Told } from './told.ts';

const orphan = ({ kind, id }: Of<'orphan'>): Told => {
  const drop = 'or delete this file';
  if (kind === 'question')
    return [
      `no flaw asks the question "${id}"`,
      `${inTree(`ask: ${id}, yes: …, no: …`)}, with what each answer leads to in place of the dots, ${drop}`,
    ];
  if (kind === 'source')
    return [`no claim rests on the source "${id}"`, `add source: ${id} to a claim that it tells, ${drop}`];
  return [`no flaw leads to the ${kind} "${id}"`, `${inTree(`${kind}: ${id}`)}, ${drop}`];
};

/** Names of sources are numbers: one letter off is another book, so its title is told. */
const nearSource = (nearest: string, title: string | undefined): string =>
  `the nearest by its letters is "${nearest}"${title ? ` (${short(title)})` : ''}; write that, or, if you mean another work, the name of its file in content/sources, without .mdx`;

const deadLink = ({ kind, id, nearest, title }: Of<'dead-link'>): Told => [
  `there is no ${kind} "${id}"`,
  nearest && kind === 'source'
    ? nearSource(nearest, title)
    : maybe(nearest) ||
      `write the name of a file in content/${FOLDERS[kind]} here (without .mdx), or make a new file content/${FOLDERS[kind]}/${id}.mdx`,
];

/** A page that is published keeps its name; of two that are not nobody knows which is older. */
const nearName = ({ kind, id, other, isNew }: Of<'near-name'>): Told =>
  isNew
    ? [
        `there is a ${kind} almost of this name already, "${other.id}" (${short(other.name)})`,
        'use that one and delete this file, or rename this file by what tells it apart',
      ]
    : [
        `the ${kind} "${id}" is named almost like "${other.id}" (${short(other.name)})`,
        'keep the older one, and delete the newer file, or rename it by what tells it apart',
      ];

const unreachable = (issue: Of<'unreachable-defect'>): Told => {
  switch (issue.by) {
    case 'signs':
      return [
        `whoever answers the questions of "What do you see?" as the signs here say does not come to "${issue.defect}"${issue.other ? `: "${issue.other}" comes first` : ''}`,
        issue.other
          ? `under "signs:" give "${issue.defect}" yes and "${issue.other}" no, or the other way round, for a question that tells the two apart`
          : 'under "signs:" answer a question otherwise than other flaws do',
      ];
    case 'look-alike':
      return [
        `no other flaw is said to look like "${issue.defect}"`,
        `write after "look-alikes:" the name of a flaw that it is mistaken for${issue.other ? `, for example ${issue.other}` : ''}`,
      ];
    default:
      return [
        `whoever types "${issue.typed}" into the search does not find this page among the first three${issue.found.length ? `, which are ${issue.found.join(', ')}` : ''}`,
        `put a word into it that is said of this page alone${issue.by === 'other name' ? ', or take it out' : ''}`,
      ];
  }
};

const unusedName = ({ what, name, nearest }: Of<'unused-name'>): Told => {
  const line =
    what === 'shared step'
      ? `write - ${name} under "steps:" in the remedy it is for`
      : `write as: ${name} below "now:" in the remedy it is for`;
  return [
    `no remedy uses the ${what} "${name}"`,
    nearest
      ? `did you mean "${nearest}", which a remedy asks for? If it is a new one, ${line}`
      : `${line}, or delete this entry`,
  ];
};

export const OF_NAMES: Say<
  | 'dead-link'
  | 'unknown-name'
  | 'still-there'
  | 'near-name'
  | 'unused-name'
  | 'retired-link'
  | 'orphan'
  | 'unreachable-defect'
  | 'lost-address'
> = {
  'dead-link': deadLink,
  'unknown-name': (issue) => [
    `there is no ${issue.what} "${issue.name}"`,
    maybe(issue.nearest)
      ? `${maybe(issue.nearest)} Change it here (${issue.in} has them all)`
      : `write it out here, or add it to ${issue.in}`,
  ],
  'still-there': (issue) => [
    `this line says that the ${issue.kind} "${issue.id}" is retired, but its file content/${FOLDERS[issue.kind]}/${issue.id}.mdx is still there`,
    'to keep it, delete this line; to retire it, delete that file',
  ],
  'near-name': nearName,
  'unused-name': unusedName,
  'retired-link': (issue) => [`the ${issue.kind} "${issue.id}" was retired`, `write "${issue.now}" instead`],
  orphan: orphan,
  'unreachable-defect': unreachable,
  'lost-address': (issue) => [
    `${issue.address} was published and must answer for ever, but there is no ${issue.kind} "${issue.id}"`,
    `bring content/${FOLDERS[issue.kind]}/${issue.id}.mdx back, or say in content/retired.yaml what stands for it: ${issue.kind}/${issue.id}: ${issue.nearest ?? 'the-name-of-its-file'}`,
  ],
};
