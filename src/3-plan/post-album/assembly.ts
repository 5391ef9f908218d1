// The last stage of the post album: stacked on the posts, fastened, broken in, checked.
import { listInWords } from "../wording.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

const stage = "Put together";

/** The steps from the stack on its posts to the last check. */
export function assembleAlbum({ model, say }: PlanContext<"post-album">): readonly DraftStep[] {
  const { geometry } = model;
  const { posts, guardLayers, leaves } = geometry;
  const choice = posts.choice;
  const extensions = choice?.extensions ?? [];
  const guard = guardLayers === 1 ? "one guard" : `${guardLayers} guards`;
  return [
    {
      id: "stack-leaves", stage, title: "Stack the album on its posts",
      action: [
        ...(extensions.length > 0 ? [`Screw ${extensions.length === 1 ? `an extension of ${say.size(extensions[0]!)}` : `extensions of ${listInWords(extensions.map((each) => say.size(each)))}`} into each post, finger-tight.`] : []),
        "Push the posts through the back cover from its outside. Lay the cover down inside up, so that the posts stand upright on their heads.",
        "Lay the last leaf over the posts, front up.",
        ...(guardLayers > 0
          ? [`Lay ${guard} on it, flush at spine, head and tail. Then the next leaf, again ${guard}, and so on; end with the first leaf, without a guard on it.`]
          : ["Lay the other leaves on it, one after the other, from the last to the first."]),
        "Lay the front cover on top, outside up.",
      ],
      parts: ["leaf", ...(guardLayers > 0 ? ["guard"] : [])],
      sizes: [
        { label: "leaves", text: String(leaves) },
        ...(guardLayers > 0 ? [{ label: "guards between two leaves", text: String(guardLayers) }] : []),
        { label: "leaves and guards, pressed together", text: say.about(say.thickness(geometry.leafStack)) },
      ],
      tools: [], minutes: 5 + leaves, cautions: ["smallParts", "paperEdge"], figure: "assembly",
      check: `Pressed together by hand, leaves and guards are ${say.about(say.thickness(geometry.leafStack))} high, and between the cover and the leaf beside it lies no guard.`,
      mistake: { sign: "A leaf lies with its back up.", repair: "Lift everything above it off the posts in one bundle and turn the leaf; its score must face up." },
    },
    {
      id: "fasten-posts", stage, title: "Fasten the posts",
      action: [
        "Press the stack down beside a post with one hand and screw its cap on with the other, finger-tight. Do the other posts.",
        "Go round once more, from post to post, and tighten each a little.",
      ],
      parts: [],
      sizes: [
        ...(choice ? [{ label: "post", text: `${say.thickness(posts.barrel)} barrel, ${say.size(choice.post)} long` }] : []),
        ...(extensions.length > 0 ? [{ label: "with its extensions", text: say.size(choice!.reach) }] : []),
        { label: "layers it goes through", text: say.thickness(posts.stack) },
      ],
      tools: ["screwdriver"], minutes: 4 + posts.count, cautions: ["smallParts"], figure: "post-section",
      check: "No leaf can be pulled out, no post turns under the fingers, and the heads lie flat on the cloth.",
      mistake: { sign: "The cap does not catch.", repair: "The stack is thicker than planned. Press it in a clamp first; if it still does not catch, take the guard out of one or two openings, or a longer post." },
    },
    {
      id: "break-in", stage, title: "Break the album in",
      action: [
        "Lay the album shut on the bench. Fold the front cover right back until its outside lies on the hinge strip, and hold it there a moment.",
        "Turn the first leaf: press along its score with the flat of your hand, so that it bends there. Go on leaf by leaf, the turned ones lying on the cover.",
        "Turn the album over and do the same from the back cover.",
      ],
      parts: [],
      sizes: [{ label: "joint gap", text: say.size(geometry.jointGap) }, { label: "folding right back needs", text: say.thickness(geometry.leastJointGap) }],
      tools: [], minutes: 4 + Math.ceil(leaves / 2), cautions: ["paperEdge"], figure: "open-cover",
      check: "Both covers lie back without being held, and every leaf lies flat beside its score.",
      mistake: { sign: "A cover springs back.", repair: "Work the joint to and fro ten times; damp a lining that bridges it and press it down with the bone folder." },
    },
    {
      id: "finish", stage, title: "Check the album",
      action: [
        "Shut the album and look at it from the head: the covers stand parallel, the fore-edges of the leaves in one line.",
        guardLayers > 0
          ? `Between two leaves there is room for ${say.thickness(geometry.guardThickness)} in all, on both pages together: as much as the guards are thick.`
          : "There are no guards: what is mounted makes the album thicker at the fore-edge.",
        "Leave the first and the last page free: no guard lies beside them.",
      ],
      parts: [],
      sizes: [
        { label: "room between two leaves", text: say.thickness(geometry.guardThickness) },
        { label: "finished album, height × width", text: say.sizes(model.finished.height, model.finished.width) },
        { label: "thickness when full, without post heads", text: say.size(model.finished.thickness) },
      ],
      tools: ["ruler"], minutes: 4, cautions: [], figure: "room-between-leaves",
      check: `The covers reach ${say.about(say.size(geometry.square))} beyond the leaves at head, tail and fore-edge.`,
      mistake: { sign: "A leaf stands out at the fore-edge.", repair: "Loosen the posts, knock the leaves up at the spine edge, and fasten them again: the holes have a little play." },
    },
  ];
}
