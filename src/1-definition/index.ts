// Phase 1: the text of a definition becomes checked definitions, one for each variant, or everything that is wrong with it.
import { bindingIds, bindings } from "../catalogue/bindings.ts";
import { nearestOf } from "../problems/nearest.ts";
import type { Problem, ProblemCode } from "../problems/problem.ts";
import { sortProblems } from "../problems/print-problem.ts";
import type { Unit } from "../units/length.ts";
import { assemble } from "./assemble.ts";
import { definitionOf } from "./binding-definition.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { crossProblems } from "./cross-checks.ts";
import { decodeText } from "./decode-text.ts";
import { keyHomes } from "./key-homes.ts";
import type { FieldContext } from "./leaf.ts";
import { readProse } from "./prose.ts";
import { readTree } from "./read-tree.ts";
import type { TreeReading } from "./read-tree.ts";
import { definitionSchema, findBinding } from "./shared-keys.ts";
import { isScalarNode, nodeAt, writtenOf } from "./tree.ts";
import type { MapNode, Node, ScalarNode } from "./tree.ts";
import type { Definition, DefinitionResult, DefinitionSource, ProsePiece } from "./types.ts";
import { versionsOf } from "./variants.ts";
import type { Version } from "./variants.ts";
import { problemsFromIssues } from "./zod-problems.ts";

/**
 * Reads one project. Every problem of the file and of its prose is reported at once; what is written is never a reason to throw.
 * `definitions` holds the definition itself first, then its variants in the order written; it is empty when any problem is an error.
 */
export function readDefinition(source: DefinitionSource): DefinitionResult {
  const { file } = source;
  const decoded = decodeText(file, source.bytes);
  const texts = new Map([[file, decoded.text]]);
  if (decoded.problems.length > 0) return finish([], decoded.problems, texts);
  const tree = readTree(file, decoded.text);
  const binding = tree.root ? bindingIn(tree.root) : null;
  const prose = readProse(source, binding?.steps ?? null);
  for (const [path, text] of prose.texts) texts.set(path, text);
  const problems = [...tree.problems, ...prose.problems];
  if (!tree.root) return finish([], problems, texts);
  const checked = checkTree(source, tree.root, binding, prose.pieces);
  if (tree.soundUntil === Infinity) return finish(checked.definitions, [...problems, ...checked.problems], texts);
  return finish([], [...problems, ...soundProblems(checked.problems, tree.soundUntil), ...problemsBelow(source, tree, binding)], texts);
}

interface Checked {
  readonly definitions: readonly Definition[];
  readonly problems: readonly Problem[];
}

/** Checks what is written, and each of its variants laid over it. */
function checkTree(source: DefinitionSource, root: Node, binding: BindingDefinition | null, prose: readonly ProsePiece[]): Checked {
  const { file } = source;
  if (root.kind !== "map") return { definitions: [], problems: [notAMapping(file, root)] };
  const { versions, problems: variantProblems } = versionsOf(source.project, file, root);
  const problems = [...variantProblems];
  const definitions: Definition[] = [];
  const baseUnit = unitIn(root);
  let knownHomes: ReadonlyMap<string, readonly string[]> | null = null;
  const homes = (): ReadonlyMap<string, readonly string[]> => (knownHomes ??= keyHomes(binding));
  for (const version of versions) {
    const read = definitionSchema(binding, contextOf(version, baseUnit, source.files)).safeParse(writtenOf(version.root), { jitless: true });
    const found = [...problemsFromIssues({ file, root: version.root, homes }, read.error?.issues ?? []), ...crossProblems(file, version, binding)];
    problems.push(...found.map((problem) => placedInVariant(problem, version)));
    if (!read.success || !binding) continue;
    const { definition, problems: late } = assemble({ file, version, binding, written: read.data, prose });
    problems.push(...late);
    definitions.push(definition);
  }
  return { definitions, problems };
}

/** Down to the line before a syntax error everything is read as it was meant, but keys that seem to be missing may stand below. */
function soundProblems(problems: readonly Problem[], soundUntil: number): readonly Problem[] {
  return problems.filter((problem) => problem.code !== "key-missing" && problem.place.span !== null && problem.place.span.end <= soundUntil);
}

/** What can be said of a value although a line above it is blanked: which keys are missing or misplaced could be an echo. */
const saidOfValues: readonly ProblemCode[] = [
  "value-range", "value-unknown", "length-syntax", "length-unit", "length-range", "duration-syntax", "version-unknown", "picture-outside", "picture-missing", "picture-kind",
];

/** How often lines that cannot be read are blanked to look at the rest; a file with more such lines is mended by its author first. */
const mostMendings = 5;

/**
 * The problems below a syntax error, found in the text without the lines that cannot be read. Further syntax errors count only
 * where something that was never closed had swallowed them: elsewhere they may come from the blanking itself.
 */
function problemsBelow(source: DefinitionSource, tree: TreeReading, binding: BindingDefinition | null): readonly Problem[] {
  const problems: Problem[] = [];
  let current = tree;
  for (let mendings = 0; mendings < mostMendings; mendings += 1) {
    const swallowed = current.problems.some((problem) => problem.message.endsWith("is never closed"));
    const mended = readTree(source.file, current.mended);
    if (swallowed) problems.push(...mended.problems);
    if (!mended.root) return problems;
    if (mended.soundUntil === Infinity) {
      const below = checkTree(source, mended.root, bindingIn(mended.root) ?? binding, []).problems;
      return [...problems, ...below.filter((problem) => saidOfValues.includes(problem.code) && (problem.place.span?.start ?? -1) >= tree.soundUntil)];
    }
    current = mended;
  }
  return problems;
}

/** The same fault shows in a definition and in each of its variants; it is reported once. */
function finish(definitions: readonly Definition[], problems: readonly Problem[], texts: ReadonlyMap<string, string>): DefinitionResult {
  const seen = new Map<string, Problem>();
  for (const problem of problems) {
    const { file, span } = problem.place;
    const key = JSON.stringify([problem.code, file, span?.start, span?.end, problem.message]);
    if (!seen.has(key)) seen.set(key, problem);
  }
  const sorted = sortProblems([...seen.values()]);
  return { definitions: sorted.some((problem) => problem.severity === "error") ? [] : definitions, problems: sorted, texts };
}

/** What a variant lacks as a whole is said at its name. */
function placedInVariant(problem: Problem, { variant }: Version): Problem {
  const name = variant && nodeAt(variant.written, ["name"]);
  return name && problem.place.span === null ? { ...problem, place: { ...problem.place, span: name.span } } : problem;
}

function notAMapping(file: string, root: Node): Problem {
  const written = root.kind === "list" ? "a list" : "a single value";
  return {
    code: "not-a-mapping", severity: "error", place: { file, span: { start: root.span.start, end: root.span.start + 1 } },
    message: `the definition is ${written}, but keys with values are needed`,
    hint: "write key: value lines, starting with benchleaf: 1; the commented example of the binding in examples/ shows them all",
  };
}

/** The binding as written. A misspelt key or name is an error of its own; what was meant still tells which other keys are right. */
function bindingIn(root: Node): BindingDefinition | null {
  if (root.kind !== "map") return null;
  const key = root.entries.has("binding") ? "binding" : [...root.entries.keys()].find((each) => nearestOf(each, ["binding"]) !== null);
  const written = key === undefined ? null : nodeAt(root, [key]);
  const id = written && isScalarNode(written) ? findBinding(written.text) ?? findBinding(nearestOf(written.text, bindingIds.map((each) => bindings[each].name)) ?? "") : null;
  return id && definitionOf(id);
}

/** The governing unit as written, before anything is checked; null when it cannot be read. */
function unitIn(root: MapNode): Unit | null {
  const written = nodeAt(root, ["units"]);
  const unit = written && !isScalarNode(written) ? nodeAt(written, ["governing"]) : written;
  const text = unit && isScalarNode(unit) ? unit.text.trim() : "";
  return text === "mm" || text === "in" ? text : null;
}

/** A bare number is in the unit that governs where it was written, also when a variant with another unit takes it over. */
function contextOf(version: Version, baseUnit: Unit | null, files: ReadonlySet<string>): FieldContext {
  const ownUnit = unitIn(version.root);
  return {
    governing: ownUnit ?? "mm",
    bareUnitOf: (node: ScalarNode) => (version.ownScalars.has(node) ? ownUnit : baseUnit),
    files,
  };
}
