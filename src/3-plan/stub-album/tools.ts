// What this stub album needs of its tools: how many, how large.
import type { ToolId } from "../../catalogue/tools.ts";
import type { PlanContext } from "../binding.ts";

/** Numbers and sizes of tools that follow from the book. */
export function toolNotesOf({ definition, model, say }: PlanContext<"stub-album">): Readonly<Partial<Record<ToolId, string>>> {
  const { geometry } = model;
  const strips = `${geometry.stubs + 1} of them for each book, ${geometry.stubs > 1 ? `thinner than the room between two closed stubs, ${say.thickness(geometry.clearGap)}; ` : ""}higher than a stub, ${say.size(geometry.stubDepth)}; as long as the card is high, ${say.size(geometry.stripHeight)}`;
  const wetBoth = definition.adhesives["hinge"]!.wet && geometry.lining !== null;
  return {
    holeTool: `${say.thickness(geometry.posts.holeDiameter)} for posts of ${say.thickness(geometry.posts.barrel)}`,
    pressingStrips: strips,
    ...(wetBoth ? { pressingBoards: "a third one, as high as the hinge, while the linings dry", weight: "in two places while the linings dry" } : {}),
  };
}
