// The post album: single leaves side-bound with screw posts, guards between them, covers with a hinge strip.
import { layOutCovers } from "./post-album/covers.ts";
import { findFaults } from "./post-album/findings.ts";
import { layOutLeaves } from "./post-album/leaves.ts";
import { enterMaterials } from "./post-album/materials.ts";
import { listParts } from "./post-album/parts.ts";
import { placePosts } from "./post-album/posts.ts";
import { openLedger } from "./ledger.ts";
import type { BuildBinding } from "./binding.ts";
import type { PostAlbumGeometry } from "./post-album/geometry.ts";

declare module "./types.ts" {
  interface BindingGeometries {
    "post-album": PostAlbumGeometry;
  }
}

export const build: BuildBinding<"post-album"> = (definition) => {
  const ledger = openLedger(definition.units.step, definition.measured);
  enterMaterials(definition, ledger);
  const covers = layOutCovers(definition, ledger);
  const leaves = layOutLeaves(definition, ledger);
  const posts = placePosts(definition, ledger);
  const geometry: PostAlbumGeometry = { ...covers, ...leaves.geometry, ...posts.geometry };
  const parts = listParts(geometry, definition);
  return {
    binding: "post-album",
    finished: { height: ledger.length("finished height"), width: ledger.length("finished width"), thickness: ledger.length("finished thickness") },
    values: ledger.values,
    parts,
    scores: leaves.scores,
    holes: posts.holes,
    geometry,
    findings: findFaults({ definition, ledger, geometry, parts, holes: posts.holes }),
  };
};
