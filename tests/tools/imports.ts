import ts from 'typescript';

/** One import found in a file, however it is written. */
export interface Import {
  /** What stands between the quotes; null when an `import()` is computed and cannot be read. */
  readonly target: string | null;
  readonly line: number;
}

export function parse(path: string, text: string): ts.SourceFile {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind);
}

/**
 * Every import of a file: `import`, `import type`, `export … from`, `import x = require()`, `import()`, `require()`,
 * types written `import('…').T`, `new URL('…', import.meta.url)`, and `/// <reference>` lines.
 */
export function importsOf(file: ts.SourceFile): Import[] {
  const found: Import[] = [];
  const lineAt = (pos: number) => file.getLineAndCharacterOfPosition(pos).line + 1;
  const add = (at: ts.Node, target: ts.Node | undefined) =>
    found.push({
      target: target && ts.isStringLiteralLike(target) ? target.text : null,
      line: lineAt(at.getStart(file)),
    });
  for (const reference of [...file.referencedFiles, ...file.typeReferenceDirectives]) {
    found.push({ target: reference.fileName, line: lineAt(reference.pos) });
  }

  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) add(node, node.moduleSpecifier);
    else if (ts.isExportDeclaration(node) && node.moduleSpecifier) add(node, node.moduleSpecifier);
    else if (ts.isExternalModuleReference(node)) add(node, node.expression);
    else if (ts.isImportTypeNode(node)) {
      add(node, ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined);
    } else if (ts.isCallExpression(node) && isImporting(node.expression)) add(node, node.arguments[0]);
    else if (ts.isNewExpression(node) && isUrlOfThisModule(node)) add(node, node.arguments?.[0]);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function isImporting(callee: ts.Expression): boolean {
  return callee.kind === ts.SyntaxKind.ImportKeyword || (ts.isIdentifier(callee) && callee.text === 'require');
}

function isUrlOfThisModule(node: ts.NewExpression): boolean {
  const [, base] = node.arguments ?? [];
  return (
    ts.isIdentifier(node.expression) &&
    node.expression.text === 'URL' &&
    base !== undefined &&
    base.getText() === 'import.meta.url'
  );
}
