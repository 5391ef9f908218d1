// Where one length of thread ends and the next is joined to it, in words.
import type { Model } from "../../2-model/types.ts";
import type { Wording } from "../wording.ts";

/** One sentence for each join; none when the thread is in one piece. */
export function joinSentences({ thread }: Model, _say: Wording): readonly string[] {
  return thread!.needlefuls.filter(({ joinAt }) => joinAt !== null).map((each) => {
    const path = thread!.paths[each.path - 1]!;
    const place = path.places.get(each.joinAt!.place)!;
    const pass = path.passes[path.moves[each.last - 1]!.pass - 1]!.name;
    return `Length ${each.n} ends in ${pass}, inside the fold at station ${place.name}: tie length ${each.n + 1} to it there with a weaver’s knot and sew on.`;
  });
}
