// The boards of a link stitch: covered, turned in and lined where they are covered, then marked and pierced.
import { facesOf, turnInsOf } from "../bench/spread.ts";
import { needleTools } from "./sewing.ts";
import { listInWords } from "../wording.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** Covering and lining; no steps for bare boards. */
export function coverBoards({ definition, model, say }: PlanContext<"link-stitch">): readonly DraftStep[] {
  const { geometry } = model;
  if (!geometry.covered) return [];
  const glue = definition.adhesives["covering"]!;
  const [turnIn, distance] = [say.size(geometry.turnIn), say.thickness(geometry.cornerDistance)];
  const steps: DraftStep[] = [
    {
      id: "cover-boards", stage: "The covers", title: "Glue the coverings to the boards",
      action: [
        `Lay a covering wrong side up. Draw a line ${turnIn} from its head edge and one ${turnIn} from its left edge.`,
        glue.wet ? `Lay a board on waste paper and brush ${glue.name} thinly over one face, from the middle out to all four edges.` : `Lay a board on waste paper and cover one face with ${glue.name}, out to all four edges.`,
        "Set the board down with its head edge and its left edge on the two lines, and press.",
        "Turn it over and rub the covering down through clean paper, from the middle outwards.",
        "Do the other board in the same way.",
      ],
      parts: ["covering", "boards"], sizes: [{ label: "turn-in all round", text: turnIn }],
      tools: ["pencil", "ruler", "triangle", ...(glue.wet ? ["brush" as const] : []), "wasteSheets", "boneFolder"], minutes: 15,
      glueing: { job: "covering", openMinutes: 3, spread: facesOf(model, "boards") },
      cautions: glue.wet ? ["wetAdhesive", "boneFolder"] : ["boneFolder"], figure: "covering-layout",
      check: `Covering shows all round the board, ${turnIn} wide on every side, and no bubble is left.`,
      mistake: { sign: "The board sits askew.", repair: "Lift it at once, before the adhesive takes, and set it down again on the lines." },
    },
    {
      id: "turn-in", stage: "The covers", title: "Cut the corners and turn in the edges",
      action: [
        `Cut off each corner at 45°, ${distance} away from the board’s corner (corner template).`,
        `${glue.wet ? `Brush ${glue.name} on` : `Lay ${glue.name} on`} the head turn-in, fold it over the board’s edge, pull it tight and rub it down. Do the same at the tail.`,
        "At each corner press the little ear of covering flat against the board’s edge with a fingernail.",
        "Turn in the two sides in the same way.",
        "Do the other board. Put each between barrier sheets and pressing boards, with weights on top.",
      ],
      parts: ["covering"], sizes: [{ label: "board’s corner to the cut", text: distance }, { label: "turn-in", text: turnIn }],
      tools: ["pencil", "triangle", "scissors", ...(glue.wet ? ["brush" as const] : []), "wasteSheets", "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 20,
      glueing: { job: "covering", openMinutes: 3, spread: turnInsOf(model, "covering", geometry.turnIn) }, follows: [{ step: "cover-boards", adhesive: "soft" }], rest: "flat, between barrier sheets and pressing boards, under weights",
      cautions: glue.wet ? ["scissors", "wetAdhesive", "boneFolder", "weights"] : ["scissors", "boneFolder", "weights"], figure: "turn-in",
      check: "No board shows at a corner, and the covering is tight over every edge.",
      mistake: { sign: "A corner is cut too close and the board shows.", repair: "Glue a scrap of the covering over the corner before you turn the sides in; it will hardly show." },
    },
  ];
  if (geometry.lining) steps.push(lineBoards({ definition, model, say }));
  return steps;
}

function lineBoards({ definition, model, say }: PlanContext<"link-stitch">): DraftStep {
  const glue = definition.adhesives["lining"]!;
  const inset = say.size(model.geometry.lining!.inset);
  return {
    id: "line-boards", stage: "The covers", title: "Line the insides of the boards",
    action: [
      `Lay a lining paper on waste paper, ${glue.wet ? `brush ${glue.name} over it from the middle outwards, and wait half a minute for it to stop curling` : `cover it with ${glue.name}`}.`,
      `Lay it on the inside of a board, ${inset} from every edge, and rub it down through clean paper from the middle outwards.`,
      "Do the other board. Put each board under weight by itself, with blotting paper or newsprint on the lining.",
    ],
    parts: ["lining-paper"], sizes: [{ label: "edge of the board to the lining", text: inset }],
    tools: [...(glue.wet ? ["brush" as const] : []), "wasteSheets", "boneFolder", "pressingBoards", "weight"], minutes: 14,
    glueing: { job: "lining", openMinutes: 3, spread: facesOf(model, "lining-paper") }, needs: [{ step: "turn-in", until: "set", what: "turned-in coverings" }],
    rest: "each board by itself, flat, blotting paper on the lining, under weights",
    cautions: glue.wet ? ["wetAdhesive", "weights", "needle"] : ["weights", "needle"],
    notices: glue.wet ? [{ hazard: "Two wet linings pressed face to face wrinkle each other.", consequence: "The wrinkles stay.", avoid: "Dry the boards separately (Bean & Brodhead 1918, Problem VIII)." }] : [],
    figure: "lining",
    check: `The margin round the lining is the same on all four sides, ${inset}, and no bubble is left.`,
    mistake: { sign: "A bubble.", repair: "Prick it with a needle, press the air out towards the hole, rub down." },
  };
}

/** Marking and piercing the boards, once they are dry. */
export function pierceBoards({ model, say }: PlanContext<"link-stitch">): readonly DraftStep[] {
  const { geometry } = model;
  const names = geometry.stations.map((_, k) => `${k + 1}`);
  const [distance, diameter] = [say.size(geometry.holeDistance), say.thickness(geometry.holeDiameter)];
  const dry = geometry.covered
    ? [geometry.lining ? { step: "line-boards", until: "dry", what: "linings" } as const : { step: "turn-in", until: "dry", what: "coverings" } as const]
    : [];
  return [
    {
      id: "mark-boards", stage: "The covers", title: "Mark the holes of the boards",
      action: [
        ...(geometry.covered ? ["Choose the spine edge of each board and write “front” or “back” and “head” on a slip of tape inside."] : ["Write “front” or “back” and “head” on the inside of each board, in pencil."]),
        `Lay the board template on the outside of the front board, its head on the head edge, its spine edge on the spine edge, and fix it with removable tape. Or measure: ${distance} from the spine edge, and the distances from the head in the table.`,
        `Prick the middle of each hole, ${listInWords(names)}, with the awl.`,
        "Turn the template over, head still at the head, and mark the back board in the same way.",
      ],
      table: {
        caption: `Holes in each board, in ${say.unitName}`, columns: ["hole", "from the head of the board", "from the spine edge"],
        rows: geometry.holesAlong.map((along, k) => [names[k]!, say.number(along), say.number(geometry.holeDistance)]),
      },
      parts: ["boards"], sizes: [{ label: "spine edge to the middle of a hole", text: distance }],
      tools: ["pencil", "ruler", "awl", "tape", "mat"], minutes: 8, needs: dry, cautions: ["awl"], figure: "board-holes",
      check: "Lay the boards inside to inside, head to head: the marks lie opposite each other.",
      mistake: { sign: "The marks do not lie opposite.", repair: "The template was laid head to tail on one board. Mark that board again." },
    },
    {
      id: "pierce-boards", stage: "The covers", title: "Pierce the boards",
      action: [
        "Lay one board outside up on waste board and clamp it.",
        `Pierce each hole straight down, ${diameter} wide.`,
        "Do the other board. Press any burr on the inside flat with the bone folder and wipe the dust off.",
      ],
      parts: ["boards"], sizes: [{ label: "hole diameter", text: diameter }, { label: "holes in each board", text: String(names.length) }],
      tools: ["holeTool", "wasteBoard", "clips", "boneFolder", ...needleTools(geometry.needles === 2)], minutes: 6 + 3 * names.length, cautions: ["punch", "drill", "dust", "needle"], figure: "pierce-boards",
      check: "You can see daylight straight through every hole, and the threaded needle passes without force.",
      mistake: { sign: "A hole has torn the covering.", repair: "Put a drop of adhesive under the torn edge, press it flat and let it set; thread will cover it." },
    },
  ];
}
