// The last stage of a case binding: hanging the text block in its case, pressing the joints, first opening.
import { zone } from "../bench/spread.ts";
import type { DraftStep, PlanContext } from "../binding.ts";
import { wetCautions } from "./block.ts";

type Context = PlanContext<"case-binding">;
const stage = "Casing in";

/** The steps from the dry fitting to the first opening. */
export function caseIn(context: Context): readonly DraftStep[] {
  return [hangBlock(context), pressBook(context), finish(context)];
}

/** Whether rods are thick enough to stand out between the boards. */
function hasRods({ model }: Context): boolean {
  const { rod, boardThickness } = model.geometry;
  return rod.n * boardThickness.d >= boardThickness.n * rod.d;
}

function hangBlock({ definition, model, say }: Context): DraftStep {
  const { geometry } = model;
  const glue = definition.adhesives["pastedowns"]!;
  const lastCover = geometry.covering.sides ? "cover-sides" : "turn-in";
  const flaps = geometry.sewing ? "mull and tapes" : "mull";
  return {
    id: "case-in", stage, title: "Case in",
    action: [
      `Try it dry: lay the text block in the case, spine against the strip. The same square, ${say.size(geometry.square)}, must show at head, tail and fore-edge.`,
      `Lay the open case on the bench, inside up, and the text block on its back board with the squares right. Put a barrier sheet and waste paper between the two leaves of the upper endpaper.`,
      `Lay the ${flaps} down on the endpaper${geometry.sewing ? ", the tapes fanned out a little" : ""}. Brush ${glue.name} under them, then over everything: endpaper, ${flaps}, thinly and out to all edges.`,
      "Take the waste paper away, keep the barrier sheet. Without moving the block, lift the front board over and press it down on the endpaper. Do not open it.",
      "Turn the book over and do the same on the other side.",
      `Work the cloth into both joints with the bone folder${geometry.round ? ", and mould it over the round back with your palms" : ""}.`,
    ],
    parts: [], sizes: [{ label: "squares", text: say.size(geometry.square) }, { label: "groove", text: say.size(geometry.groove) }],
    tools: ["brush", "wasteSheets", "barrier", "boneFolder"], minutes: 20, glueing: { job: "pastedowns", openMinutes: 6, spread: zone(geometry.endpaperHeight, geometry.boardWidth, 2) },
    needs: [
      { step: lastCover, until: "dry", what: "case" },
      { step: geometry.lining ? "line-spine" : geometry.endband ? "attach-endbands" : "glue-mull", until: "dry", what: "lined spine" },
    ],
    rest: "in the press, as the next step says", cautions: wetCautions(glue.wet, ["boneFolder"]), figure: "case-in",
    notices: [{ hazard: "An endpaper wet with adhesive stretches and sticks at the first touch.", consequence: "It wrinkles, or the squares come out uneven.", avoid: "Have everything at hand before you brush, and set the board down once, from the spine outwards." }],
    check: "Seen from outside, the squares are even, and the boards lie parallel to the pages.",
    mistake: { sign: "The squares are uneven.", repair: "While it is wet: pull the board off slowly from the fore-edge, and set it again. Later it stays." },
  };
}

function pressBook(context: Context): DraftStep {
  const { model, say } = context;
  const { geometry } = model;
  const rods = hasRods(context);
  return {
    id: "press-book", stage, title: "Press the book",
    action: [
      "Peep in once: open each board a finger’s breadth and smooth a wrinkle out towards the edge. Put fresh barrier sheets between the endpapers.",
      rods ? `Lay a rod of ${say.size(geometry.rod)} into each joint, on both sides of the book.` : "Rub both joints in once more with the bone folder; rods would be too thin for this groove.",
      `Lay the book between pressing boards${rods ? ", their edges on the rods" : ", the boards’ edges along the joints, the spine outside"}, and set the weights in the middle, or close the press.`,
    ],
    parts: [], sizes: rods ? [{ label: "joint rods", text: `2 on each side, ${say.size(geometry.rod)} thick` }] : [],
    tools: ["barrier", ...(rods ? ["rods" as const] : []), "boneFolder", "pressingBoards", "weight", "press"], minutes: 8,
    // Weights or the press: only the weights are counted on, because a class has more of them.
    follows: [{ step: "case-in", adhesive: "open" }], pressesFor: "case-in", held: ["pressingBoards", "weight"],
    cautions: ["press", "weights"], figure: "pressing",
    check: "The joints are straight grooves from head to tail, and nothing slides when you let go.",
    mistake: { sign: "The book has slipped askew under the weight.", repair: "Take the weight off, push spine and boards true, and load it again, with a block on either side." },
  };
}

function finish({ definition, model, say }: Context): DraftStep {
  const { geometry } = model;
  return {
    id: "finish", stage, title: "Open the book for the first time",
    action: [
      `Take the book out only when it is dry, and take the barrier sheets out${definition.adhesives["pastedowns"]!.wet ? "; a cool endpaper is still damp" : ""}.`,
      "Stand it on its spine. Lay the front board down, then the back board, then a few pages from the front and a few from the back by turns, smoothing each down along the spine, until you reach the middle.",
      "Shut it and leave it under a light weight for another day.",
    ],
    parts: [],
    sizes: [
      { label: "finished book, height × width", text: say.sizes(model.finished.height, model.finished.width) },
      { label: "thickness at the spine", text: say.size(model.finished.thickness) },
      { label: "pages", text: String(geometry.block.pages) },
    ],
    tools: ["weight"], minutes: 8, needs: [{ step: "case-in", until: "dry", what: "endpapers on the boards" }], cautions: ["weights"], figure: "finished-spine",
    check: "Both boards open flat on the table, and the book closes by itself.",
    mistake: { sign: "A board pulls inwards (warps).", repair: "The endpaper has shrunk. Leave the book shut under weight for two days more; next time, lay the adhesive thinner." },
  };
}
