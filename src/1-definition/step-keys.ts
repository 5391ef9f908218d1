// The keys by which an author changes the binding's steps and adds steps.
import { nearestOf } from "../problems/nearest.ts";
import { listWithDefault, mapping, mappingWithDefaults, optionalMapping } from "./collections.ts";
import { published } from "./field-json.ts";
import type { JsonSchema } from "./field-json.ts";
import { count, optionalCount } from "./fields.ts";
import { leaf, shownValue } from "./leaf.ts";
import { markdown, optionalMarkdown, optionalText, text } from "./text-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { pictureKinds, readPicturePath } from "./picture-path.ts";
import type { ScalarNode } from "./tree.ts";
import type { Picture } from "./types.ts";

/** What an author changes in a step; Markdown is still the node it is written in. */
export interface WrittenStepChange {
  readonly tip: ScalarNode | null;
  readonly caution: readonly ScalarNode[];
  readonly minutes: number | null;
  readonly picture: WrittenPicture | null;
}

/** A picture with the text for those who cannot see it. */
export interface WrittenPicture {
  readonly file: string;
  readonly alt: string;
}

/** A step of the author's own, after one of the binding's steps. */
export interface WrittenStep {
  readonly title: string;
  readonly after: string;
  readonly text: ScalarNode;
  readonly minutes: number;
  readonly caution: readonly ScalarNode[];
  readonly check: string | null;
  readonly picture: WrittenPicture | null;
}

/** Longest working time of one step, in minutes. */
const longestStep = 8 * 60;

/** The schema of `steps:`, keyed by step ids with hyphens or blanks; the published form completes those with blanks. */
export function stepChanges(ids: readonly string[], context: FieldContext): Field<Readonly<Record<string, WrittenStepChange | null>>> {
  const change = optionalMapping({
    tip: optionalMarkdown({ about: "A tip.", most: 2000 }),
    caution: cautions(),
    minutes: optionalCount({ about: "Working time in minutes.", least: 1, most: longestStep, example: 20 }),
    picture: picture(context),
  }, { about: "What you add to or change in this step.", example: "{tip: …}" });
  const spaced = ids.map((id) => id.replaceAll("-", " "));
  const shape = Object.fromEntries([...spaced, ...ids].map((id) => [id, change]));
  const field = mappingWithDefaults(shape, { about: "Changes to the binding's own steps.", noun: "step of this binding", unknownCode: "step-unknown", example: "{fold card: {tip: …}}" });
  return published(field, (derived) => {
    const properties = derived["properties"] as Record<string, JsonSchema>;
    const step = { title: "change to a step", ...properties[spaced[0]!] };
    const hyphened = ids.filter((id) => id.includes("-"));
    return {
      description: derived["description"], type: derived["type"], additionalProperties: false,
      properties: Object.fromEntries(spaced.map((id) => [id, step])),
      ...(hyphened.length > 0 ? { patternProperties: { [`^(?:${hyphened.join("|")})$`]: step } } : {}),
    };
  });
}

/** The schema of `add steps:`. */
export function addedSteps(ids: readonly string[], context: FieldContext): Field<readonly WrittenStep[]> {
  const item = mapping({
    title: text({ about: "What is done, in the imperative.", most: 120, example: "Sign the back" }),
    after: stepName(ids),
    text: markdown({ about: "How it is done.", most: 8000 }),
    minutes: count({ about: "Working time in minutes.", least: 1, most: longestStep, example: 10 }),
    caution: cautions(),
    check: optionalText({ about: "How the maker can tell that it is right.", most: 400, example: "the ink does not smear" }),
    picture: picture(context),
  }, { about: "A step of your own.", example: "{title: …, after: …, text: …, minutes: 10}" });
  return listWithDefault(item, [], { about: "Steps of your own.", most: 60, oneMayStandAlone: false, mayBeEmpty: true });
}

function cautions(): Field<readonly ScalarNode[]> {
  const about = "What can go wrong or hurt, what happens then, how to avoid it; printed before the action.";
  return listWithDefault(markdown({ about, most: 1000 }), [], { about, most: 10, oneMayStandAlone: true, mayBeEmpty: false });
}

function picture(context: FieldContext): Field<WrittenPicture | null> {
  return optionalMapping({
    file: leaf<Picture["file"]>({
      about: `Path within the project's folder, with forward slashes; ${pictureKinds.join(", ")}.`,
      expected: "a path such as pictures/fold.jpg",
      example: "pictures/fold.jpg",
      json: { type: "string", pattern: `^(?![/~]|[A-Za-z][A-Za-z0-9+.-]*:)[^\\\\]+\\.(?:${[...pictureKinds, ...pictureKinds.map((kind) => kind.toUpperCase())].join("|")})$`, examples: ["pictures/fold.jpg"] },
      read: (node) => readPicturePath(node.text, context.files),
    }),
    alt: text({ about: "What the picture shows, for those who cannot see it.", most: 300, example: "Thumb and bone folder on a crest" }),
  }, { about: "A picture of your own.", example: "{file: pictures/fold.jpg, alt: …}" });
}

function stepName(ids: readonly string[]): Field<string> {
  const spaced = ids.map((id) => id.replaceAll("-", " "));
  return leaf<string>({
    about: "The step of the binding that it follows.",
    expected: `a step such as ${spaced[0]!}`,
    example: spaced[0]!,
    json: { enum: [...new Set([...spaced, ...ids])] },
    read: ({ text: written }) => {
      const id = written.trim().replaceAll(" ", "-");
      if (ids.includes(id)) return { ok: true, value: id };
      const near = nearestOf(written, spaced);
      return { ok: false, code: "step-unknown", says: `: ${shownValue(written)} is not a step of this binding`, hint: near ? `did you mean ${near}?` : `steps are ${spaced.join(", ")}` };
    },
  });
}
