// Where one length of thread ends and the next is joined to it, in words.
import type { Needleful, Thread } from "../../2-model/sewing/types.ts";
import { listInWords } from "../wording.ts";

/** From here on the joins of a step stand in one sentence, so that they do not bury what is done. */
const manyJoins = 4;

/** A sentence for each join that comes in the passes from `first` to `last`, one for all where there are many; none where the thread goes through. */
export function joinSentences(thread: Thread, first: number, last: number): readonly string[] {
  const joins = thread.needlefuls.filter((each) => each.joinAt !== null && passOf(thread, each) >= first && passOf(thread, each) <= last);
  const stationOf = (each: Needleful): string => thread.paths[each.path - 1]!.places.get(each.joinAt!.place)!.name;
  const passNameOf = (each: Needleful): string => thread.paths[each.path - 1]!.passes[passOf(thread, each) - 1]!.name;
  const needleOf = (each: Needleful): string => (thread.twoNeedles ? ` of the needle that stands at station ${stationOf(each)}` : "");
  if (joins.length >= manyJoins) {
    const places = joins.map((each) => `in ${passNameOf(each)} at station ${stationOf(each)}`);
    return [`The thread ends several times, inside the fold: ${listInWords(places)}. Each time tie the next length to it there with a weaver’s knot and sew on.`];
  }
  return joins.map((each) => `The thread${needleOf(each)} ends in ${passNameOf(each)}, inside the fold at station ${stationOf(each)}: tie the next length to it there with a weaver’s knot and sew on.`);
}

function passOf(thread: Thread, { path, last }: Needleful): number {
  return thread.paths[path - 1]!.moves[last - 1]!.pass;
}
