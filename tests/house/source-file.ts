// A TypeScript file as the house rules look at it: its imports, its exported names and where each of them stands.
import ts from "typescript";
import { projectFiles, readProjectFile } from "./project-files.ts";

/** A file that has been parsed; `path` is relative to the project's folder. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
  readonly tree: ts.SourceFile;
}

/** One import, `export … from` or `import()`. */
export interface ImportOf {
  /** As written between the quotes; of a template literal, the part before the first `${`. */
  readonly from: string;
  /** Within the project, relative to its folder; null for a package. */
  readonly target: string | null;
  readonly at: string;
}

/** One name that a file exports by its own declaration. */
export interface ExportOf {
  readonly name: string;
  readonly kind: "function" | "value" | "type";
  readonly hasDocComment: boolean;
  readonly at: string;
}

/** Parses a text as the file of a path: for the rules' own samples too. */
export function parseSource(path: string, text: string): SourceFile {
  return { path, text, tree: ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true) };
}

/** All TypeScript files below a folder; declaration files describe other people's packages and are left out. */
export function sourceFiles(folder: string): readonly SourceFile[] {
  return projectFiles().filter((file) => file.startsWith(folder) && file.endsWith(".ts") && !file.endsWith(".d.ts")).map((file) => parseSource(file, readProjectFile(file)));
}

/** `src/units/length.ts:12`: where a message points to. */
export function placeIn(file: SourceFile, node: ts.Node): string {
  return `${file.path}:${file.tree.getLineAndCharacterOfPosition(node.getStart(file.tree)).line + 1}`;
}

/** Every node of a file, outermost first. */
export function nodesOf(file: SourceFile): readonly ts.Node[] {
  const nodes: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    nodes.push(node);
    ts.forEachChild(node, visit);
  };
  visit(file.tree);
  return nodes;
}

/** All that a file imports, in order. */
export function importsOf(file: SourceFile): readonly ImportOf[] {
  return nodesOf(file).flatMap((node) => {
    const from = importedBy(node);
    if (!from) return [];
    const text = ts.isTemplateExpression(from) ? from.head.text : ts.isStringLiteralLike(from) ? from.text : "";
    const folder = file.path.slice(0, file.path.lastIndexOf("/") + 1);
    return [{ from: text, target: text.startsWith(".") ? new URL(text, `file:///${folder}`).pathname.slice(1) : null, at: placeIn(file, node) }];
  });
}

function importedBy(node: ts.Node): ts.Expression | null {
  if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier) return node.moduleSpecifier;
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) return node.arguments[0] ?? null;
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal)) return node.argument.literal;
  return null;
}

/** A file's imports that are carried out when it is loaded: no types, no `import()`. */
export function loadedWith(file: SourceFile): readonly string[] {
  const statements = file.tree.statements.filter((statement) => {
    if (ts.isImportDeclaration(statement)) return statement.importClause?.phaseModifier !== ts.SyntaxKind.TypeKeyword;
    return ts.isExportDeclaration(statement) && !statement.isTypeOnly;
  });
  const alone = parseSource(file.path, statements.map((statement) => statement.getText(file.tree)).join("\n"));
  return importsOf(alone).map(({ target, from }) => target ?? from);
}

/** Names that a file declares and exports; names passed on from another file have their comment there and are not listed. */
export function exportsOf(file: SourceFile): readonly ExportOf[] {
  return file.tree.statements.flatMap((statement): readonly ExportOf[] => {
    const isExported = ts.canHaveModifiers(statement) && ts.getModifiers(statement)?.some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword);
    if (!isExported) return [];
    const rest = { hasDocComment: hasDocComment(statement), at: placeIn(file, statement) };
    if (ts.isFunctionDeclaration(statement)) return [{ name: statement.name?.text ?? "default", kind: "function", ...rest }];
    if (ts.isClassDeclaration(statement)) return [{ name: statement.name?.text ?? "default", kind: "value", ...rest }];
    if (ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement)) return [{ name: statement.name.text, kind: "type", ...rest }];
    if (!ts.isVariableStatement(statement)) return [];
    return statement.declarationList.declarations.map((declaration) => ({
      name: declaration.name.getText(file.tree),
      kind: declaration.initializer && ts.isArrowFunction(declaration.initializer) ? "function" as const : "value" as const,
      ...rest,
    }));
  });
}

function hasDocComment(statement: ts.Statement): boolean {
  return ts.getJSDocCommentsAndTags(statement).some((comment) => ts.isJSDoc(comment) && comment.getText().replace(/[/*\s]/g, "") !== "");
}
