import ts from 'typescript';

/** Exact in every engine: correctly rounded or without rounding. */
const exact = new Set(['sqrt', 'floor', 'ceil', 'round', 'trunc', 'sign', 'abs', 'min', 'max', 'PI']);
/** Rounds the binary number, or writes it in the manner of a place. */
const writing = new Set(['toFixed', 'toPrecision', 'toExponential', 'toLocaleString']);
const powers = new Set([ts.SyntaxKind.AsteriskAsteriskToken, ts.SyntaxKind.AsteriskAsteriskEqualsToken]);

/** What in a TypeScript source may give other bits, or other digits, on another machine: 'line 3: Math.sin'. */
export function inexact(source: string): string[] {
  const file = ts.createSourceFile('source.ts', source, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const what = named(node);
    if (what !== undefined) found.push(`line ${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}: ${what}`);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function named(node: ts.Node): string | undefined {
  if (ts.isBinaryExpression(node) && powers.has(node.operatorToken.kind)) return node.operatorToken.getText();
  if (ts.isPropertyAccessExpression(node) && writing.has(node.name.text)) return node.name.text;
  if (ts.isIdentifier(node) && node.text === 'Math') return ofMath(node);
  if (ts.isStringLiteral(node) && node.text === 'mathjs' && ts.isImportDeclaration(node.parent)) return node.getText();
  return undefined;
}

function ofMath(node: ts.Identifier): string | undefined {
  const access = node.parent;
  if (!ts.isPropertyAccessExpression(access) || access.expression !== node) return 'Math';
  return exact.has(access.name.text) ? undefined : `Math.${access.name.text}`;
}
