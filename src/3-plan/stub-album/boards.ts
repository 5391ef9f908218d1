// Stage 4 of the stub album: closure and lining on the boards, then the hinge glued over them and pierced.
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
      glueing: { job: "closure", openMinutes: 2 }, rest: "flat",
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
        "Do the other board. Put each board under weight by itself, with blotting paper or newsprint between.",
      ],
      parts: ["lining-paper"],
      sizes: [{ label: "edge of the board to the lining", text: say.size(geometry.lining.inset) }],
      tools: ["brush", "wasteSheets", "boneFolder", "pressingBoards", "weight"], minutes: 14,
      glueing: { job: "lining", openMinutes: 3 }, rest: "each board by itself, flat, blotting paper on the lining, under weights",
      cautions: glue.wet ? ["wetAdhesive", "weights", "needle"] : ["weights", "needle"],
      notices: [{ hazard: "Two wet linings pressed face to face wrinkle each other.", consequence: "The wrinkles stay.", avoid: "Dry the boards separately (Bean & Brodhead 1918, Problem VIII)." }],
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
      glueing: { job: "joints", openMinutes: 2 }, needs: [clothSet], rest: "",
      cautions: tape.wet ? ["scissors", "wetAdhesive"] : ["scissors"], figure: "covered-hinge",
      check: "Bend both joints once to a right angle: the tape follows and no gap opens.",
      mistake: { sign: "The tape is stretched flat across the joint.", repair: "Lift it, push its middle down into the joint first, then press the two sides." },
    },
    {
      id: "join-boards", stage: "The boards", title: "Glue the hinge over the boards",
      action: [
        `Lay both boards inside down, spine edges towards each other. The side strips will lie on the outside of the boards, flush with their spine edges, ${say.size(geometry.stripInset)} from head and tail.`,
        `${glue.wet ? `Brush ${glue.name} over` : `Cover`} the inside of one side strip${glue.wet ? "" : ` with ${glue.name}`}, set it on its board, edge flush, and press. Do the other.`,
        "Stand the hinge up between the boards once, as if the book were shut, to see that it closes, and lay it flat again.",
        "Barrier sheets above and below, pressing boards, weights over the side strips.",
      ],
      parts: ["boards", "side-strip"],
      sizes: [{ label: "strip inside the board at head and tail", text: say.size(geometry.stripInset) }],
      tools: ["ruler", "brush", "wasteSheets", "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 12,
      glueing: { job: "boards", openMinutes: 4 },
      needs: [clothSet, ...(geometry.lining ? [{ step: "line-boards", until: "set", what: "linings" } as const] : [])],
      rest: "flat and open, under weights on both side strips",
      cautions: glue.wet ? ["wetAdhesive", "weights"] : ["weights"], figure: "join-boards",
      check: "The spine edges of the boards lie flush with the side strips, and the head edges of the two boards are in one line when the hinge lies flat.",
      mistake: { sign: "The boards are not level with each other.", repair: "Shift them while the adhesive is open. Once set, leave it: the book will work, the heads will not meet." },
    },
    {
      id: "mark-holes", stage: "The boards", title: "Mark the holes",
      action: [
        `Lay the hole template on a side strip, its head at the strip's head, its edge along the strip's spine-side edge, and fix it with removable tape. Or measure: ${say.size(geometry.posts.across)} from the spine-side edge, and the distances from the head of the strip given below.`,
        `Prick the middle of each hole: ${listInWords(names)}. Do the other cover with the same template, turned over.`,
      ],
      table: {
        caption: `Holes in each cover, in ${say.unitName}`,
        columns: ["hole", "from the head of the strip", "from the spine-side edge"],
        rows: geometry.posts.along.map((along, k) => [names[k]!, say.number(along), say.number(geometry.posts.across)]),
      },
      parts: ["side-strip"],
      sizes: [{ label: "hole diameter", text: say.thickness(geometry.posts.holeDiameter) }],
      tools: ["pencil", "ruler", "awl", "tape"], minutes: 8, cautions: ["awl"], figure: "hole-layout",
      check: "Shut the cover: the marks of front and back lie opposite each other.",
      mistake: { sign: "The marks do not lie opposite.", repair: "The template was laid head to tail on one side. Mark that cover again; the prick of the awl does not show under a post." },
    },
    {
      id: "pierce-holes", stage: "The boards", title: "Pierce strips and boards together",
      action: [
        "Lay one cover outside up on waste board, the other one folded out of the way.",
        `Pierce each hole straight through strip and board in one go, ${say.thickness(geometry.posts.holeDiameter)} wide.`,
        "Do the other cover. Wipe the dust off with a damp cloth.",
      ],
      parts: ["side-strip", "boards"],
      sizes: [{ label: "hole diameter", text: say.thickness(geometry.posts.holeDiameter) }, { label: "holes in each cover", text: String(geometry.posts.count) }],
      tools: ["holeTool", "awl", "wasteBoard", "clips"], minutes: 6 + 4 * geometry.posts.count,
      needs: [{ step: "join-boards", until: "dry", what: "side strips on the boards" }],
      cautions: piercing, figure: "pierce-holes",
      check: "You can see daylight straight through every hole, and a post drops in without force.",
      mistake: { sign: "A hole is slanted and the post jams.", repair: "Widen it a little with a round file or the awl from both sides; the post's head hides it." },
    },
    {
      id: "fasten-posts", stage: "The boards", title: "Fasten the posts",
      action: [
        "Push a post through each hole from the outside.",
        "Screw the cap on from the inside, finger-tight.",
      ],
      parts: [],
      sizes: [
        ...(geometry.posts.length ? [{ label: "post", text: `${say.thickness(geometry.posts.barrel)} barrel, ${say.size(geometry.posts.length)} long` }] : []),
        { label: "layers it goes through", text: say.thickness(geometry.posts.stack) },
      ],
      tools: ["screwdriver"], minutes: 2 + geometry.posts.count, cautions: ["smallParts"], figure: "post-section",
      check: "No post turns under the fingers and no cap sinks into the lining.",
      mistake: { sign: "The cap does not catch.", repair: "The stack is thicker than planned. Press strip and board together in a clamp first; if it still does not catch, take the next longer post and a washer." },
    },
  ];
}
