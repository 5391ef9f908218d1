// The covers of the post album: covered and turned in, and, once they have set, lined inside and pierced.
import { facesOf, turnInsOf, zone } from "../bench/spread.ts";
import type { CautionId } from "../../catalogue/cautions.ts";
import { cutCorners } from "../bench/covering.ts";
import { listInWords } from "../wording.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

type Context = PlanContext<"post-album">;

const stage = "The covers";

/** The steps from the marked cloth to the turned-in cover. */
export function coverBoards(context: Context): readonly DraftStep[] {
  const { geometry } = context.model;
  const covering = geometry.paper ? "hinge-cloth" : "cover-cloth";
  return [
    markCloth(context, covering),
    glueBoards(context),
    cutCorners(context, { stage, stuff: "cloth", board: "board", covering, turnIn: geometry.turnIn, distance: geometry.cornerDistance, corners: geometry.paper ? "both corners beside the hinge strip" : "all four corners" }),
    turnIn(context, covering),
    ...(geometry.paper ? [coverSides(context, geometry.paper)] : []),
  ];
}

/** The steps from the linings to the holes. */
export function finishCovers(context: Context): readonly DraftStep[] {
  return [lineHinge(context), ...lineBoards(context), pierceCovers(context)];
}

function markCloth({ model, say }: Context, covering: string): DraftStep {
  const { geometry, parts } = model;
  const cloth = parts.find((part) => part.id === covering)!;
  const lines = cloth.features.filter((feature) => feature.kind === "placement line");
  const level = lines.filter((line) => line.direction === "horizontal");
  return {
    id: "mark-cloth", stage, title: "Mark the cloth of both covers",
    action: [
      `Lay a ${cloth.name} wrong side up, its head edge away from you. The hinge will be on the left.`,
      "Mark the upright lines at head and tail with a ruler laid from the left edge, all from that one edge, and join the marks.",
      `Draw the two level lines ${say.size(level[0]!.at)} and ${say.size(level[1]!.at)} from the head edge.`,
      "Mark the second piece in the same way: the two covers are made alike.",
    ],
    table: {
      caption: `Upright lines on the ${cloth.name}, from its left edge, in ${say.unitName}`,
      columns: ["line", "from the left edge"],
      rows: lines.filter((line) => line.direction === "vertical").map((line) => [line.name, say.number(line.at)]),
    },
    parts: [covering],
    sizes: [{ label: geometry.paper ? "turn-in at head, tail and spine" : "turn-in all round", text: say.size(geometry.turnIn) }, { label: "joint gap", text: say.size(geometry.jointGap) }],
    tools: ["pencil", "ruler", "triangle"], minutes: 14, cautions: [], figure: "cover-layout",
    check: geometry.paper
      ? `Right of the last line the cloth goes on for ${say.size(geometry.clothLap)}, or one mark more: the lap onto the board.`
      : "Turn the ruler round and measure from the right edge: the last line lies one turn-in away from it.",
    mistake: { sign: "The last line is off.", repair: "The gaps were measured one after the other. Rub the lines out and measure all of them again from the left edge." },
  };
}

function glueBoards({ definition, model, say }: Context): DraftStep {
  const { geometry } = model;
  const glue = definition.adhesives["cover"]!;
  const lay = glue.wet ? `brush ${glue.name} thinly and evenly over one face of it, out to all four edges` : `cover one face of it with ${glue.name}, out to all four edges`;
  const lap = geometry.paper ? `. Only ${say.size(geometry.clothLap)} of it will lie on the cloth: ${glue.wet ? "brush" : "cover"} no more than that` : "";
  return {
    id: "glue-boards", stage, title: "Glue hinge strips and boards to the cloth",
    action: [
      `Lay a hinge strip on waste paper and ${lay}. Set it down between its lines and press.`,
      `Do the same with the board on a fresh sheet of waste paper${lap}. Set it down with its edge on the line “board, inner edge”, level with the strip at head and tail.`,
      `Slide a spacer ${say.size(geometry.jointGap)} wide along the joint, cut from scrap board, and shift the board until the spacer touches both edges all along.`,
      "Turn the work over and rub the cloth down through paper from the middle outwards. Make the second cover.",
    ],
    parts: ["hinge-strip", "boards"],
    sizes: [{ label: "joint gap", text: say.size(geometry.jointGap) }],
    tools: ["brush", "wasteSheets", "boneFolder"].filter((tool) => glue.wet || tool !== "brush") as DraftStep["tools"], minutes: 20,
    glueing: { job: "cover", openMinutes: 4, spread: [...facesOf(model, "hinge-strip"), ...(geometry.paper ? zone(geometry.coverHeight, geometry.clothLap, 2) : facesOf(model, "boards"))] },
    cautions: glue.wet ? ["wetAdhesive"] : [],
    notices: glue.wet ? [{ hazard: "Adhesive that squeezes out stains cloth.", consequence: "The stain stays.", avoid: "Lay it thinly, wipe the edges before you set a piece down, and change the waste paper after each piece." }] : [],
    figure: "glue-boards",
    check: "The spacer slides along the joint from head to tail without catching, and a ruler laid along the heads of strip and board touches both.",
    mistake: { sign: "The joint is wider at one end.", repair: "Lift the board at once, before the adhesive takes, and set it down again along the spacer." },
  };
}

function turnIn({ definition, model, say }: Context, covering: string): DraftStep {
  const { geometry } = model;
  const glue = definition.adhesives["cover"]!;
  return {
    id: "turn-in", stage, title: "Turn in the edges",
    action: [
      `${glue.wet ? `Brush ${glue.name} on` : `Lay ${glue.name} on`} the head turn-in, fold it over strip and board and pull it tight. Push it down into the joint with the edge of a bone folder. Do the same at the tail.`,
      `At each ${geometry.paper ? "corner of the hinge strip" : "corner"} press the little ear of cloth flat against the edge with a fingernail.`,
      geometry.paper ? "Turn in the long side over the hinge strip." : "Turn in the two long sides, over the hinge strip and over the fore-edge, in the same way.",
      "Rub everything down. Put both covers between barrier sheets and pressing boards, with weights on top.",
    ],
    parts: [covering],
    sizes: [{ label: "turn-in", text: say.size(geometry.turnIn) }],
    tools: [...(glue.wet ? ["brush" as const, "wasteSheets" as const] : []), "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 20,
    glueing: { job: "cover", openMinutes: 3, spread: turnInsOf(model, covering, geometry.turnIn) }, follows: [{ step: "glue-boards", adhesive: "soft" }], rest: "flat, between barrier sheets and pressing boards, under weights",
    cautions: glue.wet ? ["wetAdhesive", "weights"] : ["weights"], figure: "turn-in",
    check: "No board shows at a corner; the cloth is tight over every edge and follows the joint at head and tail.",
    mistake: { sign: "The cloth bridges the joint at head or tail.", repair: "Press it in with the bone folder while the adhesive is still soft; once dry, damp it and try again." },
  };
}

function coverSides({ definition, model, say }: Context, paper: NonNullable<Context["model"]["geometry"]["paper"]>): DraftStep {
  const { geometry } = model;
  const glue = definition.adhesives["cover"]!;
  return {
    id: "cover-sides", stage, title: "Cover the boards with paper",
    action: [
      `Lay a cover on the bench, outside up. Draw a thin line on the cloth ${say.size(paper.lap)} in from the edge that lies on the board.`,
      `${glue.wet ? `Brush ${glue.name} over the wrong side of a cover paper` : `Cover the wrong side of a cover paper with ${glue.name}`}. Lay its straight long edge on the line, with the same turn-in at head and tail, and rub it down towards the fore-edge.`,
      `Turn the cover over. Cut the two corners at the fore-edge at 45°, ${say.thickness(geometry.cornerDistance)} from the board’s corner, with the corner template.`,
      "Turn in head and tail, press the ears at the corners flat, turn in the fore-edge. Cover the second board.",
      "Put the covers back between barrier sheets and pressing boards, with weights on top.",
    ],
    parts: ["cover-paper"],
    sizes: [{ label: "paper over the edge of the cloth", text: say.size(paper.lap) }, { label: "turn-in", text: say.size(geometry.turnIn) }],
    tools: ["pencil", "ruler", "scissors", ...(glue.wet ? ["brush" as const, "wasteSheets" as const] : []), "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 20,
    glueing: { job: "cover", openMinutes: 4, spread: facesOf(model, "cover-paper") }, rest: "flat, between barrier sheets and pressing boards, under weights",
    cautions: glue.wet ? ["scissors", "wetAdhesive", "weights"] : ["scissors", "weights"], figure: "cover-sides",
    check: "The edge of the paper runs parallel to the joint, no gap between cloth and paper, no bubble.",
    mistake: { sign: "The paper has gone on askew.", repair: "Peel it off at once from the fore-edge and lay it again; once it has taken, cover the board with a new piece over it." },
  };
}

/** What must have set before anything is glued inside a cover. */
function coverHasSet({ model }: Context) {
  return { step: model.geometry.paper ? "cover-sides" : "turn-in", until: "set", what: "turned-in covers" } as const;
}

function lineHinge(context: Context): DraftStep {
  const { definition, model, say } = context;
  const { geometry } = model;
  const glue = definition.adhesives["hinge"]!;
  return {
    id: "line-hinge", stage, title: "Line the hinges",
    action: [
      "Lay a cover inside up, its hinge strip to the left.",
      `${glue.wet ? `Brush ${glue.name} over the wrong side of a hinge lining` : `Cover the wrong side of a hinge lining with ${glue.name}`}. Lay its long edge on the hinge strip, ${say.size(geometry.inset)} from the spine edge and from head and tail, and rub it down as far as the joint.`,
      "With the edge of a bone folder press the lining down the edge of the strip, along the bottom of the joint, and up the edge of the board. Then rub the rest down on the board.",
      "Fold the cover right back once, slowly, and lay it flat again, so that the lining takes the length it needs. Line the other cover.",
    ],
    parts: ["hinge-lining"],
    sizes: [{ label: "spine edge to the lining, and head and tail", text: say.size(geometry.inset) }, { label: "lap onto the board", text: say.about(say.size(geometry.clothLap)) }],
    tools: [...(glue.wet ? ["brush", "wasteSheets", "barrier", "weight"] as const : []), "ruler", "boneFolder"], minutes: 14,
    glueing: { job: "hinge", openMinutes: 4, spread: facesOf(model, "hinge-lining") }, needs: [coverHasSet(context)], rest: "open and flat, barrier sheets over the linings, under weights",
    cautions: glue.wet ? ["wetAdhesive", "weights"] : [], figure: "hinge-section",
    check: "Seen from the head, the lining lies on the bottom of the joint and against both edges; nothing bridges it.",
    mistake: { sign: "The lining bridges the joint like a drumhead.", repair: "Damp it, press it down with the bone folder while it is soft; if it has dried, slit it along the joint and glue a new lining over it." },
  };
}

function lineBoards({ definition, model, say }: Context): readonly DraftStep[] {
  const { geometry } = model;
  if (!geometry.lining) return [];
  const glue = definition.adhesives["lining"]!;
  return [{
    id: "line-boards", stage, title: "Line the boards",
    action: [
      `Lay a lining paper on waste paper, ${glue.wet ? `brush ${glue.name} over it from the middle outwards, and wait half a minute for it to stop curling` : `cover it with ${glue.name}`}.`,
      `Lay it on the inside of the board, ${say.size(geometry.inset)} from head, tail, fore-edge and from the edge beside the joint, over the lap of the hinge lining. Rub it down through clean paper from the middle outwards.`,
      "Line the other cover. Put each cover under weight by itself, with blotting paper or newsprint between.",
    ],
    parts: ["lining-paper"],
    sizes: [{ label: "edge of the board to the lining", text: say.size(geometry.inset) }],
    tools: [...(glue.wet ? ["brush" as const] : []), "wasteSheets", "boneFolder", "pressingBoards", "weight"], minutes: 14,
    glueing: { job: "lining", openMinutes: 3, spread: facesOf(model, "lining-paper") }, rest: "each cover by itself, flat, blotting paper on the lining, under weights",
    cautions: glue.wet ? ["wetAdhesive", "weights", "needle"] : ["weights", "needle"],
    notices: [{ hazard: "Two wet linings pressed face to face wrinkle each other.", consequence: "The wrinkles stay.", avoid: "Dry the covers separately (Bean & Brodhead 1918, Problem VIII)." }],
    figure: "cover-inside",
    check: `The margin of covering is the same on all four sides of the paper, ${say.size(geometry.inset)}, the joint is free, and no bubble is left.`,
    mistake: { sign: "A bubble.", repair: "Prick it with a needle, press the air out towards the hole, rub down." },
  }];
}

function pierceCovers({ model, say }: Context): DraftStep {
  const { geometry, holes } = model;
  const strip = holes.filter((hole) => hole.part === "hinge-strip");
  const piercing: readonly CautionId[] = ["punch", "drill", "awl", "dust"];
  return {
    id: "pierce-covers", stage, title: "Pierce the covers",
    action: [
      "Lay a cover on waste board, outside up. Lay the hole template on its hinge strip, spine edge to spine edge, its head and tail on those of the strip, and fix it with removable tape.",
      `Prick the middle of each hole with an awl: ${listInWords(strip.map((hole) => hole.id))}. Take the template off.`,
      `Pierce each hole straight through, ${say.thickness(geometry.posts.holeDiameter)} wide.`,
      "Do the other cover with the template turned over, head to head, so that the two covers mirror each other. Wipe the dust off with a damp cloth.",
    ],
    table: {
      caption: `Holes in each hinge strip, in ${say.unitName}`,
      columns: ["hole", "from the head of the cover", "from the spine edge"],
      rows: strip.map((hole) => [hole.id, say.number(hole.along), say.number(hole.across)]),
    },
    parts: ["hinge-strip"],
    sizes: [{ label: "hole diameter", text: say.thickness(geometry.posts.holeDiameter) }, { label: "cover at the hinge", text: say.thickness(geometry.coverAtHinge) }],
    tools: ["pencil", "ruler", "awl", "tape", "holeTool", "wasteBoard", "clips"], minutes: 6 + 4 * geometry.posts.count,
    needs: [{ step: "line-hinge", until: "dry", what: "lined hinges" }, ...(geometry.lining ? [{ step: "line-boards", until: "dry", what: "lined boards" } as const] : [])],
    cautions: piercing, figure: "hole-layout",
    check: "Laid inside to inside, daylight shows through every pair of holes, and a post drops through both without force.",
    mistake: { sign: "The holes of the two covers do not meet.", repair: "Widen the hole of one cover a little with a round file from both sides, towards the other; the post’s head hides it." },
  };
}
