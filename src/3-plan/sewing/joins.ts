// Where one length of thread ends and the next is joined to it, in words.
import type { Needleful, Thread } from "../../2-model/sewing/types.ts";

/** One sentence for each join that comes in the passes from `first` to `last`; none where the thread goes through. */
export function joinSentences(thread: Thread, first: number, last: number): readonly string[] {
  return thread.needlefuls.filter((each) => each.joinAt !== null && passOf(thread, each) >= first && passOf(thread, each) <= last).map((each) => {
    const path = thread.paths[each.path - 1]!;
    const station = path.places.get(each.joinAt!.place)!.name;
    const side = thread.twoNeedles ? ` of the needle that stands at station ${station}` : "";
    return `The thread${side} ends in ${path.passes[passOf(thread, each) - 1]!.name}, inside the fold at station ${station}: tie the next length to it there with a weaver’s knot and sew on.`;
  });
}

function passOf(thread: Thread, { path, last }: Needleful): number {
  return thread.paths[path - 1]!.moves[last - 1]!.pass;
}
