// Stage 3 of a case binding: ribbon, mull, endbands and lining on the spine, and the measuring of the finished text block.
import { facesOf, zone } from "../bench/spread.ts";
import type { DraftStep, PlanContext } from "../binding.ts";
import { wetCautions } from "./block.ts";

type Context = PlanContext<"case-binding">;
const stage = "The spine";

/** The steps from the ribbon to the measured text block. */
export function lineSpine(context: Context): readonly DraftStep[] {
  const { geometry } = context.model;
  return [
    ...(geometry.ribbon ? [attachRibbon(context)] : []),
    glueMull(context),
    ...(geometry.endband ? [attachEndbands(context)] : []),
    ...(geometry.lining ? [lineWithPaper(context)] : []),
    measureBlock(context),
  ];
}

function spineSet({ model }: Context): NonNullable<DraftStep["needs"]>[number] {
  return { step: model.geometry.sewing ? "glue-spine" : "fan-glue", until: "set", what: "glued spine" };
}

function attachRibbon(context: Context): DraftStep {
  const { definition, model, say } = context;
  const glued = model.geometry.mull.short;
  const glue = definition.adhesives["linings"]!;
  return {
    id: "attach-ribbon", stage, title: "Glue on the ribbon",
    action: [
      "Stand the book in the press, spine up.",
      `Glue the end of the ribbon to the spine at the head, in the middle, over ${glued.n > 0n ? `${say.size(glued)} of` : "a finger’s breadth of"} its length.`,
      "Lay the rest down between the pages and keep it there, out of the way. Cut its end slanting and seal it with a little adhesive.",
    ],
    parts: ["ribbon"], sizes: [], tools: ["brush", "scissors"], minutes: 5, glueing: { job: "linings", openMinutes: 1, spread: zone(model.geometry.ribbon!.width, model.geometry.ribbon!.width, 4) },
    needs: [spineSet(context)], rest: "as it is", cautions: wetCautions(glue.wet, ["scissors"]), figure: "ribbon",
    check: "Laid cornerwise over a page, the ribbon still hangs out below.",
    mistake: { sign: "The ribbon is glued along the whole spine.", repair: "Pull it free at once down to the glued end and wipe the spine." },
  };
}

function glueMull(context: Context): DraftStep {
  const { definition, model, say } = context;
  const { mull } = model.geometry;
  const glue = definition.adhesives["linings"]!;
  return {
    id: "glue-mull", stage, title: "Glue on the mull",
    action: [
      "Fold the mull lightly along its middle line to mark it.",
      `Brush ${glue.name} over the spine and lay the mull on, its middle on the middle of the spine, ${say.size(mull.short)} from head and tail.`,
      `Rub it down with a fingertip and the bone folder until the adhesive comes through. The ${say.size(mull.onBoards)} on each side stay dry and loose.`,
    ],
    parts: ["mull"],
    sizes: [{ label: "loose on each side", text: say.size(mull.onBoards) }, { label: "from head and tail", text: say.size(mull.short) }],
    tools: ["brush", "wasteSheets", "boneFolder", "press"], minutes: 8, glueing: { job: "linings", openMinutes: 3, spread: zone(mull.height, model.geometry.backWidth) }, needs: [spineSet(context)],
    rest: "in the press, spine up", cautions: wetCautions(glue.wet, ["press", "scissors"]), figure: "spine-lining",
    check: `The mull lies flat on the ${model.geometry.sewing ? "folds of all sections" : "edges of all leaves"}, and equal flaps hang down on both sides.`,
    mistake: { sign: "The mull is glued down askew.", repair: "Pull it off while it is wet and lay it on again; dried askew it may stay, if it does not reach head or tail." },
  };
}

function attachEndbands({ definition, model, say }: Context): DraftStep {
  const length = model.geometry.endband!;
  const glue = definition.adhesives["linings"]!;
  return {
    id: "attach-endbands", stage, title: "Glue on the endbands",
    action: [
      `Cut two pieces of endband, ${say.size(length)} long: exactly from one edge of the back to the other. Seal the cut ends with a little adhesive.`,
      `Brush ${glue.name} on the spine at the head. Set the endband with its bead over the edge of the pages, looking out, and its flange on the spine.`,
      "Do the same at the tail.",
    ],
    parts: ["endband"], sizes: [{ label: "across the back", text: say.size(length) }], tools: ["brush", "scissors", "boneFolder"], minutes: 8,
    glueing: { job: "linings", openMinutes: 2, spread: facesOf(model, "endband") }, needs: [{ step: "glue-mull", until: "set", what: "mull" }], rest: "in the press, spine up", held: ["press"],
    cautions: wetCautions(glue.wet, ["scissors"]), figure: "endbands",
    check: "Seen from the front, only the beads stand up beyond the pages, and neither is higher than the boards will be.",
    mistake: { sign: "A bead stands out beyond the side of the back.", repair: "Trim its end with small scissors; it would catch in the joint." },
  };
}

function lineWithPaper({ definition, model, say }: Context): DraftStep {
  const { geometry } = model;
  const glue = definition.adhesives["linings"]!;
  return {
    id: "line-spine", stage, title: "Line the spine with paper",
    action: [
      "Hold the lining against the back: it must not reach over either edge. Trim it if it does.",
      `Brush ${glue.name} over it and lay it on the mull${geometry.endband ? " and over the flanges of the endbands" : ""}, head to head.`,
      "Rub it down with the bone folder, first along the middle, then to both sides.",
    ],
    parts: ["spine-lining"], sizes: [{ label: "along the back", text: say.thickness(geometry.backWidth) }],
    tools: ["brush", "wasteSheets", "boneFolder", "scissors", "press"], minutes: 8, glueing: { job: "linings", openMinutes: 3, spread: facesOf(model, "spine-lining") },
    needs: [{ step: geometry.endband ? "attach-endbands" : "glue-mull", until: "set", what: geometry.endband ? "endbands" : "mull" }],
    rest: "in the press, spine up", cautions: wetCautions(glue.wet, ["boneFolder", "scissors", "press"]), figure: "lining",
    check: `No air is caught under the paper${geometry.round ? ", and it follows the curve" : ""}.`,
    mistake: { sign: "The lining is wider than the back.", repair: "Trim it flush with scissors before it dries: paper in the joint cracks the endpaper." },
  };
}

function measureBlock({ model, say }: Context): DraftStep {
  const { geometry } = model;
  const { round, block } = geometry;
  return {
    id: "measure-block", stage, title: "Measure the text block",
    action: [
      "Close the book under a light weight and measure straight across the back, from the first endpaper to the last, at head, middle and tail.",
      ...(round ? ["Lay a strip of paper over the back from shoulder to shoulder, mark both ends and measure between the marks."] : []),
      `Compare with the sizes below and write yours in the boxes at the end of the handout. If the back differs by more than 0.5 mm (1⁄32 in), cut ${geometry.sewing ? "spine strip and cloth" : "strip and cloth"} wider or narrower by the same amount.`,
      "Measure height and width of the text block too: boards that are not larger by the squares do not cover it.",
    ],
    parts: [],
    sizes: [
      { label: "across the back", text: say.thickness(geometry.backThickness) },
      ...(round ? [{ label: "along the back", text: say.thickness(round.arc) }] : []),
      { label: "page, height × width", text: say.sizes(block.pageHeight, block.pageWidth) },
    ],
    tools: ["ruler", "pencil"], minutes: 6, cautions: ["weights"], figure: "spine-section",
    needs: [{ step: geometry.lining ? "line-spine" : geometry.endband ? "attach-endbands" : "glue-mull", until: "set", what: geometry.lining ? "lining" : "spine" }],
    check: "Three measures of the back agree to half a millimetre.",
    mistake: { sign: "The back is much thicker than printed.", repair: `${geometry.sewing ? "Press the book harder overnight: swell goes down. If it stays, let" : "The paper is thicker than planned, or adhesive has dried in lumps on the spine. Let"} strip and cloth follow your measure.` },
  };
}
