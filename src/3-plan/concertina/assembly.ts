// Stage 4 of the concertina: closure, the two end panels on their boards, and the last check.
import { zone } from "../bench/spread.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

const coversDry = { step: "turn-in", until: "dry", what: "turned-in covers" } as const;

/** The steps from the ribbon to the last check. */
export function joinBookAndCovers(context: PlanContext<"concertina">): readonly DraftStep[] {
  const { closure } = context.model.geometry;
  return [
    ...(closure?.kind === "ribbon" ? [attachRibbon(context)] : []),
    glueFront(context), glueBack(context),
    ...(closure?.kind === "band" ? [makeBand(context)] : []),
    finish(context),
  ];
}

function attachRibbon({ definition, model, say }: PlanContext<"concertina">): DraftStep {
  const { closure } = model.geometry;
  if (closure?.kind !== "ribbon") throw new Error("internal error: no ribbon");
  const glue = definition.adhesives["closure"]!;
  return {
    id: "attach-ribbon", stage: "Put together", title: "Glue the ribbon across the back board",
    action: [
      "Choose the back board. Lay it inside up, its spine edge to your left, and mark half its height on both of these edges.",
      `Mark the ribbon ${say.size(closure.longEnd)} from one end: this is the long end, it goes out at the spine edge.`,
      `${glue.wet ? `Brush a line of ${glue.name}, as wide as the ribbon,` : `Lay ${glue.name}`} across the board from mark to mark.`,
      "Lay the ribbon on it with its mark at the spine edge, straight and flat, and rub it down. Seal the ends against fraying.",
    ],
    parts: ["boards", "closure-ribbon"],
    sizes: [{ label: "long end, beyond the spine edge", text: say.size(closure.longEnd) }, { label: "short end, beyond the fore-edge", text: say.size(closure.shortEnd) }],
    tools: ["pencil", "ruler", "scissors", ...(glue.wet ? ["brush" as const] : []), "boneFolder"], minutes: 7,
    glueing: { job: "closure", openMinutes: 2, spread: zone(model.geometry.boardWidth, closure.width) }, needs: [{ step: "turn-in", until: "set", what: "turned-in covers" }], rest: "flat",
    cautions: glue.wet ? ["scissors", "wetAdhesive"] : ["scissors"], figure: "closure",
    check: "The ribbon lies square to the spine edge, and no adhesive shows beside it.",
    mistake: { sign: "The long end hangs out at the fore-edge.", repair: "Turn the board round head to tail: the long end is then at the spine edge. Only when the covering has an upright pattern must the ribbon be peeled off and laid anew." },
  };
}

function glueFront({ definition, model, say }: PlanContext<"concertina">): DraftStep {
  const { geometry } = model;
  const glue = definition.adhesives["ends"]!;
  return {
    id: "glue-front", stage: "Put together", title: "Glue the first panel to the front board",
    action: [
      "Lay the front board inside up and try the shut strip on it: the same square on all four sides, the first fold at the spine edge.",
      "Lay the shut strip down with panel 1 on top, its back up. Slip waste paper under panel 1, so that it covers all the rest.",
      glue.wet ? `Brush ${glue.name} over panel 1 from the middle outwards, thinly, over all its edges.` : `Cover panel 1 with ${glue.name}, out to its edges.`,
      `Take the waste paper away, turn the strip over onto the board, ${say.about(say.size(geometry.square))} in from every edge, and press.`,
      "Lift the strip open and rub panel 1 down through clean paper, from the fold outwards. Lay a barrier sheet between panels 1 and 2.",
    ],
    parts: ["boards"],
    sizes: [{ label: "square on all four sides", text: say.size(geometry.square) }],
    tools: [...(glue.wet ? ["brush" as const] : []), "wasteSheets", "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 10,
    glueing: { job: "ends", openMinutes: 3, spread: zone(geometry.panelHeight, geometry.panelWidth) },
    needs: [coversDry, ...(geometry.strips.length > 1 ? [{ step: "join-strips", until: "set", what: "joins" } as const] : []), ...(geometry.closure?.kind === "ribbon" ? [{ step: "attach-ribbon", until: "set", what: "ribbon" } as const] : [])],
    rest: "shut, a barrier sheet between panels 1 and 2, under a weight",
    cautions: glue.wet ? ["wetAdhesive", "weights"] : ["weights"],
    notices: glue.wet ? [{ hazard: "Damp paper grows across its grain.", consequence: "A panel that lies wet for long gets wider than its squares allow.", avoid: "Brush thinly, and lay the panel down at once." }] : [],
    figure: "glue-front",
    check: "The board shows the same square at head, tail, spine edge and fore-edge, and the first fold opens freely.",
    mistake: { sign: "The panel lies askew.", repair: "Lift it at once, from a corner, and set it down again. Once it holds, leave it, and set the back board to match the front board, not the strip." },
  };
}

function glueBack({ definition, model, say }: PlanContext<"concertina">): DraftStep {
  const { panels, closure, lastPanelGlued, square } = model.geometry;
  const glue = definition.adhesives["ends"]!;
  return {
    id: "glue-back", stage: "Put together", title: "Glue the last panel to the back board",
    action: [
      `Lay the book down on its front board, the strip shut on it: panel ${panels} is on top, its ${lastPanelGlued} up.`,
      `Slip waste paper under panel ${panels}, so that it covers all the rest.`,
      `${glue.wet ? `Brush ${glue.name} over panel ${panels}, thinly, over all its edges` : `Cover panel ${panels} with ${glue.name}, out to its edges`}, and take the waste paper away.`,
      `Lower the back board onto it, inside down${closure?.kind === "ribbon" ? ", the long end of the ribbon at the spine edge" : ""}, its edges above those of the front board. Test all four sides with the set square.`,
      `Press, open the back board, and rub panel ${panels} down through clean paper. Lay a barrier sheet between it and panel ${panels - 1}.`,
    ],
    parts: ["boards"],
    sizes: [{ label: "square on all four sides", text: say.size(square) }],
    tools: [...(glue.wet ? ["brush" as const] : []), "wasteSheets", "triangle", "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 10,
    glueing: { job: "ends", openMinutes: 4, spread: zone(model.geometry.panelHeight, model.geometry.panelWidth) },
    needs: [{ step: "glue-front", until: "set", what: "first panel" }], rest: "shut, barrier sheets inside both boards, between pressing boards, under a weight",
    cautions: glue.wet ? ["wetAdhesive", "weights"] : ["weights"], figure: "glue-back",
    check: "A set square standing on the bench touches both boards on all four sides.",
    mistake: { sign: "The boards are out of line.", repair: "Slide the back board while the adhesive is open. Once it has set, leave it: a trimmed board shows more than a crooked one." },
  };
}

function makeBand({ definition, model, say }: PlanContext<"concertina">): DraftStep {
  const { closure } = model.geometry;
  if (closure?.kind !== "band") throw new Error("internal error: no band");
  const glue = definition.adhesives["closure"]!;
  return {
    id: "make-band", stage: "Put together", title: "Make the band",
    action: [
      "Lay the band wrong side up and mark its four folds along both long edges, all from the left end.",
      "Score them with the bone folder along the ruler, and fold them all the same way.",
      "Wrap the band round the shut book and try it: it must slip without force. If your book is thicker than calculated, move the folds.",
      `${glue.wet ? "Brush" : "Lay"} ${glue.name} on the last ${say.size(closure.lap)} and close the ring round the book, a barrier sheet between book and band. Take it off when it holds.`,
    ],
    table: {
      caption: `Folds of the band from its left end, in ${say.unitName}`,
      columns: ["fold", "from the left end", "before it lies over"],
      rows: closure.folds.map((at, index) => [String(index + 1), say.number(at), ["the front", "the fore-edge", "the back", "the spine side"][index]!]),
    },
    parts: ["band"],
    sizes: [{ label: "lap", text: say.size(closure.lap) }],
    tools: ["pencil", "ruler", "boneFolder", ...(glue.wet ? ["brush" as const] : []), "wasteSheets", "barrier"], minutes: 12,
    glueing: { job: "closure", openMinutes: 2, spread: zone(closure.height, closure.lap) }, needs: [{ step: "glue-back", until: "set", what: "last panel" }],
    cautions: glue.wet ? ["boneFolder", "wetAdhesive"] : ["boneFolder"], figure: "closure",
    check: "The ring slips on over the head and stays where it is when you turn the book over.",
    mistake: { sign: "The ring is too tight.", repair: "Open the lap while it is soft and close it again over a thickness of card laid on the book." },
  };
}

function finish({ definition, model, say }: PlanContext<"concertina">): DraftStep {
  const { geometry, finished } = model;
  return {
    id: "finish", stage: "Put together", title: "Check the book",
    action: [
      "Take the barrier sheets out. Stand the book up and draw it open to its full length: it stands by itself, and every fold opens.",
      "Shut it and look at it from the head: the boards lie parallel, and all folds of one side lie in one line.",
      `Leave it shut under a board and a weight ${definition.adhesives["ends"]!.wet ? "overnight" : "for an hour"}: new folds spring.`,
    ],
    parts: [],
    sizes: [
      { label: "finished book, height × width", text: say.sizes(finished.height, finished.width) },
      { label: "thickness, pressed", text: say.thickness(geometry.shutThickness) },
      { label: "folded strip alone, at its spine side", text: say.thickness(geometry.foldedStack) },
    ],
    tools: ["pressingBoards", "weight"], minutes: 5, needs: [{ step: "glue-back", until: "set", what: "last panel" }],
    cautions: ["weights"], figure: "closed-section",
    check: `Shut and pressed, the book measures ${say.about(say.thickness(geometry.shutThickness))} at its spine side.`,
    mistake: { sign: "The book springs open.", repair: "Press it a second night. Rub the folds that spring down once more with the bone folder, on both sides." },
  };
}
