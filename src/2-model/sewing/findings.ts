// Findings about the thread: longer than is comfortable on one needle, or with no place to join it in reach.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, isLess } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/print-length.ts";
import type { Finding } from "../types.ts";
import type { Needleful, Thread } from "./types.ts";

/** What is to be said about the thread's length; `path` is the key in the definition that holds the needleful. */
export function findThreadFaults(thread: Thread, needleful: Length, definition: Definition, path: string): readonly Finding[] {
  const size = (length: Length): string => printLength(length, definition.units);
  const found: Finding[] = [];
  const joins = thread.needlefuls.filter(({ joinAt }) => joinAt !== null);
  if (joins.length > 0) {
    // Short threads of their own, as those of an inner binding, are no part of the long one.
    const joined = thread.needlefuls.filter((each) => joins.some(({ path: of }) => of === each.path));
    const others = thread.needlefuls.length - joined.length;
    found.push({
      code: "thread-joined", severity: "note", where: "thread", path,
      message: `the thread is ${size(addLengths(...joined.map(({ length }) => length)))} long${others === 0 ? "" : `, ${others} short ${others === 1 ? "one" : "ones"} beside it not counted`}, more than the ${size(needleful)} that is comfortable on a needle: it is cut in ${joined.length} lengths, joined ${joins.map((each) => joinText(thread, each)).join("; ")}`,
      consequence: "one long thread tangles, frays in the holes and is slow to pull through",
      remedy: "join where it is said, or name a longer needleful if you like to sew with long thread",
    });
  }
  for (const each of thread.needlefuls) {
    if (!isLess(needleful, each.length)) continue;
    found.push({
      code: "needleful-too-long", severity: "warn", where: "thread", path,
      message: `length ${each.n} of the thread is ${size(each.length)}, more than the ${size(needleful)} that is comfortable on a needle, and there is no place to join it before`,
      consequence: "it tangles and frays in the holes",
      remedy: "wax it well and draw it through slowly, or make the book smaller",
    });
  }
  return found;
}

function joinText(thread: Thread, { path, last, joinAt }: Needleful): string {
  const { places, moves, passes } = thread.paths[path - 1]!;
  const pass = passes.length > 1 ? ` in ${passes[moves[last - 1]!.pass - 1]!.name}` : "";
  return `after move ${last}, ${joinAt!.side === "within" ? "between the leaves" : joinAt!.side} at ${places.get(joinAt!.place)!.name}${pass}`;
}
