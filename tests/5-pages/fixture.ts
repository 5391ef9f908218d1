// A booklet made by hand for the tests of the pages: rich in every kind of block, independent of the planner and the drawings.
import { printOn } from "../fixtures/print.ts";
import type { Definition } from "../../src/1-definition/types.ts";
import { buildModel } from "../../src/2-model/index.ts";
import type { Plan, Step } from "../../src/3-plan/types.ts";
import type { Drawings, Figure, Template, TemplateSheet } from "../../src/4-figures/types.ts";
import type { Booklet } from "../../src/5-pages/types.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";

/** A booklet in inches with millimetres behind, on both papers, with an author's words and a picture. */
export function fixtureBooklet(changes: Partial<Definition<"stub-album">> = {}): Booklet {
  const definition = stubAlbumDefinition({
    units: "in",
    dual: true,
    rest: {
      project: "test-album",
      title: "Album with eight stubs & one “quoted” <title>",
      subtitle: "For prints, cards and pressed leaves",
      summary: "A board-covered album whose pages stand on stubs folded from one strip of card.",
      author: { name: "A. Tester", workshop: "The Invented Bench" },
      revision: "2-test",
      print: printOn(["letter", "a4"]),
      ...changes,
    },
  }) as unknown as Definition;
  const { model } = buildModel(definition);
  const plan = fixturePlan(model.parts.slice(0, 10));
  return { definition, model, plan, drawings: fixtureDrawings(plan), folder: definition.project, pictures: import.meta.dirname };
}

const plainStep: Omit<Step, "id" | "n" | "stage" | "title"> = {
  action: [
    "Lay the card A on the cutting mat with the grain towards you, its left edge on the ruler’s zero.",
    "Mark every position of the table along the head edge, then along the tail edge.",
    "Join the marks with the awl’s point, lightly, without breaking the surface.",
  ],
  sizes: [
    { label: "Card A", text: "11\u00a03\u20444\u00a0×\u00a018\u00a01\u20442\u00a0in (298.5\u00a0×\u00a0470\u00a0mm)" },
    { label: "First mark from the left edge", text: "3\u20448\u00a0in (about\u00a09.5\u00a0mm)" },
  ],
  table: null, parts: ["card"], tools: ["ruler", "awl"], minutes: 12, before: "", adhesive: null, cautions: [], ownCautions: [],
  figure: null, picture: null, check: "Head and tail marks are the same distance from the left edge everywhere.",
  mistake: { sign: "A line leans.", repair: "Measure it again from the left edge, never from the line beside it." },
  wait: null, tip: null, ownText: null,
};

function fixtureStep(n: number): Step {
  const id = `step-name-${n}`;
  const stage = ["Before you begin", "The card", "The hinge", "The boards", "The pages"][Math.min(4, Math.floor((n - 1) / 4))]!;
  const base = { ...plainStep, id, n, stage, title: `Do the work of step ${n} from edge to edge` };
  switch (n % 7) {
    case 1: return { ...base, figure: "narrow", cautions: [{ signal: "WARNING", hazard: "A knife slips off a ruler that moves.", consequence: "It can cut to the bone", avoid: "keep your hand behind the blade" }] };
    case 2: return { ...base, figure: "wide", table: { caption: "Running dimensions from the left edge", columns: ["Mark", "At", "Fold"], rows: Array.from({ length: 12 }, (_, row) => [`stub ${row + 1} crest`, `${row + 1}\u00a05\u204416\u00a0in`, row % 2 ? "valley" : "mountain"]) } };
    case 3: return { ...base, figure: "narrow", adhesive: { name: "PVA", note: "together within 8\u00a0min" }, wait: { minutes: 720, longestMinutes: 1440, kind: "dry", text: "Leave it under weight between clean boards.", meanwhile: "Go on with step 9." } };
    case 4: return { ...base, tip: "A **sharp** pencil. See [the maker](https://example.org/).", cautions: [{ signal: "NOTICE", hazard: "Wet cloth marks.", consequence: "", avoid: "Lay waste paper over it." }] };
    case 5: return { ...base, ownCautions: ["DANGER: *never* alone.", "Mind the edge."], before: "The hinge has set since step 3.", figure: "narrow" };
    case 6: return { ...base, ownText: "## Own words\n\n#### Deeper\n\nWith 3\u20444\u00a0in of room.\n\n![A fold](pictures/fold.png) ![far](https://example.org/x.png)", picture: { file: "pictures/fold.png", alternative: "A fold" }, action: [], check: "", mistake: null, sizes: [] };
    default: return { ...base, wait: { minutes: 20, longestMinutes: 45, kind: "set", text: "Press with the flat hand.", meanwhile: "" } };
  }
}

function fixturePlan(parts: Booklet["model"]["parts"]): Plan {
  return {
    materials: parts.slice(0, 6).map((part) => ({
      role: part.material, name: `${part.material}, 300\u00a0g/m²`, pieces: [`1 piece 11\u00a03\u20444 × 18\u00a01\u20442\u00a0in, grain along the height`, "2 pieces 4 × 5\u00a0in"],
      quantity: "at least 1 sheet 20 × 28\u00a0in", thickness: "0.4\u00a0mm", note: "acid-free if the album is to last",
    })),
    cutList: parts.map((part, index) => ({
      letter: String.fromCharCode(65 + index), part, material: part.material, heightText: "11\u00a03\u20444\u00a0in (298.5\u00a0mm)", widthText: "1\u00a0in (25.5\u00a0mm)",
      grainText: "grain along the height", note: part.note, figure: `part-${part.id}`,
    })),
    tools: [{ id: "ruler", name: "steel ruler", note: "with a safety edge" }, { id: "awl", name: "awl", note: "" }, { id: "folder", name: "bone folder", note: "a spoon’s back will do" }],
    steps: Array.from({ length: 21 }, (_, index) => fixtureStep(index + 1)),
    sittings: [
      { n: 1, firstStep: 1, lastStep: 9, handsOnMinutes: 120, minutes: 170, endsBecause: "the hinge dries overnight" },
      { n: 2, firstStep: 10, lastStep: 21, handsOnMinutes: 132, minutes: 150, endsBecause: "the book is finished" },
    ],
    handsOnMinutes: 252, longestWaitMinutes: 720, idleMinutes: 35,
    values: [
      { name: "stubs", meaning: "how many leaves stand up", formula: "", filled: "", result: "8", origin: "given", source: "" },
      { name: "card width", meaning: "length of the strip before folding", formula: "2 × stubs × stub depth + (stubs − 1) × floor gap + 2 × margin", filled: "2 × 8 × 3\u20444\u00a0in + (8 − 1) × 3\u204416\u00a0in + 2 × 3\u20448\u00a0in", result: "14\u00a01\u204416\u00a0in", origin: "computed", source: "geometry" },
    ],
    measureYours: [{ name: "folded floor", calculated: "2\u00a03\u20448\u00a0in", dependents: ["spine strip", "cloth width"] }],
    troubleshooting: [{ sign: "The book gapes at the fore-edge.", cause: "The pages are thicker than the floor leaves room for.", repair: "Take out what is mounted on every second page.", steps: [20, 21] }],
    glossary: [{ term: "stub", meaning: "a narrow upright fold that a page is mounted on" }, { term: "caliper", meaning: "thickness of one sheet" }],
    safety: {
      hazards: [{ signal: "WARNING", hazard: "A knife slips.", consequence: "It cuts.", avoid: "Keep behind it.", steps: [1, 8, 15] }, { signal: "NOTICE", hazard: "Wet cloth marks", consequence: "", avoid: "cover it", steps: [4] }],
      own: [{ markdown: "WARNING: The **press** pinches.", steps: [3] }],
      supervision: "Children work only beside a trained adult.", deferral: "The rules of your venue, local law and the product’s data sheet come first.",
    },
    findings: [
      { code: "grain-across", severity: "warn", where: "side strip", message: "the grain runs across", consequence: "the strip will bow", remedy: "turn the piece by a quarter", path: null },
      { code: "post-long", severity: "note", where: "posts", message: "the post is 0.8\u00a0mm longer than the stack", consequence: "it will rattle a little", remedy: "add a washer of card", path: null },
    ],
    class: null,
    prose: new Map([["introduction", "Made for *Saturday* mornings.\n\n# Who it is for\n\nAnyone."], ["closing", "Enjoy it."]]),
  };
}

function fixtureDrawings(plan: Plan): Drawings {
  const figures = [
    placeholder("finished-book", 150, 95), placeholder("narrow", 80, 62), placeholder("wide", 168, 70),
    ...plan.cutList.map((item) => placeholder(item.figure, 38, 24)),
  ];
  return { figures: new Map(figures.map((figure) => [figure.id, figure])), classFigures: new Map(), bagLabels: null, templates: [placeholderTemplate()], sheets: placeholderSheets() };
}

function placeholder(id: string, width: number, height: number): Figure {
  return {
    id, title: `Drawing ${id}`, caption: `Drawing ${id}, 1:2. All sizes in inches.`, alternative: `A box that stands for ${id}.`, width, height, lines: ["outline", "mountain", "hidden"],
    svg: `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="figure-${id}-title"><title id="figure-${id}-title">Drawing ${id}</title><path d="M1 1H${width - 1}V${height - 1}H1Z" fill="none" stroke="#000" stroke-width="0.5"/><text x="${width / 2}" y="${height / 2}" font-size="3" text-anchor="middle" font-family="'Benchleaf Label', sans-serif">${id}</text></svg>`,
  };
}

function placeholderTemplate(): Template {
  return {
    id: "score-guide", title: "Score guide", use: ["Cut out the strip.", "Lay it on the head edge and prick through every line."], width: 360, height: 60,
    dxf: "  0\r\nEOF\r\n",
    svg: '<svg viewBox="0 0 360 60" width="360mm" height="60mm"><title>Score guide</title><path d="M0 0H360V60H0Z" fill="none" stroke="#000"/></svg>',
    marks: [{ name: "stub 1 crest", act: "score", from: [10, 0], to: [10, 60] }],
  };
}

function placeholderSheets(): Drawings["sheets"] {
  const sheet = (width: number, height: number, landscape: boolean, label: string): TemplateSheet => ({
    title: `Score guide: ${label}`, landscape, width, height, pieces: [{ template: "score-guide", label, origin: [0, 0] }],
    svg: `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="sheet-title"><title id="sheet-title">Sheet ${label}</title><path data-role="check" d="M20 ${height - 20}h100" stroke="#000" stroke-width="0.35"/></svg>`,
  });
  return new Map([
    ["a4", [sheet(297, 210, true, "row 1 of 1, column 1 of 2"), sheet(297, 210, true, "row 1 of 1, column 2 of 2"), sheet(210, 297, false, "row 1 of 1, column 1 of 1")]],
    ["letter", [sheet(279.4, 215.9, true, "row 1 of 1, column 1 of 2"), sheet(279.4, 215.9, true, "row 1 of 1, column 2 of 2")]],
    ["a5", [sheet(210, 148, true, "")]],
    ["half-letter", [sheet(215.9, 139.7, true, "")]],
  ]);
}
