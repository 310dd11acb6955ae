/**
 * Every small change that is tried on one file. The kinds are those that tools for mutation agree on (arithmetic,
 * comparison, logic, conditions, blocks, literals, methods, optional chains, patterns); numbers are left alone.
 */
import ts from 'typescript';

export type Change = {
  readonly kind: string;
  /** What is changed, from and to in characters. */
  readonly from: number;
  readonly to: number;
  readonly by: string;
  /** The node around which the switch is written. */
  readonly at: ts.Node;
};

const K = ts.SyntaxKind;

const SWAPPED = new Map<ts.SyntaxKind, readonly [kind: string, by: readonly string[]]>([
  [K.PlusToken, ['arithmetic', ['-']]],
  [K.MinusToken, ['arithmetic', ['+']]],
  [K.AsteriskToken, ['arithmetic', ['/']]],
  [K.SlashToken, ['arithmetic', ['*']]],
  [K.PercentToken, ['arithmetic', ['*']]],
  [K.LessThanToken, ['comparison', ['<=', '>=']]],
  [K.LessThanEqualsToken, ['comparison', ['<', '>']]],
  [K.GreaterThanToken, ['comparison', ['>=', '<=']]],
  [K.GreaterThanEqualsToken, ['comparison', ['>', '<']]],
  [K.EqualsEqualsEqualsToken, ['comparison', ['!==']]],
  [K.ExclamationEqualsEqualsToken, ['comparison', ['===']]],
  [K.EqualsEqualsToken, ['comparison', ['!=']]],
  [K.ExclamationEqualsToken, ['comparison', ['==']]],
  [K.AmpersandAmpersandToken, ['logic', ['||']]],
  [K.BarBarToken, ['logic', ['&&']]],
  [K.QuestionQuestionToken, ['logic', ['&&']]],
  [K.PlusEqualsToken, ['assignment', ['-=']]],
  [K.MinusEqualsToken, ['assignment', ['+=']]],
  [K.AsteriskEqualsToken, ['assignment', ['/=']]],
  [K.SlashEqualsToken, ['assignment', ['*=']]],
  [K.PercentEqualsToken, ['assignment', ['*=']]],
  [K.LessThanLessThanEqualsToken, ['assignment', ['>>=']]],
  [K.GreaterThanGreaterThanEqualsToken, ['assignment', ['<<=']]],
  [K.AmpersandEqualsToken, ['assignment', ['|=']]],
  [K.BarEqualsToken, ['assignment', ['&=']]],
  [K.AmpersandAmpersandEqualsToken, ['assignment', ['||=']]],
  [K.BarBarEqualsToken, ['assignment', ['&&=']]],
  [K.QuestionQuestionEqualsToken, ['assignment', ['&&=']]],
]);

const TRUE_OR_FALSE = new Set([
  K.LessThanToken,
  K.LessThanEqualsToken,
  K.GreaterThanToken,
  K.GreaterThanEqualsToken,
  K.EqualsEqualsEqualsToken,
  K.ExclamationEqualsEqualsToken,
  K.EqualsEqualsToken,
  K.ExclamationEqualsToken,
  K.AmpersandAmpersandToken,
  K.BarBarToken,
  K.InstanceOfKeyword,
  K.InKeyword,
]);

/** A method by its opposite; by nothing where the call is left out. */
const METHODS: Readonly<Record<string, string | undefined>> = {
  endsWith: 'startsWith',
  startsWith: 'endsWith',
  toUpperCase: 'toLowerCase',
  toLowerCase: 'toUpperCase',
  trimStart: 'trimEnd',
  trimEnd: 'trimStart',
  some: 'every',
  every: 'some',
  min: 'max',
  max: 'min',
  sort: undefined,
  toSorted: undefined,
  reverse: undefined,
  toReversed: undefined,
  filter: undefined,
  slice: undefined,
  substring: undefined,
  charAt: undefined,
  trim: undefined,
};

/** Changes of a pattern, one at a time; what no engine can read is left out. */
const patterns = (text: string): string[] => {
  const end = text.lastIndexOf('/');
  const body = text.slice(1, end);
  const flags = text.slice(end + 1);
  const found = new Set<string>();
  const put = (from: number, to: number, by: string) => {
    const changed = body.slice(0, from) + by + body.slice(to);
    if (!changed) return;
    try {
      new RegExp(changed, flags);
      found.add(`/${changed}/${flags}`);
    } catch {
      // Not a pattern.
    }
  };
  let inClass = false;
  for (let i = 0; i < body.length; i += 1) {
    const sign = body[i] as string;
    if (sign === '\\') {
      const letter = body[i + 1] ?? '';
      if (/[dDsSwW]/.test(letter))
        put(i, i + 2, `\\${letter === letter.toLowerCase() ? letter.toUpperCase() : letter.toLowerCase()}`);
      if (/[bB]/.test(letter) && !inClass) put(i, i + 2, '');
      i += 1;
    } else if (inClass) {
      if (sign === ']') inClass = false;
    } else if (sign === '[') {
      inClass = true;
      if (body[i + 1] === '^') put(i + 1, i + 2, '');
      else put(i + 1, i + 1, '^');
    } else if (sign === '^' || sign === '$') put(i, i + 1, '');
    else if (sign === '(' && body[i + 1] === '?') {
      const look = /^\(\?<?[=!]/.exec(body.slice(i))?.[0];
      if (look) put(i + look.length - 1, i + look.length, look.endsWith('=') ? '!' : '=');
      i += 1;
    } else if (sign === '+' || sign === '*' || sign === '?') put(i, i + 1, '');
  }
  return [...found];
};

const isAccess = (node: ts.Node): node is ts.PropertyAccessExpression | ts.ElementAccessExpression =>
  ts.isPropertyAccessExpression(node) || ts.isElementAccessExpression(node);

const bare = (node: ts.Node): ts.Node =>
  ts.isNonNullExpression(node) || ts.isParenthesizedExpression(node) ? bare(node.expression) : node;

const isAssignment = (node: ts.Node): node is ts.BinaryExpression =>
  ts.isBinaryExpression(node) &&
  node.operatorToken.kind >= K.FirstAssignment &&
  node.operatorToken.kind <= K.LastAssignment;

const carriesOn = (parent: ts.Node, node: ts.Node): boolean =>
  (isAccess(parent) || ts.isCallExpression(parent) || ts.isNonNullExpression(parent)) &&
  parent.expression === node &&
  (parent.flags & ts.NodeFlags.OptionalChain) !== 0;

/** Whether a pair of brackets around it changes nothing. */
const canBeBracketed = (node: ts.Node): boolean => {
  const { parent } = node;
  if (!ts.isExpression(node) || ts.isSpreadElement(node)) return false;
  if (carriesOn(parent, node) || ts.isNonNullExpression(parent)) return false;
  if (ts.isCallExpression(parent) && parent.expression === node) {
    const called = bare(node);
    if (isAccess(called) || called.kind === K.SuperKeyword) return false;
  }
  if (ts.isTaggedTemplateExpression(parent)) return false;
  if (isAssignment(parent) && parent.left === node) return false;
  if (ts.isPrefixUnaryExpression(parent) || ts.isPostfixUnaryExpression(parent)) {
    const { operator } = parent;
    if (operator === K.PlusPlusToken || operator === K.MinusMinusToken) return false;
  }
  return !(ts.isDeleteExpression(parent) || ts.isExpressionWithTypeArguments(parent));
};

const isName = (node: ts.Node): boolean => {
  const { parent } = node;
  return (
    ts.isImportDeclaration(parent) ||
    ts.isExportDeclaration(parent) ||
    ts.isLiteralTypeNode(parent) ||
    ts.isImportTypeNode(parent) ||
    ts.isModuleDeclaration(parent) ||
    ((ts.isPropertyAssignment(parent) ||
      ts.isPropertySignature(parent) ||
      ts.isMethodDeclaration(parent) ||
      ts.isMethodSignature(parent) ||
      ts.isBindingElement(parent) ||
      ts.isPropertyDeclaration(parent)) &&
      'name' in parent &&
      (parent.name === node || ('propertyName' in parent && parent.propertyName === node)))
  );
};

const isTest = (node: ts.Node): 'loop' | 'choice' | undefined => {
  const { parent } = node;
  if ((ts.isWhileStatement(parent) || ts.isDoStatement(parent)) && parent.expression === node) return 'loop';
  if (ts.isForStatement(parent) && parent.condition === node) return 'loop';
  if (ts.isIfStatement(parent) && parent.expression === node) return 'choice';
  if (ts.isConditionalExpression(parent) && parent.condition === node) return 'choice';
  return undefined;
};

/** The changes of one file in the order in which they stand there. */
export const changesOf = (source: ts.SourceFile): readonly Change[] => {
  const text = source.text;
  const changes: Change[] = [];

  const place = (node: ts.Node): ts.Node | undefined => {
    let at: ts.Node | undefined = node;
    while (at && !canBeBracketed(at)) {
      if (ts.isStatement(at) || ts.isSourceFile(at)) return undefined;
      at = at.parent;
    }
    return at;
  };
  const put = (kind: string, node: ts.Node, from: number, to: number, by: string) => {
    const at = place(node);
    if (at && text.slice(from, to) !== by) changes.push({ kind, from, to, by, at });
  };
  const whole = (kind: string, node: ts.Node, by: string) =>
    put(kind, node, node.getStart(), node.getEnd(), by);

  const conditions = (node: ts.Node) => {
    const test = isTest(node);
    if (test) {
      if (node.kind === K.TrueKeyword) return;
      if (test === 'choice') whole('condition', node, 'true');
      whole('condition', node, 'false');
    } else if (ts.isBinaryExpression(node) && TRUE_OR_FALSE.has(node.operatorToken.kind)) {
      const up = node.parent;
      const above = ts.isBinaryExpression(up) ? up.operatorToken.kind : undefined;
      if (above !== K.BarBarToken) whole('condition', node, 'true');
      if (above !== K.AmpersandAmpersandToken) whole('condition', node, 'false');
    }
  };

  const binary = (node: ts.BinaryExpression) => {
    const swap = SWAPPED.get(node.operatorToken.kind);
    if (!swap) return;
    const isText = (side: ts.Expression) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side);
    if (swap[0] === 'arithmetic' && (isText(node.left) || isText(node.right))) return;
    const { operatorToken: sign } = node;
    for (const by of swap[1]) {
      // `a ?? b || c` can not be written, so what stands beside is put in brackets.
      const [left, right] = [node.left, node.right].map((side) => `(${side.getText()})`);
      if (swap[0] === 'logic') whole('logic', node, `${left} ${by} ${right}`);
      else put(swap[0], node, sign.getStart(), sign.getEnd(), by);
    }
  };

  const call = (node: ts.CallExpression) => {
    const called = node.expression;
    if (!ts.isPropertyAccessExpression(called)) return;
    const method = called.name.text;
    if (!Object.hasOwn(METHODS, method)) return;
    const by = METHODS[method];
    if (by) put('method', node, called.name.getStart(), called.name.getEnd(), by);
    else whole('method', node, called.expression.getText());
  };

  const literal = (node: ts.Node) => {
    if (ts.isStringLiteralLike(node)) {
      if (!isName(node) && !ts.isTaggedTemplateExpression(node.parent))
        whole('text', node, node.text === '' ? "'Something was here!'" : "''");
    } else if (ts.isTemplateExpression(node)) {
      if (!ts.isTaggedTemplateExpression(node.parent)) whole('text', node, '``');
    } else if (ts.isArrayLiteralExpression(node)) {
      whole('list', node, node.elements.length ? '[]' : "['Something was here!']");
    } else if (ts.isObjectLiteralExpression(node)) {
      if (node.properties.length) whole('object', node, '{}');
    } else if (node.kind === K.TrueKeyword || node.kind === K.FalseKeyword) {
      if (ts.isExpression(node) && !ts.isLiteralTypeNode(node.parent))
        whole('truth', node, node.kind === K.TrueKeyword ? 'false' : 'true');
    } else if (node.kind === K.RegularExpressionLiteral) {
      for (const by of patterns(node.getText())) whole('pattern', node, by);
    }
  };

  const unary = (node: ts.PrefixUnaryExpression | ts.PostfixUnaryExpression) => {
    const { operator, operand } = node;
    const inner = operand.getText();
    if (operator === K.ExclamationToken) whole('truth', node, inner);
    else if (operator === K.MinusToken) whole('sign', node, `+${inner}`);
    else if (operator === K.PlusToken) whole('sign', node, `-${inner}`);
    else if (operator === K.TildeToken) whole('sign', node, inner);
    else if (operator === K.PlusPlusToken || operator === K.MinusMinusToken) {
      const by = operator === K.PlusPlusToken ? '--' : '++';
      whole('step', node, ts.isPrefixUnaryExpression(node) ? by + inner : inner + by);
    }
  };

  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) && !ts.isExpressionWithTypeArguments(node)) return;
    if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return;
    if (ts.isExpression(node)) conditions(node);
    if (ts.isBinaryExpression(node)) binary(node);
    else if (ts.isCallExpression(node)) call(node);
    else if (ts.isPrefixUnaryExpression(node) || ts.isPostfixUnaryExpression(node)) unary(node);
    else literal(node);
    if (
      (ts.isPropertyAccessExpression(node) ||
        ts.isElementAccessExpression(node) ||
        ts.isCallExpression(node)) &&
      node.questionDotToken
    ) {
      const dot = node.questionDotToken;
      put('optional', node, dot.getStart(), dot.getEnd(), ts.isPropertyAccessExpression(node) ? '.' : '');
    }
    if (ts.isBlock(node) && node.statements.length && !ts.isCatchClause(node.parent))
      changes.push({ kind: 'block', from: node.getStart(), to: node.getEnd(), by: '{}', at: node });
    if (
      ts.isCaseOrDefaultClause(node) &&
      node.statements.length &&
      !node.statements.some((one) => ts.isVariableStatement(one) || ts.isFunctionDeclaration(one))
    ) {
      const from = (node.statements[0] as ts.Statement).getStart();
      changes.push({ kind: 'case', from, to: node.getEnd(), by: '', at: node });
    }
    if (ts.isArrowFunction(node) && !ts.isBlock(node.body)) {
      const { body } = node;
      if (body.getText() !== 'undefined') whole('function', body, 'undefined');
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return changes;
};

export const parse = (file: string, text: string): ts.SourceFile =>
  ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS);
