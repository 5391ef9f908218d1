// Several views in one figure: each with its heading, set under or beside each other.
import { boxHeight, boxWidth } from "../geometry/box.ts";
import { point } from "../geometry/point.ts";
import { fullColumn } from "./scale.ts";
import { headingType, label, moveItems, sceneBox } from "./scene.ts";
import type { SceneItem } from "./scene.ts";

/** Clear space between two views in millimetres of paper. */
const viewGap = 5;
/** What the widths of lines add round a drawing. */
const lineRoom = 3;

/** A view with its heading above it, flush left. The heading's label is `heading <name>`. */
export function withHeading(name: string, text: string, view: readonly SceneItem[]): readonly SceneItem[] {
  const box = sceneBox(view)!;
  return [label(`heading ${name}`, text, point(box.left, box.top - 3), { size: headingType, weight: 600 }), ...view];
}

/** The factor by which a view drawn at full size just fills a room on paper. */
export function factorToFill(full: readonly SceneItem[], room: { readonly width: number; readonly height: number }): number {
  const box = sceneBox(full)!;
  return Math.min(room.width / boxWidth(box), room.height / boxHeight(box));
}

/** Views one under the other, flush left. */
export function viewsBelow(views: readonly (readonly SceneItem[])[], gap = viewGap): readonly SceneItem[] {
  let y = 0;
  return views.flatMap((view) => {
    const box = sceneBox(view)!;
    const moved = moveItems(view, -box.left, y - box.top);
    y += boxHeight(box) + gap;
    return moved;
  });
}

/** Views beside each other, tops level; one under the other where that would be wider than the column. */
export function viewsBeside(views: readonly (readonly SceneItem[])[], gap = viewGap): readonly SceneItem[] {
  let x = 0;
  const beside = views.flatMap((view) => {
    const box = sceneBox(view)!;
    const moved = moveItems(view, x - box.left, -box.top);
    x += boxWidth(box) + gap;
    return moved;
  });
  return x - gap + lineRoom <= fullColumn ? beside : viewsBelow(views);
}
