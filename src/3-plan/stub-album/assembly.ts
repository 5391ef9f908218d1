// Stage 6 of the stub album: bookmark, floor, pages, and the last check.
import { divideLength, isLess, mm, noLength, subtractLength } from "../../units/length.ts";
import { facesOf, zone } from "../bench/spread.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

/** Where the head of a page comes on its stub, so that the square is the same at head and tail; less than a millimetre is not seen. */
function headOfPage({ model: { geometry }, say }: PlanContext<"stub-album">): string {
  const shorter = divideLength(subtractLength(geometry.stripHeight, geometry.pages.height), 2);
  if (!isLess(shorter, mm(1))) return `its head ${say.size(shorter)} below the card’s head`;
  const higher = subtractLength(noLength, shorter);
  return isLess(higher, mm(1)) ? "head level with the card’s head" : `its head standing ${say.size(higher)} beyond the card’s head`;
}

/** The steps from the bookmark to the last check. */
export function assembleAlbum(context: PlanContext<"stub-album">): readonly DraftStep[] {
  const { definition, model, say } = context;
  const { geometry } = model;
  const floorGlue = definition.adhesives["floor"]!;
  const pageGlue = definition.adhesives["pages"]!;
  const { pages } = geometry;
  const dryMinutes = Math.max(floorGlue.wet ? floorGlue.dryMinutes : 0, pageGlue.wet ? pageGlue.dryMinutes : 0);
  const steps: DraftStep[] = [];
  if (geometry.bookmarkLength) {
    steps.push({
      id: "attach-bookmark", stage: "Put together", title: "Glue on the bookmark",
      action: [
        `Lay the hinge inside up. Glue the first ${say.size(geometry.turnIn)} of the ribbon to the spine strip at the head, in the middle of its width.`,
        "Let the rest hang out at the head for now; once the floor is glued it goes over the floor’s head edge and down between the pages. Seal its end against fraying.",
      ],
      parts: ["bookmark"],
      sizes: [{ label: "glued at the head", text: say.size(geometry.turnIn) }],
      tools: ["ruler", "scissors", ...(floorGlue.wet ? ["brush" as const] : [])], minutes: 4,
      glueing: { job: "floor", openMinutes: 1, spread: zone(geometry.ribbonWidth, geometry.ribbonWidth, 4) }, rest: "", cautions: floorGlue.wet ? ["scissors", "wetAdhesive"] : ["scissors"], figure: "bookmark",
      check: "Laid cornerwise over a page, the ribbon still hangs out below.",
      mistake: { sign: "The ribbon is glued along the whole spine.", repair: "Pull it free at once down to the glued end and wipe the spine strip." },
    });
  }
  steps.push(
    {
      id: "glue-floor", stage: "Put together", title: "Glue the floor to the spine strip",
      action: [
        `Try it dry first: the folded floor must lie within the spine strip, ${say.size(geometry.spineStripWidth)} wide, with the same strip of board showing left and right, head level with head.`,
        `${floorGlue.wet ? `Brush ${floorGlue.name} over` : `Cover`} the underside of the floor${floorGlue.wet ? ", thinly, out to its edges" : ` with ${floorGlue.name}`}${geometry.bookmarkLength ? "; keep the bookmark out of it, folded to one side" : ""}.`,
        "Set the floor down on the spine strip and press it from the middle outwards.",
        `Press the floor down${geometry.stubs > 1 ? " between the stubs and on both margins" : " on both sides of the stub"}: stand the ${geometry.stubs + 1} pressing strips on it on edge and lay a board with weights across them.`,
      ],
      parts: ["card", "spine-strip"],
      sizes: [{ label: "folded floor", text: say.thickness(geometry.foldedFloor) }, { label: "spine strip", text: say.size(geometry.spineStripWidth) }],
      tools: [...(floorGlue.wet ? ["brush" as const, "wasteSheets" as const] : ["scissors" as const]), "boneFolder", "pressingStrips", "pressingBoards", "weight", "knife", "ruler"], minutes: 12,
      glueing: { job: "floor", openMinutes: 4, spread: facesOf(model, "spine-strip") },
      rest: "flat and open, pressing strips between the stubs, a weight across them",
      cautions: floorGlue.wet ? ["wetAdhesive", "weights", "knife"] : ["scissors", "weights", "knife"], figure: "glue-floor",
      check: "The floor lies flat, the stubs stand upright, and nothing of the floor reaches into a joint.",
      mistake: { sign: "The floor has slipped into a joint.", repair: "Slide it back while the adhesive is open. Once it has set, cut the overhang off along the spine strip’s edge with a knife, away from your hand." },
    },
    {
      id: "mount-pages", stage: "Put together", title: "Mount the pages",
      action: [
        pageGlue.wet
          ? `Lay the paper on waste paper, cover it with a straight edge of waste paper but for its spine edge, and brush ${pageGlue.name} thinly along its spine edge, ${say.size(pages.adhesiveZone)} deep.`
          : `Lay ${pageGlue.name} along the spine edge of each page paper, ${say.size(pages.adhesiveZone)} deep, the whole height.`,
        `Stand the book open, inside up, head away from you: the first stub is the one on the left. Set the paper against its ${pages.backToBack ? "left" : "right"} face, its edge down on the floor, ${headOfPage(context)}. Press from the middle of the stub outwards.`,
        ...(pages.backToBack ? ["Mount the second paper on the other face of the same stub, edge to edge with the first.", "If you like one firm leaf, join the two papers at their fore-edges with a narrow line of adhesive."] : []),
        ...(geometry.stubs > 1 ? [pageGlue.wet
          ? "Go on from stub to stub, a barrier sheet between each page and the next. Let the pages stand until no adhesive is wet at the crests; then shut the book, the barrier sheets still in it."
          : "Go on from stub to stub. Shut the book after every second page and see that it closes."] : []),
      ],
      parts: ["page-paper"],
      sizes: [
        { label: "adhesive from the paper’s spine edge", text: say.size(pages.adhesiveZone) },
        { label: "papers", text: `${pages.papers}, ${pages.backToBack ? "two on each stub" : "one on each stub"}` },
      ],
      tools: [...(pageGlue.wet ? ["brush", "wasteSheets", "boneFolder", "barrier", "weight"] as const : ["scissors", "boneFolder"] as const), "knife", "ruler", "mat"],
      minutes: 5 + 3 * pages.papers,
      glueing: { job: "pages", openMinutes: 2, spread: zone(pages.height, pages.adhesiveZone, pages.papers), inStrips: true },
      needs: [{ step: "glue-floor", until: "set", what: "floor" }],
      rest: pageGlue.wet ? "shut, barrier sheets between the pages, a light weight on top" : "",
      cautions: pageGlue.wet ? ["wetAdhesive", "weights", "paperEdge", "knife"] : ["scissors", "paperEdge", "knife"], figure: "page-mounting",
      check: `All fore-edges lie in one line, and the boards reach ${say.about(say.size(pages.square))} beyond them.`,
      mistake: { sign: "A page stands out or sits askew.", repair: `${pageGlue.wet ? "Slide it straight while the adhesive is wet." : "Lift it within a minute, slowly, and set it again."} If it has taken, trim the fore-edge to the others with knife and ruler, a scrap of board behind it.` },
    },
    {
      id: "finish", stage: "Put together", title: "Check the book",
      action: [
        "Shut the book and look at it from the head: the boards stand parallel, the stubs upright.",
        "Open it flat at several places: no page pulls at its neighbour.",
        `Leave it shut under a light weight ${dryMinutes > 0 ? `until everything has dried, ${say.duration(dryMinutes)} after the last glueing,` : "for an hour"} before you decorate it.`,
        `Each opening takes decoration ${say.thickness(pages.roomPerOpening)} thick, all openings and both ends together ${say.thickness(pages.roomInAll)}.`,
      ],
      parts: [],
      sizes: [
        { label: "room in each opening", text: say.thickness(pages.roomPerOpening) },
        { label: "room in all", text: say.thickness(pages.roomInAll) },
        { label: "finished book, height × width", text: say.sizes(model.finished.height, model.finished.width) },
        { label: "thickness when full", text: say.size(model.finished.thickness) },
      ],
      tools: ["weight"], minutes: 5, needs: [], cautions: ["weights"], figure: "closed-spine",
      check: "The book stands by itself and closes without being pressed.",
      mistake: { sign: "The book springs open.", repair: "The joints are stiff: open and shut each cover ten times, then leave the book under weight overnight." },
    },
  );
  return steps;
}
