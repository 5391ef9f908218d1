// Figure: the lengths of thread as they are cut, side by side to one scale, with where each goes on in the next.
import { line } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { piecesToCut } from "../../2-model/sewing/thread.ts";
import { toMillimetres } from "../../units/length.ts";
import { breakAcross } from "../breaks.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";
import { fittingScale } from "../scale.ts";
import { label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room for the longest length on paper; more lengths than these are left out in the middle. */
const room = 100;
const most = 8;
const row = 8;

/** Figure `thread-lengths`; `rule` is the rule of thumb in words: "sections and two covers and one more times the page height". */
export function drawThreadLengths(input: DrawingInput, rule: string): FigureDraft {
  const words = sectionWords(input);
  const thread = input.model.thread!;
  const pieces = piecesToCut(thread).map((piece, index) => ({ ...piece, n: index + 1 }));
  const shown = pieces.length <= most ? pieces : [...pieces.slice(0, most - 2), ...pieces.slice(-2)];
  const longest = Math.max(...pieces.map(({ length }) => toMillimetres(length)));
  const scale = fittingScale(longest, 1, room, room);
  const items = shown.flatMap((piece, index): readonly SceneItem[] => {
    const y = index * row;
    const end = toMillimetres(piece.length) * scale.factor;
    const needles = piece.needles === 2 ? [0, end] : [end];
    return [
      stroke(line(point(0, y), point(end, y)), "thread"),
      ...needles.map((x) => stroke(line(point(x === 0 ? -9 : x, y), point(x === 0 ? 0 : x + 9, y)), "edge")),
      label(`length ${piece.n}`, `length ${piece.n}`, point(-12, y + 1), { anchor: "end", weight: 600 }),
      label(`size ${piece.n}`, words.size(piece.length), point(end + 12, y + 1)),
    ];
  });
  const gap = pieces.length > most ? breakAcross(room / 2, (most - 2) * row - row / 2 - 1, (most - 2) * row - row / 2 + 1) : [];
  const byRule = words.value("thread by rule of thumb");
  return {
    id: "thread-lengths", title: "Thread as it is cut",
    caption: `Lengths of thread as cut, ${scale.name}, the needle as a thin line; ${words.size(thread.length)} in all.${pieces.length > most ? ` Of ${pieces.length} lengths, ${most} are drawn.` : ""} The rule of thumb, ${rule}, gives ${words.size(byRule)}: a check, no more.`,
    alternative: `${pieces.length === 1 ? "One length" : `${pieces.length} lengths`} of thread: ${pieces.map(({ n, length, needles }) => `length ${n}, ${words.size(length)}${needles === 2 ? ", a needle at each end" : ""}`).join("; ")}. In all ${words.size(thread.length)}.`,
    items: [...items, ...gap],
  };
}
