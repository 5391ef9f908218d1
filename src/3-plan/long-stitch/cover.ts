// The cover of a long-stitch binding: the sections measured, the cover cut, scored and folded, its spine reinforced.
import { facesOf } from "../bench/spread.ts";
import { cutParts } from "../bench/preparation.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

type Context = PlanContext<"long-stitch">;
const stage = "The cover";

/** The steps from the pressed sections to the folded cover with its reinforcement. */
export function makeCover(context: Context): readonly DraftStep[] {
  return [cutCover(context), scoreCover(context), foldCover(context), ...(context.model.geometry.strip ? [glueStrip(context)] : [])];
}

function cutCover(context: Context): DraftStep {
  const { model, say } = context;
  const { text, ease, strip } = model.geometry;
  const parts = ["cover", ...(strip ? ["spine-strip"] : [])];
  const step = cutParts(context, {
    agree: "The cover’s opposite sides are equally long.", spoils: "A cover that is short lets the pages stick out.", minutes: 18,
    only: {
      id: "cut-cover", stage, title: strip ? "Measure the sections, cut the cover and its spine strip" : "Measure the sections and cut the cover", parts,
      first: [
        `Take the sections out of the press, lay them in a pile, folds all one way, and press the folds with your palm. Measure the pile at the folds: ${say.about(say.thickness(text.blockThickness))}.`,
        `If yours is thicker or thinner by more than ${say.thickness(ease)}, stop here: write it under measured as the text block thickness, and have these instructions made anew.`,
      ],
    },
  });
  return { ...step, sizes: [{ label: "pile of sections, pressed", text: say.about(say.thickness(text.blockThickness)) }], tools: ["pencil", "ruler", "triangle", "knife", "mat"], cautions: ["knife", "boardCutter", "paperEdge"] };
}

function scoreCover({ model, say }: Context): DraftStep {
  const { folds, coverWidth } = model.geometry;
  return {
    id: "score-cover", stage, title: "Score the folds of the cover",
    action: [
      "Lay the cover inside up, head away from you. The front cover is to the left.",
      "Measure every fold from the left edge, at head and tail, and make a fine pencil mark.",
      "Lay the ruler on the two marks of a fold and draw the point of the bone folder along it, twice, with light pressure.",
    ],
    table: {
      caption: `Folds of the cover, inside up, in ${say.unitName}`, columns: ["fold", "from the left edge"],
      rows: [...folds.map(({ name, at }) => [name, say.number(at)]), ["right edge, for a check", say.number(coverWidth)]],
    },
    parts: ["cover"], sizes: [],
    tools: ["pencil", "ruler", "boneFolder"], minutes: 4 + 2 * folds.length, cautions: ["boneFolder", "paperEdge"], figure: "cover-layout",
    check: "The grooves run parallel to the spine and are square to head and tail.",
    mistake: { sign: "A groove is in the wrong place.", repair: "Rub it flat with the bone folder through clean paper, and score anew where it belongs." },
  };
}

function foldCover({ model, say }: Context): DraftStep {
  const { flap, spineWidth, text, square } = model.geometry;
  return {
    id: "fold-cover", stage, title: "Fold the cover round the sections",
    action: [
      "Fold the cover along every groove towards the inside, and rub the folds down through clean paper.",
      "Lay the pile of sections into the cover, folds against the spine, heads all one way, and shut it.",
      `Push the sections to the middle of its height: the cover must stand out ${say.size(square)} at head and tail.`,
      ...(flap ? ["Bring the flap round the fore-edge onto the front cover."] : []),
    ],
    parts: ["cover"],
    sizes: [{ label: "spine between its folds", text: say.size(spineWidth) }, { label: "sections, pressed, without thread", text: say.about(say.thickness(text.blockThickness)) }, ...(flap ? [{ label: "wall at the fore-edge", text: say.size(flap.wall) }, { label: "flap", text: say.size(flap.width) }] : [])],
    tools: ["boneFolder"], minutes: 6, cautions: ["boneFolder"], figure: "fold-cover",
    check: `The sections lie loosely in the spine: the thread will take ${say.about(say.thickness(text.swell))} of the room.${flap ? " The flap lies on the front cover without lifting it." : ""}`,
    mistake: { sign: "The sections do not go into the spine.", repair: "Press them overnight. If they still do not, measure the pile and have the cover made to it." },
  };
}

function glueStrip({ definition, model, say }: Context): DraftStep {
  const glue = definition.adhesives["spine strip"]!;
  const strip = model.geometry.strip!;
  return {
    id: "glue-strip", stage, title: "Glue the spine strip into the spine",
    action: [
      "Open the cover flat, inside up, on waste paper.",
      glue.wet ? `Brush ${glue.name} thinly over one face of the spine strip, out to all four edges.` : `Cover one face of the spine strip with ${glue.name}, out to all four edges.`,
      "Lay it between the two spine folds, level at head and tail, with the same gap on both sides. Rub it down through clean paper.",
      "Keep the cover flat between barrier sheets and pressing boards, weights on top.",
    ],
    parts: ["spine-strip", "cover"], sizes: [{ label: "from a spine fold to the strip, on both sides", text: say.about(say.thickness(strip.inset)) }],
    tools: [...(glue.wet ? ["brush" as const] : []), "wasteSheets", "boneFolder", "barrier", "pressingBoards", "weight"], minutes: 10,
    glueing: { job: "spine strip", openMinutes: 2, spread: facesOf(model, "spine-strip") }, rest: "flat, between barrier sheets and pressing boards, under weights",
    cautions: [...(glue.wet ? ["wetAdhesive" as const] : []), "boneFolder", "weights"], figure: "spine-strip",
    check: "The strip lies in the spine and on neither fold; both folds still bend freely.",
    mistake: { sign: "The strip lies on a fold.", repair: glue.wet ? "Slide it over at once, before the adhesive takes." : "Lift it at once and lay it anew." },
  };
}
