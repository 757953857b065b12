import ts from 'typescript';

/** A use of something that belongs to the world outside: the name, and the line it is on. */
export interface Use {
  readonly name: string;
  readonly line: number;
}

/**
 * Where a file uses one of the globals named (`Date`, or one property, `Math.random`), as a value or as a type.
 * A property of that name (`opening.window`) and a name the file declares itself are no use of the global.
 */
export function worldlyUses(file: ts.SourceFile, globals: readonly string[]): Use[] {
  const declared = declaredNames(file);
  const uses: Use[] = [];
  const add = (node: ts.Node, name: string) =>
    uses.push({ name, line: file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1 });
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && globals.includes(node.text) && !declared.has(node.text) && !isOnlyAName(node)) {
      add(node, node.text);
    }
    const property = propertyOf(node);
    if (property !== null && globals.includes(property)) add(node, property);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return uses;
}

/** `Math.random` for `Math.random`, `Math['random']` and `const { random } = Math`; null for anything else. */
function propertyOf(node: ts.Node): string | null {
  if (ts.isPropertyAccessExpression(node) && ts.isIdentifier(node.expression)) {
    return `${node.expression.text}.${node.name.text}`;
  }
  if (ts.isElementAccessExpression(node) && ts.isIdentifier(node.expression)) {
    const key = node.argumentExpression;
    return ts.isStringLiteralLike(key) ? `${node.expression.text}.${key.text}` : null;
  }
  if (ts.isBindingElement(node) && ts.isVariableDeclaration(node.parent.parent)) {
    const from = node.parent.parent.initializer;
    return from && ts.isIdentifier(from) ? `${from.text}.${(node.propertyName ?? node.name).getText()}` : null;
  }
  return null;
}

function isOnlyAName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  if (ts.isQualifiedName(parent)) return parent.right === node;
  if (ts.isBindingElement(parent)) return parent.propertyName === node;
  if (ts.isShorthandPropertyAssignment(parent)) return false;
  const named = parent as { name?: ts.Node };
  return named.name === node;
}

/**
 * Names that the file declares anywhere: variables, parameters, functions, imports, types. Where the name holds is not
 * followed: a file that has its own `window` is trusted with it, and the compiler, which has no DOM there, finds the rest.
 */
function declaredNames(file: ts.SourceFile): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (
      ts.isVariableDeclaration(node) ||
      ts.isParameter(node) ||
      ts.isBindingElement(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isImportSpecifier(node) ||
      ts.isImportClause(node) ||
      ts.isTypeAliasDeclaration(node) ||
      ts.isInterfaceDeclaration(node)
    ) {
      if (node.name && ts.isIdentifier(node.name)) names.add(node.name.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return names;
}
