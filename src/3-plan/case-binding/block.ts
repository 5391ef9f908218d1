// Stage 2 of a case binding: fold, pierce and sew the sections, or fan and glue the leaves; endpapers; the spine glued.
import { zone } from "../bench/spread.ts";
import type { CautionId } from "../../catalogue/cautions.ts";
import { addLengths } from "../../units/length.ts";
import { wordsForPass } from "../sewing/move-words.ts";
import type { DraftStep, PlanContext } from "../binding.ts";

type Context = PlanContext<"case-binding">;
const stage = "The text block";

/** The steps from the folded sheets to the glued, and perhaps trimmed and rounded, spine. */
export function makeBlock(context: Context): readonly DraftStep[] {
  const { geometry } = context.model;
  return [
    ...(geometry.sewing ? [foldSections(context), pierceSections(context), ...sewSections(context)] : []),
    ...(geometry.sewing ? [] : [fanGlue(context)]),
    tipEndpapers(context),
    ...(geometry.sewing ? [glueSpine(context)] : []),
    ...(geometry.block.trim === "none" ? [] : [trimEdges(context)]),
    ...(geometry.round ? [roundBack(context)] : []),
  ];
}

function foldSections({ model, say }: Context): DraftStep {
  const { block } = model.geometry;
  const nested = block.foldedSheets === 1 ? "Each folded sheet is a section by itself." : `Nest ${block.foldedSheets} folded sheets into each other, heads level: that is one section.`;
  return {
    id: "fold-sections", stage, title: "Fold the sections",
    action: [
      "Fold each folio once across its width, edge to edge and head to head, and rub the fold down with the bone folder from the middle outwards.",
      `${nested} Knock it up at head and fold. Make ${block.sections} sections.`,
      "Put the sections in order, heads all one way. Press them between boards under weight for at least an hour; overnight is better (Vaughn 1912).",
    ],
    parts: ["folio"],
    sizes: [
      { label: "sections", text: `${block.sections}, of ${block.foldedSheets} folded ${block.foldedSheets === 1 ? "sheet" : "sheets"}` },
      { label: "one section, pressed", text: say.thickness(block.sectionThickness) },
      { label: "innermost leaf stands out", text: `up to ${say.thickness(block.creep)}` },
    ],
    tools: ["boneFolder", "pressingBoards", "weight"], minutes: 8 + Math.ceil(0.6 * block.sections * block.foldedSheets),
    cautions: ["boneFolder", "paperEdge", "weights"], figure: "fold-sections",
    check: `Every section has ${2 * block.foldedSheets} leaves, and its fold is sharp from head to tail.`,
    mistake: { sign: "A fold runs askew: the edges at head do not meet.", repair: "Open it, damp nothing, fold again edge to edge; the old crease will not show in the book." },
  };
}

function pierceSections({ model, say }: Context): DraftStep {
  const { sewing, headTrim } = model.geometry;
  return {
    id: "pierce-sections", stage, title: `Pierce the ${sewing!.stations.length} stations`,
    action: [
      "Cut out the piercing guide of the templates and fold it on its middle line. Its head end says “head”.",
      "Open a section in its middle, lay it in the punching cradle and lay the guide into the fold, head to head.",
      "Pierce every cross straight down through the fold with the awl.",
      "Do the same with every section, always head to head.",
    ],
    table: {
      caption: `Stations from the head of the folio, in ${say.unitName}`,
      columns: ["station", "what it is", "from the head"],
      rows: sewing!.stations.map((station, index) => [String(index + 1), station.name, say.number(addLengths(station.at, headTrim))]),
    },
    parts: ["folio"], tools: ["awl", "cradle", "mat", "scissors"], minutes: 5 + 2 * model.geometry.block.sections,
    cautions: ["awl", "scissors"], figure: "pierce-sections",
    check: "Stood on their heads side by side, the sections have their holes in level rows.",
    mistake: { sign: "A section was pierced head to tail.", repair: "Pierce it again the right way round. The extra holes do no harm: leave them empty." },
  };
}

/** The first two sections, tied together; then the others, each with its kettle stitch. A book of two sections is sewn in one step. */
function sewSections(context: Context): readonly DraftStep[] {
  const { model, say } = context;
  const { block, sewing } = model.geometry;
  const thread = model.thread!;
  const path = thread.paths[0]!;
  const { sections } = block;
  const isSpine = `the spine is ${say.about(say.thickness(block.spineThickness))} thick`;
  const joins = (sewnHere: (pass: number) => boolean): readonly string[] => {
    const here = thread.needlefuls.filter(({ last, joinAt }) => joinAt !== null && sewnHere(path.moves[last - 1]!.pass));
    const places = here.map(({ last, joinAt }) => `in ${path.passes[path.moves[last - 1]!.pass - 1]!.name} at station ${path.places.get(joinAt!.place)!.name}`);
    return here.length === 0 ? [] : [`Here your thread ends. Join the next length with a weaver’s knot on the inside of the fold: ${places.join("; ")}.`];
  };
  const shared = {
    stage, parts: ["folio", "tape"], tools: ["needle", "scissors", "boneFolder", "tape"], cautions: ["needle", "scissors"],
    notices: [{ hazard: "Thread pulled at right angles to the fold cuts the paper.", consequence: "The section hangs loose.", avoid: "Pull along the fold, in the direction in which you sew." }],
    mistake: { sign: "The needle has gone over a tape’s edge and pierced it.", repair: "Draw the thread back to the last hole and go round the tape again: tapes must stay free to slide." },
  } as const;
  const cutOff = `At the end of section 1 ${sections > 2 ? "make a kettle stitch, then a second one at the same place" : "knot once more"}, and cut the thread off ${say.size(path.end.length)} long.`;
  const threads = { label: `thread, ${thread.needlefuls.length === 1 ? "one length" : `${thread.needlefuls.length} lengths`}`, text: thread.needlefuls.map(({ length }) => say.size(length)).join(" + ") };
  const spine = { label: "sewn spine", text: say.about(say.thickness(block.spineThickness)) };
  const first: DraftStep = {
    ...shared, id: sections > 2 ? "sew-first-sections" : "sew-sections", title: sections > 2 ? "Sew the first two sections on the tapes" : "Sew the sections on the tapes",
    action: [
      `Mark the middle of each tape and fasten the tapes upright to the edge of the bench, ${sewing!.tapes.length} of them, each between its two stations. Leave ${say.size(sewing!.tapeOnBoards)} below the edge and the rest above.`,
      `Lay section ${sections}, the last of the book, on the bench, its fold to the tapes and its head to the left. ${wordsForPass(path, 1)}. Leave a tail of ${say.size(path.start.length)} hanging at station 1.`,
      `Pull the thread snug along the fold, never across it. Lay section ${sections - 1} on top, head over head, and sew it back. ${wordsForPass(path, 2)}. The knot ties the thread to its tail.`,
      ...joins((pass) => pass <= 2), ...(sections > 2 ? [] : [cutOff]),
    ],
    sizes: sections > 2 ? [threads] : [threads, spine], minutes: 10 + 6 * 2, figure: "sewing",
    check: `The tapes slide with a little force, the heads are level, and ${sections > 2 ? "neither section can be lifted off the other" : isSpine}.`,
  };
  if (sections === 2) return [first];
  return [first, {
    ...shared, id: "sew-sections", title: sections > 3 ? "Sew the other sections, each with a kettle stitch" : "Sew the third section, with a kettle stitch",
    action: [
      `Lay section ${sections - 2} on top and sew it. ${wordsForPass(path, 3)}. Pull upwards until the loop is tight: this is a kettle stitch.`,
      ...(sections > 3 ? [`Lay on and sew the others in the same way, to and fro, down to section 1. Make a kettle stitch at the end of each. ${sections > 4 ? "Press the sections down with the bone folder after every second one." : ""}`.trim()] : []),
      ...joins((pass) => pass > 2), cutOff,
    ],
    sizes: [spine], minutes: 6 * (sections - 2), figure: "kettle",
    check: `The tapes slide with a little force, the heads are level, and ${isSpine}.`,
    mistake: { sign: "A section leans out at one end.", repair: "Its kettle stitch is slack: pull the thread upwards there, and along the folds below, before you sew on." },
  }];
}

function fanGlue({ definition, model, say }: Context): DraftStep {
  const { block } = model.geometry;
  const glue = definition.adhesives["spine"]!;
  return {
    id: "fan-glue", stage, title: "Fan and glue the leaves",
    action: [
      "Knock the leaves up at spine and head until both edges are smooth as a board.",
      "Put the block between two pressing boards, spine up, about three quarters of it standing out, and clamp it so that it can still be fanned.",
      `Bend the block over to one side, so that the leaves fan out, and brush ${glue.name} over the fanned spine: it must reach a hair’s breadth onto every leaf.`,
      "Bend it over to the other side and brush again. Let it spring back upright, knock the spine level and clamp it tight.",
    ],
    parts: ["leaf"],
    sizes: [{ label: "leaves", text: String(block.leaves) }, { label: "glued spine", text: say.about(say.thickness(block.spineThickness)) }],
    tools: ["brush", "wasteSheets", "pressingBoards", "clips"], minutes: 20,
    glueing: { job: "spine", openMinutes: 4, spread: zone(block.pageHeight, block.spineThickness, 2) }, rest: "clamped, spine up",
    cautions: wetCautions(glue.wet, ["press", "paperEdge"]), figure: "fan-glue",
    check: "Opened gently, no leaf slips and none stands out of the spine.",
    mistake: { sign: "A leaf comes out.", repair: "Run a thin line of adhesive along its spine edge, push it home and clamp the block again." },
  };
}

function tipEndpapers({ definition, model, say }: Context): DraftStep {
  const { geometry } = model;
  const glue = definition.adhesives["endpapers"]!;
  return {
    id: "tip-endpapers", stage, title: "Tip on the endpapers",
    action: [
      "Fold each endpaper once across its width, good side in.",
      `Lay a strip of waste paper along the fold so that ${say.size(geometry.endpaperTip)} stay free, and brush ${glue.name} thinly over them.`,
      `Take the waste paper off and lay the endpaper on the ${geometry.sewing ? "first section" : "front of the block"}, fold to fold and head to head. Rub the line down.`,
      `Do the same at the back. ${geometry.sewing ? "The tapes stay outside." : ""}`.trim(),
    ],
    parts: ["endpaper"], sizes: [{ label: "width of the line of adhesive", text: say.size(geometry.endpaperTip) }],
    tools: ["brush", "wasteSheets", "boneFolder", "pressingBoards", "weight", "scissors"], minutes: 12,
    glueing: { job: "endpapers", openMinutes: 2, spread: zone(geometry.endpaperHeight, geometry.endpaperTip, 2) }, rest: "flat under a board and a weight",
    ...(geometry.sewing ? {} : { needs: [{ step: "fan-glue", until: "set", what: "glued leaves" } as const] }),
    cautions: wetCautions(glue.wet, ["boneFolder", "weights", "scissors"]), figure: "endpapers",
    check: "Endpaper and page open along the line like two pages of a book, and no adhesive has come beyond it.",
    mistake: { sign: "The endpaper stands out at the fold.", repair: "Peel it off at once and lay it on again; once it has set, trim what stands out with scissors." },
  };
}

function glueSpine({ definition, model, say }: Context): DraftStep {
  const { geometry } = model;
  const glue = definition.adhesives["spine"]!;
  return {
    id: "glue-spine", stage, title: "Glue the spine",
    action: [
      "Knock the book up at head and spine. Put it between two boards, spine a little beyond their edges, and clamp it lightly.",
      `Brush ${glue.name} over the spine and work it between the sections with a fingertip or a stiff brush. Keep it off the tapes’ free ends.`,
      "Wipe off all that lies on top: the adhesive belongs between the sections.",
    ],
    parts: [], sizes: [{ label: "back, endpapers included", text: say.about(say.thickness(geometry.backThickness)) }],
    tools: ["brush", "wasteSheets", "press", "pressingBoards"], minutes: 10,
    glueing: { job: "spine", openMinutes: 4, spread: zone(geometry.block.pageHeight, geometry.backThickness) }, needs: [{ step: "tip-endpapers", until: "set", what: "endpapers" }], rest: "in the press or between clamped boards, spine up",
    cautions: wetCautions(glue.wet, ["press"]), figure: "glue-spine",
    check: "Spine and head are square to each other, and the sections no longer slide.",
    mistake: { sign: "The spine has dried askew.", repair: "Damp it, knock it square and clamp it again; glue set hard must be soaked off." },
  };
}

function trimEdges({ model, say }: Context): DraftStep {
  const { geometry } = model;
  const { block } = geometry;
  const all = block.trim === "three edges";
  return {
    id: "trim-edges", stage, title: all ? "Trim the three edges" : "Trim the fore-edge",
    action: [
      `Mark the page on the front endpaper, from the spine: ${say.size(block.pageWidth)}${all ? `; from the head: ${say.size(geometry.headTrim)} to cut off, then the page’s height of ${say.size(block.pageHeight)}` : ""}.`,
      "Have the block cut on a guillotine or a board shear by someone trained, waste board under it and on it. Or cut it by hand between clamped boards, with a long sharp knife and many light strokes.",
      all ? "Cut the fore-edge first, then head and tail." : "Keep the cut square to the page.",
    ],
    parts: [],
    sizes: [{ label: "page, height × width", text: say.sizes(block.pageHeight, block.pageWidth) }],
    tools: ["pencil", "ruler", "triangle", "knife", "wasteBoard", "clips"], minutes: all ? 25 : 12,
    needs: [{ step: geometry.sewing ? "glue-spine" : "fan-glue", until: "dry", what: "glued spine" }],
    cautions: ["boardCutter", "knife", "press"], figure: "trim-edges",
    check: "Every leaf has been reached, and opposite edges are parallel.",
    mistake: { sign: "The knife has drifted and the last leaves are wider.", repair: "Turn the block over, clamp it at the narrowest line and cut again; make the boards to the size you end with." },
  };
}

function roundBack({ model, say }: Context): DraftStep {
  const { geometry } = model;
  const round = geometry.round!;
  return {
    id: "round-back", stage, title: "Round the back",
    action: [
      geometry.block.trim === "none" ? "Do this while the adhesive is set but still gives way, within an hour or two." : "Damp the back a little, so that the adhesive gives way.",
      "Lay the book flat, its spine towards you. Press your thumb against the middle of the fore-edge and draw the upper sections towards you with your fingers.",
      "Tap the back with the hammer from its middle to the upper edge, lightly, glancing blows. Turn the book over and do the other side.",
      `Go on by turns until the back rises ${say.about(say.thickness(round.rise))} above its shoulders. Lay the curve of the rounding gauge against it at head and tail.`,
    ],
    parts: [],
    sizes: [
      { label: "rise", text: say.about(say.thickness(round.rise)) }, { label: "across, shoulder to shoulder", text: say.thickness(geometry.backThickness) },
      { label: "radius of the gauge", text: say.thickness(round.radius) }, { label: "along the back", text: say.thickness(round.arc) },
    ],
    tools: ["hammer"], minutes: 15,
    needs: [{ step: geometry.sewing ? "glue-spine" : "fan-glue", until: "set", what: "glued spine" }],
    cautions: ["hammer"], figure: "round-back",
    check: "Seen from the head the back is an even curve, the same at the tail, and the fore-edge is hollow by as much.",
    mistake: { sign: "The curve is lopsided.", repair: "Damp the back, push it flat, and round it again, turning the book over after every few blows." },
  };
}

/** Cautions of a glueing, with the one about wet adhesive where it is wet. */
export function wetCautions(wet: boolean, others: readonly CautionId[]): readonly CautionId[] {
  return wet ? ["wetAdhesive", ...others] : others;
}
