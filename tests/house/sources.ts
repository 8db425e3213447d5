import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

export const root = fileURLToPath(new URL("../../", import.meta.url));

/** Every file below a folder of the project, as paths from the project's root; none where there is no such folder. */
export function filesIn(folder: string, ...endings: string[]): string[] {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter(
      (entry) =>
        entry.isFile() && (endings.length === 0 || endings.some((ending) => entry.name.endsWith(ending))),
    )
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .toSorted();
}

export const textOf = (file: string): string => readFileSync(join(root, file), "utf8");

const trees = new Map<string, ts.SourceFile>();

/** A file's syntax tree; each is parsed once for all tests. */
export function parsed(file: string): ts.SourceFile {
  const known = trees.get(file) ?? parse(file);
  trees.set(file, known);
  return known;
}

const parse = (file: string): ts.SourceFile =>
  ts.createSourceFile(
    file,
    textOf(file),
    ts.ScriptTarget.ES2023,
    true,
    file.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );

export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
}

/** One import or re-export, and whether anything of it is left when the types are gone. */
export interface Import {
  readonly file: string;
  readonly from: string;
  readonly runs: boolean;
}

export function importsOf(file: string): Import[] {
  const found: Import[] = [];
  walk(parsed(file), (node) => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      found.push({ file, from: node.moduleSpecifier.text, runs: runs(node.importClause) });
    } else if (
      ts.isExportDeclaration(node) &&
      node.moduleSpecifier &&
      ts.isStringLiteral(node.moduleSpecifier)
    ) {
      const named =
        node.exportClause && ts.isNamedExports(node.exportClause) ? node.exportClause.elements : null;
      found.push({
        file,
        from: node.moduleSpecifier.text,
        runs: !node.isTypeOnly && (named === null || named.some((one) => !one.isTypeOnly)),
      });
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [from] = node.arguments;
      found.push({ file, from: from && ts.isStringLiteralLike(from) ? from.text : "?", runs: true });
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      const { literal } = node.argument;
      if (ts.isStringLiteral(literal)) found.push({ file, from: literal.text, runs: false });
    }
  });
  return found;
}

function runs(clause: ts.ImportClause | undefined): boolean {
  if (clause === undefined) return true;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return false;
  if (clause.name !== undefined) return true;
  const { namedBindings } = clause;
  if (namedBindings === undefined || ts.isNamespaceImport(namedBindings)) return true;
  return namedBindings.elements.some((one) => !one.isTypeOnly);
}

/** The titles of the tests in a file; what a template puts in stands as "…". */
export function titlesOf(file: string): string[] {
  const titles: string[] = [];
  walk(parsed(file), (node) => {
    if (!ts.isCallExpression(node) || !/^(test|it|describe)\b/.test(node.expression.getText())) return;
    const [title] = node.arguments;
    if (title === undefined) return;
    if (ts.isStringLiteralLike(title)) titles.push(title.text);
    else if (ts.isTemplateExpression(title)) {
      titles.push(title.head.text + title.templateSpans.map((span) => `…${span.literal.text}`).join(""));
    }
  });
  return titles;
}
