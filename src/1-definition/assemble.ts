// Puts a definition together from the keys that were read: defaults, materials, adhesives, steps, and where everything was written.
import type { BindingId } from "../catalogue/bindings.ts";
import type { Place, Problem, Span } from "../problems/problem.ts";
import { rationalToNumber } from "../units/rational.ts";
import { settleAdhesive } from "./adhesive-keys.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { settleClass } from "./class-keys.ts";
import { settleLabels } from "./label-keys.ts";
import { settleMaterial } from "./material-keys.ts";
import { slugOf } from "./names.ts";
import { settleTools } from "./tool-keys.ts";
import { settlePacks } from "./pack-keys.ts";
import { bookletProblem, settlePrint } from "./print-keys.ts";
import { pieceFromNode } from "./prose.ts";
import type { WrittenKeys } from "./shared-keys.ts";
import type { WrittenPicture } from "./step-keys.ts";
import { follow, nodeAt, spansByPath } from "./tree.ts";
import type { MapNode, Path } from "./tree.ts";
import type { AddedStep, Adhesive, Definition, Material, Picture, ProsePiece, StepChange } from "./types.ts";
import { nothingWrittenFor } from "./defaulted.ts";
import type { Version } from "./variants.ts";

/** What a definition is put together from. */
export interface Parts {
  readonly file: string;
  readonly version: Version;
  readonly binding: BindingDefinition;
  readonly written: WrittenKeys;
  readonly prose: readonly ProsePiece[];
}

/** Puts one definition together; problems are those that show only when a value meets a default. */
export function assemble(parts: Parts): { readonly definition: Definition; readonly problems: readonly Problem[] } {
  const { file, version, binding, written } = parts;
  const { root } = version;
  const problems: Problem[] = [];
  const defaulted = new Set(nothingWrittenFor(root, written));

  const materials: Record<string, Material> = {};
  for (const [role, about] of Object.entries(binding.materials)) {
    const fromBook = binding.thicknessFromBook(role, written.book);
    materials[role] = settleMaterial(role, about.usual, written.materials[role] ?? null, fromBook && { thickness: fromBook.thickness, isDefault: defaulted.has(fromBook.path) });
    if (!nodeAt(root, ["materials", role, "name"])) defaulted.add(`materials/${role}/name`);
    if (materials[role].thickness && materials[role].thicknessFrom === "default") defaulted.add(`materials/${role}/thickness`);
    if (about.keys !== "band" && !about.keys.endsWith("hardware") && !nodeAt(root, ["materials", role, "grain"])) defaulted.add(`materials/${role}/grain`);
  }

  const adhesives: Record<string, Adhesive> = {};
  for (const [job, about] of Object.entries(binding.adhesives)) {
    const settled = settleAdhesive(about.usual, written.adhesives[job] ?? null);
    if (settled.ok) adhesives[job] = settled.adhesive;
    else problems.push({ code: "value-range", severity: "error", message: `${settled.key}${settled.says}`, hint: "give both times, the longer one for dry", place: placeAt(file, root, ["adhesives", job, settled.key]) });
    if (!nodeAt(root, ["adhesives", job])) defaulted.add(`adhesives/${job}`);
  }

  const print = settlePrint(written);
  const unfoldable = bookletProblem(print);
  if (unfoldable) problems.push({ ...unfoldable, severity: "error", place: placeAt(file, root, ["documents", "booklet"]) });

  const places = new Map([...spansByPath(root)].map(([path, span]) => [path, { file, span }] as const));
  const definition: Definition = {
    project: version.project,
    file,
    binding: binding.id,
    title: written.title,
    subtitle: subtitleOf(written.subtitle, version),
    summary: written.summary,
    author: written.author,
    revision: written.revision,
    language: written.language,
    level: written.level,
    units: written.units,
    book: written.book as Definition<BindingId>["book"],
    materials,
    measured: Object.fromEntries(Object.entries(written.measured).flatMap(([name, length]) => (length ? [[name, length]] : []))),
    adhesives,
    bench: { sittingMinutes: written.bench.sitting, pace: rationalToNumber(written.bench.pace) },
    tools: settleTools(written.tools),
    class: classOf(parts, problems),
    stepChanges: stepChanges(parts, problems),
    addedSteps: addedSteps(parts),
    prose: parts.prose,
    print,
    defaulted,
    places,
  };
  return { definition, problems };
}

function classOf({ file, version, written }: Parts, problems: Problem[]): Definition["class"] {
  if (!written.class) return null;
  const { packs, problems: ofPacks } = settlePacks(written.class.adhesives);
  for (const { index, key, ...each } of ofPacks) problems.push({ ...each, severity: "error", place: placeAt(file, version.root, ["class", "adhesives", index, key]) });
  const settled = settleLabels(written.class.labels, written.print.paper[0]!);
  if (settled.ok) return settleClass(written.class, settled.sheet, packs);
  const { key, code, message, hint } = settled;
  problems.push({ code, severity: "error", message, hint, place: placeAt(file, version.root, ["class", "labels", key]) });
  return null;
}

/** A variant that says nothing of its own on the cover gets its name there, so that two books never look alike in a list. */
function subtitleOf(subtitle: string | null, version: Version): string | null {
  const { variant } = version;
  if (!variant || variant.written.entries.has("title") || variant.written.entries.has("subtitle")) return subtitle;
  return subtitle === null ? variant.name : `${subtitle} (${variant.name})`;
}

function stepChanges({ file, version, binding, written }: Parts, problems: Problem[]): readonly StepChange[] {
  const changes: StepChange[] = [];
  const steps = nodeAt(version.root, ["steps"]);
  const found = new Map<string, Span>();
  for (const [key, entry] of steps?.kind === "map" ? steps.entries : []) {
    const change = written.steps[key];
    if (!change) continue;
    const step = key.replaceAll(" ", "-");
    if (found.has(step)) problems.push({ code: "name-taken", severity: "error", message: `${key} is the step ${step}, which is changed further up already`, hint: "put the two together", place: { file, span: entry.keySpan } });
    found.set(step, entry.keySpan);
    changes.push({
      step,
      tip: change.tip && pieceFromNode(file, step, change.tip),
      cautions: change.caution.map((node) => pieceFromNode(file, step, node)),
      minutes: change.minutes,
      picture: pictureOf(change.picture),
      place: { file, span: entry.keySpan },
    });
  }
  return changes.sort((a, b) => binding.steps.indexOf(a.step) - binding.steps.indexOf(b.step));
}

function addedSteps({ file, version, binding, written }: Parts): readonly AddedStep[] {
  const taken = new Set(binding.steps);
  return written["add steps"].map((step, index) => {
    const slug = slugOf(step.title) || "own-step";
    let id = slug;
    for (let number = 2; taken.has(id); number += 1) id = `${slug}-${number}`;
    taken.add(id);
    return {
      id,
      after: step.after,
      title: step.title,
      text: pieceFromNode(file, id, step.text),
      minutes: step.minutes,
      cautions: step.caution.map((node) => pieceFromNode(file, id, node)),
      check: step.check,
      picture: pictureOf(step.picture),
      place: placeAt(file, version.root, ["add steps", index, "title"]),
    };
  });
}

function pictureOf(written: WrittenPicture | null): Picture | null {
  return written && { file: written.file, alternative: written.alt };
}

function placeAt(file: string, root: MapNode, path: Path): Place {
  const { node, keySpan } = follow(root, path);
  return { file, span: node.kind === "scalar" ? node.span : keySpan };
}
