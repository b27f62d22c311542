import { readFileSync } from 'node:fs';
import ts from 'typescript';

/** Functions and classes that are given what is wrong, and the remedy. */
const SAYS =
  /^(?:refuse|refused|refusal|unfit|bad|conflict|failed|regex|refine|RefusedInput|StorageError|PrintError|PictureError|UnfitFile|super)$/;
const NAMED = /^(?:message|remedy|why)$/;

/** What a value that is only known later may be, so that a template can be tried. */
const VALUES = ['7', 'x', 'yd', 'GBP', 'driver', 'carry', 'bag file', 'a finite number', '"x"', ''];
const MORE = [...VALUES, '7.5 MB', 'likely', 'high', 'delivery', 'a text', 'point', 'club'];

/** A sentence of the source, spelt with each of the values that may stand in it. */
export type SourceText = { at: string; spellings: string[] };

/** The sentences by which a file says what is wrong and what to do. */
export function sourceTexts(file: string): SourceText[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const found: SourceText[] = [];
  const take = (node: ts.Expression | undefined) => {
    if (node === undefined) return;
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    for (const template of templatesOf(node)) {
      if (!/^[A-Za-z$]?.*[a-z]{2,}[ ,:].* ?[a-z]{2,}/su.test(template.join(''))) continue;
      found.push({ at: `${file}:${String(line + 1)}`, spellings: spellingsOf(template) });
    }
  };
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) || ts.isNewExpression(node)) {
      const callee = ts.isPropertyAccessExpression(node.expression) ? node.expression.name : node.expression;
      if (SAYS.test(callee.getText())) for (const argument of node.arguments ?? []) take(argument);
    }
    if ((ts.isPropertyAssignment(node) || ts.isVariableDeclaration(node)) && NAMED.test(node.name.getText()))
      take(node.initializer);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Each branch of an expression as its pieces, null where a value stands; none for what is no text. */
function templatesOf(node: ts.Expression): (string | null)[][] {
  if (ts.isStringLiteralLike(node)) return [[node.text]];
  if (ts.isParenthesizedExpression(node)) return templatesOf(node.expression);
  if (ts.isConditionalExpression(node))
    return [...templatesOf(node.whenTrue), ...templatesOf(node.whenFalse)];
  if (!ts.isTemplateExpression(node)) return [];
  return node.templateSpans.reduce<(string | null)[][]>(
    (before, { expression, literal }) => {
      const inner = templatesOf(expression);
      const values = inner.length > 0 ? inner : [[null]];
      return before.flatMap((start) => values.map((value) => [...start, ...value, literal.text]));
    },
    [[node.head.text]],
  );
}

function spellingsOf(template: readonly (string | null)[]): string[] {
  const values = template.filter((piece) => piece === null).length > 2 ? VALUES : MORE;
  return template.reduce<string[]>(
    (before, piece) =>
      before.flatMap((start) => (piece === null ? values : [piece]).map((value) => start + value)),
    [''],
  );
}
