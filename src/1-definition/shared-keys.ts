// The keys that every definition has, whatever its binding, as one schema with the binding's own part put in.
import { bindingIds, bindings } from "../catalogue/bindings.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import { nearestOf } from "../problems/nearest.ts";
import { rational } from "../units/rational.ts";
import type { Length } from "../units/length.ts";
import { adhesiveOfJob } from "./adhesive-keys.ts";
import type { WrittenAdhesive } from "./adhesive-keys.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { classKeys } from "./class-keys.ts";
import { anything, listWithDefault, mapping, mappingWithDefaults } from "./collections.ts";
import type { MappingOf } from "./collections.ts";
import { choice, decimal, duration, yesOrNo } from "./fields.ts";
import { leaf, listOf, shownValue } from "./leaf.ts";
import { optionalLength } from "./length-fields.ts";
import { optionalText, text } from "./text-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { materialOfRole } from "./material-keys.ts";
import type { WrittenMaterial } from "./material-keys.ts";
import { addedSteps, stepChanges } from "./step-keys.ts";
import { documentKeys, printKeys } from "./print-keys.ts";
import type { BookOf } from "./types.ts";
import { rulerStep } from "./ruler-step.ts";
import { toolLimitKeys } from "./tool-keys.ts";

/** Everything a definition holds after reading, by the keys as written, before it is put together. */
export type WrittenKeys = MappingOf<ReturnType<typeof sharedShape>>;

/** The schema of a definition with the part of its binding; without a binding that part is not looked at. */
export function definitionSchema(binding: BindingDefinition | null, context: FieldContext): Field<WrittenKeys> {
  return mapping(sharedShape(binding, context), { about: "One book, described for its maker.", example: "…" });
}

function sharedShape(binding: BindingDefinition | null, context: FieldContext) {
  return {
    benchleaf: formatVersion(),
    binding: bindingName(),
    title: text({ about: "Title of the instructions.", most: 120, example: "Nine-leaf album" }),
    subtitle: optionalText({ about: "A second line under the title.", most: 160, example: "for pressed leaves" }),
    summary: text({ about: "One or two sentences for the cover and the list of projects.", most: 400, example: "An album whose pages stand on stubs." }),
    author: mapping({
      name: text({ about: "Who wrote the instructions.", most: 120, example: "A. Teacher" }),
      workshop: optionalText({ about: "The workshop or school.", most: 120, example: "Evening class" }),
    }, { about: "Who answers for the instructions.", example: "{name: A. Teacher}" }),
    revision: text({ about: "What you call this state of the instructions; printed in every footer.", most: 30, default: "1", example: "2" }),
    language: choice({ about: "Language of the instructions; only English is there today.", of: ["en"], default: "en" }),
    level: choice({ about: "What the maker has done before.", of: ["first book", "some practice", "practised"], default: "some practice" }),
    units: mapping({
      governing: choice({ about: "The unit of the bench: sizes are rounded in it, and numbers without a unit are read in it.", of: ["mm", "in"] }),
      step: rulerStep(context),
      dual: yesOrNo({ about: "Whether the other unit is printed behind every size.", default: false }),
    }, { about: "Units of the project.", shorthand: "governing", example: "mm" }),
    book: (binding ? binding.book(context) : anything) as Field<BookOf<BindingId>>,
    materials: (binding ? mappingWithDefaults(mapEntries(binding.materials, (role) => materialOfRole(role, context)), {
      about: "The materials in hand, by what they are used for.", noun: "material of this binding", example: "{card: {thickness: 0.4 mm}}",
    }) : anything) as Field<Readonly<Record<string, WrittenMaterial | null>>>,
    measured: (binding ? mappingWithDefaults(mapEntries(binding.measured, (value) => optionalLength(context, value)), {
      about: "Values measured off the real object; each governs over what is calculated.", noun: "value that can be measured here", unknownCode: "name-unknown",
      example: exampleOf(binding.measured, (value) => value.example),
    }) : anything) as Field<Readonly<Record<string, Length | null>>>,
    adhesives: (binding ? mappingWithDefaults(mapEntries(binding.adhesives, adhesiveOfJob), {
      about: "The adhesive of each job.", noun: "job of this binding", example: exampleOf(binding.adhesives, () => "PVA"),
    }) : anything) as Field<Readonly<Record<string, WrittenAdhesive | null>>>,
    bench: mappingWithDefaults({
      sitting: duration({ about: "Length of one sitting at the bench, breaks not counted.", least: 20, most: 12 * 60, limits: "from 20 min to 12 h", default: 180, defaultText: "3 h", example: "3 h" }),
      pace: decimal({ about: "Factor on all working times: 1 for a beginner, less for the quick. Default: 1.", least: "0.25", most: "4", default: rational(1), example: "1.5" }),
    }, { about: "Time at the bench.", example: "{sitting: 3 h}" }),
    tools: toolLimitKeys(context),
    class: classKeys(context),
    steps: (binding ? stepChanges(binding.steps, context) : anything) as ReturnType<typeof stepChanges>,
    "add steps": (binding ? addedSteps(binding.steps, context) : anything) as ReturnType<typeof addedSteps>,
    print: printKeys(context),
    documents: documentKeys(),
    variants: listWithDefault(variantEntry, [], { about: "The same book in other sizes or units, built beside it.", most: 12, oneMayStandAlone: false, mayBeEmpty: true }),
  };
}

/** The top keys of a definition that a variant may change. */
export const variantKeys = [
  "title", "subtitle", "summary", "author", "revision", "level", "units", "book", "materials", "measured", "adhesives", "bench", "tools", "class", "steps", "add steps", "print", "documents",
] as const;

/** Only the frame of a variant is checked here; what it changes is checked once it is merged over the definition. */
const variantEntry = mapping({
  name: text({ about: "What the variant is called; it becomes part of its folder's name.", most: 40, example: "small" }),
  ...Object.fromEntries(variantKeys.map((key) => [key, anything])),
}, { about: "A name, and the keys that are different.", noun: "key that a variant can change", example: "{name: small, book: …}" });

/** Format versions that are read. */
export const knownVersions: readonly number[] = [1];

function formatVersion(): Field<number> {
  return leaf<number>({
    about: "Version of this file's format.",
    expected: "1",
    example: "1",
    json: { enum: knownVersions },
    read: (node) => {
      const version = knownVersions.find((known) => String(known) === node.text.trim());
      if (version !== undefined) return { ok: true, value: version };
      return { ok: false, code: "version-unknown", says: ` is ${shownValue(node.text)}, a format version that is not known here`, hint: "write benchleaf: 1" };
    },
  });
}

/** The binding that a text names by id or by name; null for none. */
export function findBinding(written: string): BindingId | null {
  return bindingIds.find((id) => id === written.trim() || bindings[id].name === written.trim()) ?? null;
}

function bindingName(): Field<BindingId> {
  const names = bindingIds.map((id) => bindings[id].name);
  return leaf<BindingId>({
    about: "How the book is bound.",
    expected: `the name of a binding: ${listOf(names)}`,
    example: names[0]!,
    json: { enum: [...names, ...bindingIds.filter((id) => !names.includes(id as never))] },
    read: ({ text: written }) => {
      const id = findBinding(written);
      if (id) return { ok: true, value: id };
      const near = nearestOf(written, names);
      return { ok: false, code: "binding-unknown", says: `: ${shownValue(written)} is not a binding that is known here`, hint: near ? `did you mean ${near}?` : `write ${listOf(names)}` };
    },
  });
}


function exampleOf<A>(record: Readonly<Record<string, A>>, valueOf: (value: A) => string): string {
  const [key, value] = Object.entries(record)[0] ?? [];
  return key === undefined || value === undefined ? "{}" : `{${key}: ${valueOf(value)}}`;
}

function mapEntries<A, B>(record: Readonly<Record<string, A>>, change: (value: A) => B): Readonly<Record<string, B>> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, change(value)]));
}
