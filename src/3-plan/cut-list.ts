// The cut list: every part with its letter, sizes and grain, in the order in which parts are cut.
import type { Definition } from "../1-definition/types.ts";
import type { Model, PartGrain } from "../2-model/types.ts";
import { letterOf } from "./letters.ts";
import type { CutItem } from "./types.ts";
import type { Wording } from "./wording.ts";

const grainWords: Readonly<Record<PartGrain, string>> = { height: "along the height", width: "along the width", none: "none" };

/** The parts in the order of the model, each with its letter and its sizes as printed. */
export function listCuts(definition: Definition, model: Model, say: Wording): readonly CutItem[] {
  return model.parts.map((part, index) => ({
    letter: letterOf(index, "A"),
    part,
    material: definition.materials[part.material]!.name,
    heightText: say.size(part.height),
    widthText: say.size(part.width),
    grainText: definition.materials[part.material]!.grain === "none" ? grainWords.none : grainWords[part.grain],
    note: part.note,
    figure: `part-${part.id}`,
  }));
}
