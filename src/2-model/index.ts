// Phase 2: a definition becomes a model, the book as geometry with every part, mark and hole by name.
import { bindingIds } from "../catalogue/bindings.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import type { Definition } from "../1-definition/types.ts";
import type { Place, Problem } from "../problems/problem.ts";
import type { BuildBinding } from "./binding.ts";
import type { Finding, Model } from "./types.ts";
import { validateModel } from "./validate-model.ts";

const builders = new Map<BindingId, BuildBinding<BindingId>>();
for (const id of bindingIds) {
  const file = (await import(/* @vite-ignore */ `./${id}.ts`)) as { build: BuildBinding<BindingId> };
  builders.set(id, file.build);
}

/**
 * Builds the model of one definition.
 * A finding of severity `stop` means that the book cannot be made as defined: it comes back as a problem too, placed in the definition.
 * Throws only for mistakes of ours.
 */
export function buildModel<B extends BindingId>(definition: Definition<B>): { readonly model: Model<B>; readonly problems: readonly Problem[] } {
  const build = builders.get(definition.binding) as unknown as BuildBinding<B>;
  const model = build(definition);
  const stops = model.findings.filter((finding) => finding.severity === "stop");
  if (stops.length === 0) validateModel(model);
  return { model, problems: stops.map((finding) => problemFromFinding(finding, definition)) };
}

/** The place of a path in the definition, or of its nearest parent that was written. */
function placeOf(definition: Definition, path: string | null): Place {
  for (let at = path ?? ""; at !== ""; at = at.slice(0, Math.max(0, at.lastIndexOf("/")))) {
    const place = definition.places.get(at);
    if (place) return place;
  }
  return { file: definition.file, span: null };
}

function problemFromFinding(finding: Finding, definition: Definition): Problem {
  return {
    code: "design-impossible",
    severity: "error",
    message: `${finding.where}: ${finding.message}; ${finding.consequence}`,
    hint: finding.remedy,
    place: placeOf(definition, finding.path),
  };
}
