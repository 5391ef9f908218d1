// The link stitch: sections linked to each other and to two boards by the sewing thread alone, the spine left open.
import type { BuildBinding } from "./binding.ts";
import { openLedger } from "./ledger.ts";
import { boardHoles, makeBoards } from "./link-stitch/boards.ts";
import { findFaults } from "./link-stitch/findings.ts";
import type { LinkStitchGeometry } from "./link-stitch/geometry.ts";
import { listParts } from "./link-stitch/parts.ts";
