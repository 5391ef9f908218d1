// Stage 5 of the stub album: closure and lining on the boards, then the hinge glued over them and pierced.
import { facesOf, zone } from "../bench/spread.ts";
import type { CautionId } from "../../catalogue/cautions.ts";
import { listInWords } from "../wording.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** The steps from the closure ribbons to the fastened posts. */
export function makeBoards(context: PlanContext<"stub-album">): readonly DraftStep[] {
  return [...lineBoards(context), ...joinBoards(context)];
}

function lineBoards({ definition, model, say }: PlanContext<"stub-album">): readonly DraftStep[] {
  const { geometry } = model;
  const steps: DraftStep[] = [];
  if (geometry.closureLength) {
    const glue = definition.adhesives["closure"]!;
    steps.push({
      id: "attach-closure", stage: "The boards", title: "Glue on the closure ribbons",
      action: [
        "Choose the inside of each board and mark the middle of its fore-edge.",
        `Glue the first ${say.size(geometry.closureGlued)} of a ribbon to the inside at that mark, square to the fore-edge, the long end hanging out.`,
        "Do the same on the other board. Seal the free ends against fraying with a little adhesive.",
      ],
      parts: ["boards", "closure-ribbon"],
      sizes: [{ label: "glued to the board", text: say.size(geometry.closureGlued) }],
      tools: ["pencil", "ruler", "scissors", ...(glue.wet ? ["brush" as const] : [])], minutes: 8,
      glueing: { job: "closure", openMinutes: 2, spread: zone(geometry.closureGlued, geometry.ribbonWidth, 2) }, rest: "flat",
      cautions: glue.wet ? ["scissors", "wetAdhesive"] : ["scissors"], figure: "closure",
      check: "Laid one on the other, inside to inside, the two boards have their ribbons at the same place.",
      mistake: { sign: "The ribbons do not meet.", repair: "Peel one off while the adhesive is soft and glue it opposite the other." },
    });
  }
  if (geometry.lining) {
    const glue = definition.adhesives["lining"]!;
    steps.push({
      id: "line-boards", stage: "The boards", title: "Line the insides of the boards",
      action: [
        `Lay a lining paper on waste paper, ${glue.wet ? `brush ${glue.name} over it from the middle outwards, and wait half a minute for it to stop curling` : `cover it with ${glue.name}`}.`,
        `Lay it on the inside of the board, ${say.size(geometry.lining.inset)} from every edge${geometry.closureLength ? ", over the glued end of the ribbon" : ""}, and rub it down through clean paper from the middle outwards.`,
        `Do the other board. Lay one board down, lining up, with ${glue.wet ? "blotting paper or newsprint" : "clean paper"} and a pressing board on it; the other board on that, lining up, with ${glue.wet ? "blotting paper" : "paper"} and a pressing board; weights on top.`,
        ...(glue.wet ? ["Change the blotting paper after half an hour, and again if it feels damp."] : []),
      ],
      parts: ["lining-paper"],
      sizes: [{ label: "edge of the board to the lining", text: say.size(geometry.lining.inset) }],
      tools: [...(glue.wet ? ["brush" as const] : ["scissors" as const]), "wasteSheets", "boneFolder", ...(glue.wet ? ["blotters" as const] : []), "pressingBoards", "weight", "prickNeedle"], minutes: 14,
      glueing: { job: "lining", openMinutes: 3, spread: facesOf(model, "lining-paper") }, rest: "flat, blotting paper on each lining, a pressing board between the two boards, under weights",
      cautions: glue.wet ? ["wetAdhesive", "weights", "needle"] : ["scissors", "weights", "needle"],
      notices: [{ hazard: "Two wet linings pressed face to face wrinkle each other.", consequence: "The wrinkles stay.", avoid: "Keep a pressing board between them: boards dry separately (Bean & Brodhead 1918, Problem VIII)." }],
      figure: "lining",
      check: `The margin of bare board is the same on all four sides, ${say.size(geometry.lining.inset)}, and no bubble is left.`,
      mistake: { sign: "A bubble.", repair: "Prick it with a needle, press the air out towards the hole, rub down." },
    });
  }
  return steps;
}

function joinBoards({ definition, model, say }: PlanContext<"stub-album">): readonly DraftStep[] {
  const { geometry } = model;
  const tape = definition.adhesives["joints"]!;
  const glue = definition.adhesives["boards"]!;
  const names = model.holes.filter((hole) => hole.part === "side-strip" && hole.id.startsWith("front-")).map((hole) => hole.id.slice("front-".length));
  const hole = say.thickness(geometry.posts.holeDiameter);
  const washers = 2 * geometry.posts.count * geometry.posts.washers;
  const piercing: readonly CautionId[] = ["punch", "drill", "awl", "dust"];
  const clothSet = { step: "turn-in", until: "set", what: "turned-in hinge" } as const;
  return [
    {
      id: "tape-joints", stage: "The boards", title: "Strengthen the joints",
      action: [
        "Lay the hinge outside down. Centre a length of hinge tape over the first joint, from head to tail.",
        `Press it down on the spine strip and on the side strip, and into the joint between them with the bone folder${tape.wet ? "" : "; peel its backing off bit by bit"}.`,
        "Do the other joint. Where the two tapes meet on a narrow spine strip, let the second lie over the first.",
      ],
      parts: ["hinge-tape"],
      sizes: [{ label: "joint gap under the tape", text: say.size(geometry.jointGap) }],
      tools: ["boneFolder", "scissors", ...(tape.wet ? ["brush" as const, "wasteSheets" as const] : [])], minutes: 8,
      glueing: { job: "joints", openMinutes: 2, spread: tape.id === "self-adhesive-tape" ? [] : facesOf(model, "hinge-tape") }, needs: [clothSet], rest: "",
      cautions: tape.wet ? ["scissors", "wetAdhesive"] : ["scissors"], figure: "covered-hinge",
      check: "Bend both joints once to a right angle: the tape follows and no gap opens.",
      mistake: { sign: "The tape is stretched flat across the joint.", repair: "Lift it, push its middle down into the joint first, then press the two sides." },
    },
    {
      id: "join-boards", stage: "The boards", title: "Glue the hinge over the boards",
      action: [
        "Try it dry first: lay the side strips on the boards, stand the hinge up between them as if the book were shut, and see that it closes. Take it apart again.",
        `Lay both boards inside down, spine edges towards each other. The side strips will lie on the outside of the boards, flush with their spine edges, ${say.size(geometry.stripInset)} from head and tail.`,
        `${glue.wet ? `Brush ${glue.name} over` : `Cover`} the inside of one side strip${glue.wet ? "" : ` with ${glue.name}`}, set it on its board, edge flush, and press. Do the other.`,
        `Leave it lying flat and open. Lay a barrier sheet, a pressing board and weights on each side strip${glue.wet ? ", and do not lift or shut it until it is dry: wet strips slide" : ""}.`,
      ],
      parts: ["boards", "side-strip"],
      sizes: [{ label: "strip inside the board at head and tail", text: say.size(geometry.stripInset) }],
      tools: ["ruler", ...(glue.wet ? ["brush" as const, "wasteSheets" as const] : ["scissors" as const]), "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 12,
      glueing: { job: "boards", openMinutes: 4, spread: facesOf(model, "side-strip") },
      needs: [clothSet, ...(geometry.lining ? [{ step: "line-boards", until: "set", what: "linings" } as const] : [])],
      rest: "flat and open, under weights on both side strips",
      cautions: glue.wet ? ["wetAdhesive", "weights"] : ["scissors", "weights"], figure: "join-boards",
      check: "The spine edges of the boards lie flush with the side strips, and the head edges of the two boards are in one line when the hinge lies flat.",
      mistake: { sign: "The boards are not level with each other.", repair: "Shift them while the adhesive is open. Once set, leave it: the book will work, the heads will not meet." },
    },
    {
      id: "mark-holes", stage: "The boards", title: "Mark the holes",
      action: [
        `Lay the book flat and open, outside up. Lay the hole template on a side strip, its head at the strip's head, its spine edge along the strip's spine-side edge, and fix it with removable tape. Or measure: ${say.size(geometry.posts.across)} from the spine-side edge, and the distances from the head of the strip in the table.`,
        `Prick the middle of each hole lightly, just through the cloth: ${listInWords(names)}. Do the other cover with the same template, turned over.`,
      ],
      table: {
        caption: `Holes in each cover, in ${say.unitName}`,
        columns: ["hole", "from the head of the strip", "from the spine-side edge"],
        rows: geometry.posts.along.map((along, k) => [names[k]!, say.number(along), say.number(geometry.posts.across)]),
      },
      parts: ["side-strip"],
      sizes: [{ label: "hole diameter", text: say.thickness(geometry.posts.holeDiameter) }],
      tools: ["pencil", "ruler", "awl", "wasteBoard", "tape"], minutes: 8,
      needs: [{ step: "join-boards", until: "dry", what: "side strips on the boards" }],
      cautions: ["awl"], figure: "hole-layout",
      check: `Measured with the ruler on both covers, each mark is as far from the head of its strip as the table says, and ${say.size(geometry.posts.across)} from the spine-side edge.`,
      mistake: { sign: "A mark is off.", repair: "The template has slipped, or lay against the wrong edge. Prick the place again; a wrong prick near by disappears under the post's head." },
    },
    {
      id: "pierce-holes", stage: "The boards", title: "Pierce strips and boards together",
      action: [
        "Lay one cover outside up on waste board, the other one folded out of the way. Clamp cover and waste board to the bench beside the side strip, scraps of board under the jaws.",
        `With a hollow punch of ${hole}: set it upright on the mark and strike until it is through strip and board. Move to a fresh place of the waste board for the next hole.`,
        `With a drill: start each hole with the awl, drill it with a thin bit first, then with a bit of ${hole}. Hold the drill upright and press lightly until the bit is in the waste board.`,
        "Do the other cover in the same way. Take the chips off with a damp cloth.",
        ...(geometry.posts.washers > 0 ? [`Pierce ${washers} more holes in an offcut of the card and cut round each with scissors, as wide as a cap: the washers.`] : []),
      ],
      parts: ["side-strip", "boards"],
      sizes: [{ label: "hole diameter", text: say.thickness(geometry.posts.holeDiameter) }, { label: "holes in each cover", text: String(geometry.posts.count) }],
      tools: ["holeTool", "eyeProtection", "awl", "wasteBoard", "clips", "dampCloth", "roundFile", ...(geometry.posts.washers > 0 ? ["scissors" as const] : [])],
      minutes: 6 + 4 * geometry.posts.count + (geometry.posts.washers > 0 ? 6 : 0),
      needs: geometry.lining ? [{ step: "line-boards", until: "dry", what: "linings" }] : [],
      cautions: geometry.posts.washers > 0 ? [...piercing, "scissors"] : piercing, figure: "pierce-holes",
      check: "You can see daylight straight through every hole, and a post drops in without force.",
      mistake: { sign: "A hole is slanted and the post jams.", repair: "Widen it a little with a round file or the awl from both sides; the post's head hides it." },
    },
    {
      id: "fasten-posts", stage: "The boards", title: "Fasten the posts",
      action: [
        "Push a post through each hole from the outside.",
        geometry.posts.washers > 0
          ? `Put ${geometry.posts.washers} ${geometry.posts.washers === 1 ? "washer" : "washers"} of card over each post on the inside, and screw the cap on finger-tight.`
          : "Screw the cap on from the inside, finger-tight.",
        "If a post still turns, take its cap off, add a washer of page paper, cut round and pierced with the awl, and try again.",
      ],
      parts: [],
      sizes: [
        ...(geometry.posts.length ? [{ label: "post", text: `${say.thickness(geometry.posts.barrel)} barrel, ${say.size(geometry.posts.length)} long` }] : []),
        { label: "layers it goes through", text: say.thickness(geometry.posts.stack) },
        ...(geometry.posts.slack ? [{ label: "longer than the layers by", text: say.thickness(geometry.posts.slack) }] : []),
        ...(geometry.posts.washers > 0 ? [{ label: "washers of card under each cap", text: String(geometry.posts.washers) }] : []),
      ],
      tools: ["screwdriver", "scissors", "awl", "wasteBoard"], minutes: 4 + 2 * geometry.posts.count, cautions: ["smallParts", "scissors", "awl"], figure: "post-section",
      check: "No post turns under the fingers and no cap sinks into the lining.",
      mistake: { sign: "The cap does not catch.", repair: "The layers are thicker than planned. Leave the washers out; if it still does not catch, take the next longer post and washers." },
    },
  ];
}
