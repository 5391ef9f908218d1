// The stub album: fins folded from one strip of card, boards joined by a covered hinge, screw posts.
import { enterMaterials } from "./stub-album/materials.ts";
import { foldCard } from "./stub-album/card.ts";
import { layOutHinge } from "./stub-album/hinge.ts";
import { placePosts } from "./stub-album/posts.ts";
import { fitPages } from "./stub-album/pages.ts";
import { listParts } from "./stub-album/parts.ts";
import { findFaults } from "./stub-album/findings.ts";
import { openLedger } from "./ledger.ts";
import type { BuildBinding } from "./binding.ts";
import type { StubAlbumGeometry } from "./stub-album/geometry.ts";

declare module "./types.ts" {
  interface BindingGeometries {
    "stub-album": StubAlbumGeometry;
  }
}

export const build: BuildBinding<"stub-album"> = (definition) => {
  const ledger = openLedger(definition.units.step, definition.measured);
  enterMaterials(definition, ledger);
  const card = foldCard(definition, ledger);
  const hinge = layOutHinge(definition, ledger);
  const posts = placePosts(definition, ledger);
  const pages = fitPages(definition, ledger);
  const geometry: StubAlbumGeometry = { ...card.geometry, ...hinge, posts: posts.geometry, ...pages };
  const parts = listParts(geometry, definition);
  return {
    binding: "stub-album",
    finished: {
      height: ledger.length("board height"),
      width: ledger.length("finished width"),
      thickness: ledger.length("finished thickness"),
    },
    values: ledger.values,
    parts,
    scores: card.scores,
    holes: posts.holes,
    geometry,
    findings: findFaults({ definition, ledger, geometry, parts, scores: card.scores, holes: posts.holes }),
  };
};
