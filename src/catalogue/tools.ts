// Tools of the bench by id: what they are called in every document and, where it helps, what will do instead.

/** A tool as it is printed; the note says why this one or what will do instead, and may be empty. */
export interface CatalogueTool {
  readonly name: string;
  readonly note: string;
}

/** The tools by id, as steps name them. */
export const tools = {
  pencil: { name: "hard pencil", note: "sharp; a blunt one is half a millimetre wide" },
  ruler: { name: "steel ruler", note: "longer than the longest cut, with a safety edge" },
  triangle: { name: "set square", note: "" },
  knife: { name: "craft knife", note: "new blade" },
  mat: { name: "cutting mat", note: "" },
  boneFolder: { name: "bone folder", note: "for scoring, use its point, or a blunt knitting needle or an empty ball pen" },
  brush: { name: "glue brush", note: "25 mm (1 in) wide, flat" },
  wasteSheets: { name: "waste paper", note: "a fresh sheet under every glueing" },
  barrier: { name: "silicone or waxed paper", note: "keeps adhesive off what is pressed; barrier sheets slow drying, so take them out for blotting paper once nothing sticks" },
  pressingBoards: { name: "pressing boards", note: "two, smooth, larger than the covers" },
  weight: { name: "weights", note: "4 to 5 kg (9 to 11 lb) in all: a wrapped brick or a stack of heavy books" },
  blotters: { name: "blotting paper or newsprint", note: "takes up the damp under a weight" },
  dampCloth: { name: "damp cloth", note: "" },
  caliper: { name: "caliper", note: "or measure a stack of equal pieces with the ruler and divide by their number" },
  prickNeedle: { name: "fine needle", note: "in a pin cushion or cork" },
  awl: { name: "awl", note: "with a cork on the point when it is not in use" },
  holeTool: { name: "hollow punch and mallet, or a hand drill", note: "of the hole's diameter" },
  eyeProtection: { name: "eye protection", note: "for everyone near a drill, punch or mallet" },
  roundFile: { name: "round file", note: "thinner than the holes" },
  wasteBoard: { name: "waste board", note: "under the work when piercing; under an awl a cork mat will do" },
  scissors: { name: "scissors", note: "" },
  screwdriver: { name: "screwdriver", note: "only if the posts have slotted caps" },
  clips: { name: "two clamps or bulldog clips", note: "with scraps of board under the jaws" },
  pressingStrips: { name: "strips of waste board", note: "a little narrower than the floor gap, to press the floor between the stubs" },
  cradle: { name: "punching cradle", note: "or a thick open book with its fold as a trough, over a cork mat" },
  rods: { name: "two joint rods", note: "knitting needles of the printed thickness, longer than the boards" },
  hammer: { name: "backing hammer", note: "any smooth hammer with a round face will do" },
  press: { name: "finishing press", note: "or two boards and two clamps" },
  tape: { name: "removable tape", note: "" },
  needle: { name: "sewing needle", note: "blunt, its eye just wide enough for the thread" },
  curvedNeedle: { name: "curved needle", note: "blunt; sold curved" },
  beeswax: { name: "beeswax", note: "not needed for thread that is waxed already" },
} as const satisfies Record<string, CatalogueTool>;

/** Id of a tool in the catalogue. */
export type ToolId = keyof typeof tools;

/** The name without what will do instead: "hollow punch and mallet". */
export function shortToolName(id: ToolId): string {
  return tools[id].name.split(",")[0]!;
}

/** Tools that hold a piece while it sets or dries, so that nobody else can have them meanwhile. */
export const holdingTools: ReadonlySet<ToolId> = new Set(["press", "pressingBoards", "weight", "clips", "pressingStrips"] as const);
