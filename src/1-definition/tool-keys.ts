// The keys of the tools whose reach the author knows: how long a cut, how far in and how deep a hole they can make.
import type { Length } from "../units/length.ts";
import { mappingWithDefaults } from "./collections.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { optionalLength } from "./length-fields.ts";
import type { ToolLimits } from "./types.ts";

/** The tools as written; null for what the author does not say. */
export interface WrittenTools {
  readonly "ruler length": Length | null;
  readonly "cutter length": Length | null;
  readonly "punch reach": Length | null;
  readonly "drill depth": Length | null;
}

/** The `tools:` section of a definition. */
export function toolLimitKeys(context: FieldContext): Field<WrittenTools> {
  return mappingWithDefaults({
    "ruler length": optionalLength(context, { about: "Length of the steel ruler along which parts are measured and cut.", least: "100", most: "3000", example: "600 mm" }),
    "cutter length": optionalLength(context, { about: "Longest cut of the board cutter or guillotine.", least: "100", most: "3000", example: "430 mm" }),
    "punch reach": optionalLength(context, { about: "How far from an edge the lever or plier punch can make a hole, edge to middle of the hole.", least: "5", most: "1000", example: "50 mm" }),
    "drill depth": optionalLength(context, { about: "How much the drill or the hollow punch goes through in one go.", least: "0.5", most: "200", example: "12 mm" }),
  }, { about: "How far your tools reach; parts and holes beyond them are found.", noun: "limit of a tool", example: "{ruler length: 600 mm}" });
}

/** The limits by their names in the definition. */
export function settleTools(written: WrittenTools): ToolLimits {
  return { rulerLength: written["ruler length"], cutterLength: written["cutter length"], punchReach: written["punch reach"], drillDepth: written["drill depth"] };
}
