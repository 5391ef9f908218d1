// The openings of the spine: marked through the template, pierced hole by hole, slits cut from hole to hole.
import { subtractLength } from "../../units/length.ts";
import { listInWords } from "../wording.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

type Context = PlanContext<"long-stitch">;
const stage = "The holes";

/** The steps from the folded cover to its pierced spine. */
export function pierceSpine(context: Context): readonly DraftStep[] {
  return [markSpine(context), pierceHoles(context), ...(context.model.geometry.slits.length > 0 ? [cutSlits(context)] : [])];
}

function markSpine({ model, say }: Context): DraftStep {
  const { rows, columns, strip, sectionPitch, spineWidth, slits } = model.geometry;
  const inner = listInWords(slits.map(({ station }) => `${station}`));
  return {
    id: "mark-spine", stage, title: "Mark the holes of the spine",
    action: [
      "Cut the spine template out along its heavy outline.",
      "Open the cover flat, inside up, head away from you. Lay the template on the spine, its head on the cover’s head, its long sides on the two spine folds. Fix it with removable tape.",
      `Prick the middle of every cross through the template with the awl. ${slits.length > 0 ? `At stations ${inner} there are crosses only for the first and the last section.` : `Each station has ${columns.length}, one for each section.`}`,
      "Lift the template at one end before you take it off, and see that no mark is missing.",
    ],
    table: {
      caption: `Rows of holes, in ${say.unitName}`, columns: ["station", "from the head of the cover"],
      rows: rows.map((along, k) => [`${k + 1}`, say.number(along)]),
    },
    parts: ["cover"],
    sizes: [{ label: "spine between its folds", text: say.size(spineWidth) }, { label: "from the hole of one section to the next", text: say.thickness(sectionPitch) }],
    tools: ["scissors", "tape", "awl", "mat", "ruler"], minutes: 6 + Math.ceil(model.holes.filter(({ part }) => part === "cover").length / 6),
    ...(strip ? { needs: [{ step: "glue-strip", until: "dry", what: "spine strip" } as const] } : {}),
    cautions: ["scissors", "awl"], figure: "spine-layout",
    check: "The marks of every row stand in a straight line square to the spine, and the middle of each row is the middle of the spine.",
    mistake: { sign: "The template has slipped.", repair: "Lay it anew on marks that are right, tape it down, and prick the others beside the wrong ones; wrong pricks are rubbed shut with the bone folder." },
  };
}

function pierceHoles({ model, say }: Context): DraftStep {
  const { holeDiameter, strip, columns, slits } = model.geometry;
  const count = model.holes.filter(({ part }) => part === "cover").length;
  return {
    id: "pierce-spine", stage, title: "Pierce the spine",
    action: [
      "Lay the cover flat, inside up, on a cork mat or waste board.",
      `Push the awl straight down through ${strip ? "strip and cover" : "the cover"} at every mark. Stop when the hole is ${say.thickness(holeDiameter)} wide.`,
      "Turn the cover over and press the rims flat with the bone folder.",
    ],
    parts: ["cover"], sizes: [{ label: "hole diameter", text: say.thickness(holeDiameter) }, { label: "holes", text: slits.length > 0 ? String(count) : `${count}: ${count / columns.length} for each of ${columns.length} sections` }],
    tools: ["awl", "wasteBoard", "boneFolder", "needle"], minutes: 4 + Math.ceil(count / 5), cautions: ["awl", "boneFolder", "needle"], figure: "pierce-spine",
    check: "Held against the light every hole shows, and the threaded needle passes without force.",
    mistake: { sign: "Two holes have run into each other.", repair: "Glue a scrap of thin strong paper over them inside, let it dry, and pierce them anew." },
  };
}

function cutSlits({ model, say }: Context): DraftStep {
  const { slits, columns } = model.geometry;
  const length = say.thickness(subtractLength(slits[0]!.to, slits[0]!.from));
  const names = listInWords(slits.map(({ station }) => `${station}`));
  return {
    id: "cut-slits", stage, title: "Cut the slits",
    action: [
      "Lay the cover flat, inside up, on the cutting mat.",
      `At stations ${names} lay the ruler on the holes of section 1 and section ${columns.length}.`,
      "Cut from one hole to the other with light cuts, beginning at each hole and ending in the middle. Never cut beyond a hole.",
      `Leave stations 1 and ${model.geometry.rows.length} as holes: there the thread climbs along the row and would slip into a slit.`,
    ],
    parts: ["cover"], sizes: [{ label: "slits", text: `${slits.length}, each ${length} long` }],
    tools: ["knife", "ruler", "mat"], minutes: 4 + 2 * slits.length, cautions: ["knife", "needle"], figure: "cut-slits",
    check: "Every slit ends in a hole on both sides, and a needle slides from one end to the other.",
    mistake: { sign: "A cut runs beyond its hole.", repair: "Glue a scrap of thin strong paper over the end inside, and cut it open again as far as the hole." },
  };
}
