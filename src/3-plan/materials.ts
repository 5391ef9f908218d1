// The materials of one book: what each part is cut from, hardware, and the adhesives the steps use.
import type { Definition } from "../1-definition/types.ts";
import type { Model } from "../2-model/types.ts";
import { piecesToCut } from "../2-model/sewing/thread.ts";
import { addLengths, multiplyLength, noLength } from "../units/length.ts";
import { rationalToNumber } from "../units/rational.ts";
import type { DraftStep } from "./binding.ts";
import { postsOf } from "./hardware.ts";
import type { CutItem, MaterialNeed, Step } from "./types.ts";
import { listInWords } from "./wording.ts";
import type { Wording } from "./wording.ts";

/** Materials sold by length: their quantity is a total length, not a number of pieces. */
export const soldByLength: ReadonlySet<string> = new Set(["hinge tape", "ribbon", "thread", "tape", "endband"]);

/** What to buy or have, one entry for each material and adhesive that this book uses. */
export function listMaterials(definition: Definition, model: Model, cutList: readonly CutItem[], steps: readonly Step[], say: Wording, drafts: readonly DraftStep[] = []): readonly MaterialNeed[] {
  const roles = [...new Set(model.parts.map((part) => part.material))];
  const cutMaterials = roles.map((role): MaterialNeed => {
    const material = definition.materials[role]!;
    const items = cutList.filter((item) => item.part.material === role);
    const total = items.reduce((sum, item) => addLengths(sum, multiplyLength(item.part.height, item.part.count)), noLength);
    // A thickness is told only where a size depends on it.
    const matters = model.values.has(`${role} thickness`) || items.some((item) => item.part.readyMade);
    const pieces = items.reduce((sum, item) => sum + item.part.count, 0);
    return {
      role,
      name: material.name,
      pieces: items.map((item) => `${item.part.count} × ${item.part.name} (${item.letter}), ${say.sizes(item.part.height, item.part.width)}`),
      quantity: soldByLength.has(role)
        ? `${say.size(total)} in all`
        : material.sheets.length > 0 ? `from sheets of ${material.sheets.map((sheet) => say.sizes(sheet.height, sheet.width)).join(" or ")}` : pieces === 1 ? "1 piece" : `${pieces} pieces`,
      thickness: matters && material.thickness ? say.thickness(material.thickness) : "",
      note: matters && material.thicknessFrom === "default" ? "thickness is our default: measure yours" : "",
    };
  });
  return [...cutMaterials, ...threadToCut(definition, model, say), ...hardware(definition, model, say), ...adhesivesUsed(steps, drafts, definition, say)];
}

/** The sewing thread, in the lengths that go on a needle. */
function threadToCut(definition: Definition, model: Model, say: Wording): readonly MaterialNeed[] {
  const material = definition.materials["thread"];
  if (!material || !model.thread) return [];
  const { length } = model.thread;
  const pieces = piecesToCut(model.thread).map((each) => `${say.size(each.length)}${each.needles === 2 ? ", a needle at each end" : ""}`);
  return [{
    role: "thread", name: material.name, quantity: `${say.size(length)} in all`, thickness: material.thickness ? say.thickness(material.thickness) : "",
    note: material.thicknessFrom === "default" ? "thickness is our default: measure yours" : "",
    pieces: [...new Set(pieces)].map((text) => `${pieces.filter((each) => each === text).length} × ${text}`),
  }];
}

/** Posts are counted, not cut; other bindings have none. */
function hardware(definition: Definition, model: Model, say: Wording): readonly MaterialNeed[] {
  const material = definition.materials["posts"];
  const posts = postsOf(model);
  if (!material || !posts) return [];
  return [{
    role: "posts", name: material.name, quantity: `${posts.count}`, thickness: "", note: "with caps",
    pieces: [
      `${say.thickness(posts.barrel)} barrel, ${say.size(posts.length)} long`,
      ...posts.extensions.map(({ length, count }) => `${count} extension${count === 1 ? "" : "s"} of ${say.size(length)} to screw into them`),
      ...washers(posts.count, model),
    ],
  }];
}

/** Washers are made, not bought: from offcuts, for posts that are longer than their layers. */
function washers(posts: number, model: Model): readonly string[] {
  const each = model.values.get("washers for each post");
  const count = each ? rationalToNumber(each.quantity.value) : 0;
  return count === 0 ? [] : [`${posts * count} ${posts * count === 1 ? "washer" : "washers"}, made from offcuts of the card`];
}

/** Adhesives by name, with the steps that use them and, where one is laid on in strips, how much; one that comes on a material is bought with it. */
function adhesivesUsed(steps: readonly Step[], drafts: readonly DraftStep[], definition: Definition, say: Wording): readonly MaterialNeed[] {
  const comesOnTape = new Set(Object.values(definition.adhesives).filter((adhesive) => adhesive.id === "self-adhesive-tape").map((adhesive) => adhesive.name));
  const names = [...new Set(steps.flatMap((step) => (step.adhesive ? [step.adhesive.name] : [])))].filter((name) => !comesOnTape.has(name));
  return names.map((name) => {
    const users = steps.filter((step) => step.adhesive?.name === name);
    const strips = users.flatMap((step) => {
      const glueing = drafts.find((draft) => draft.id === step.id)?.glueing;
      return glueing?.inStrips && !definition.adhesives[glueing.job]!.wet ? glueing.spread.map((strip) => ({ ...strip, n: step.n })) : [];
    });
    const total = strips.reduce((sum, strip) => addLengths(sum, multiplyLength(strip.height, strip.count)), noLength);
    const numbers = users.map((step) => String(step.n));
    return {
      role: "adhesive", name, thickness: "", note: strips.length === 0 ? "" : "no wider than the strips, or cut it down",
      pieces: [`for ${numbers.length === 1 ? "step" : "steps"} ${listInWords(numbers)}`, ...strips.map((strip) => `step ${strip.n}: ${strip.count} strips, ${say.sizes(strip.height, strip.width)}`)],
      quantity: strips.length === 0 ? "" : `${say.size(total)} in all`,
    };
  });
}
