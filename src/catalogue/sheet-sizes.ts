// Sheets of paper by name: ISO, North American and traditional British sizes, each with the source of its figures.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";

/** A sheet as sold, the longer side as its height. */
export interface SheetSize {
  /** As printed: "A3", "Letter", "Double Crown". */
  readonly name: string;
  /** Other names under which it is found. */
  readonly aliases: readonly string[];
  readonly height: Length;
  readonly width: Length;
  readonly source: string;
}

/** Row 0 of each ISO series, in whole millimetres; every further row follows by halving. Source: Wikipedia, "ISO 216". */
const isoRowZero = { A: { height: 1189, width: 841 }, B: { height: 1414, width: 1000 }, C: { height: 1297, width: 917 } } as const;

/** The longer side is halved and half a millimetre is dropped; this gives all 33 rows of the published table. */
function isoSeries(series: keyof typeof isoRowZero, standard: string): readonly SheetSize[] {
  const sizes: SheetSize[] = [];
  let { height, width }: { height: number; width: number } = isoRowZero[series];
  for (let row = 0; row <= 10; row += 1) {
    sizes.push({ name: `${series}${row}`, aliases: [], height: mm(height), width: mm(width), source: standard });
    [height, width] = [width, Math.floor(height / 2)];
  }
  return sizes;
}

function sheet(name: string, height: Length, width: Length, source: string, ...aliases: readonly string[]): SheetSize {
  return { name, aliases, height, width, source };
}

const northAmerican = "Wikipedia, \"ANSI/ASME Y14.1\", and a US paper size page";
const cockerell = "Cockerell, Bookbinding, and the Care of Books (1901), table of printing papers";

/** Every named sheet, in the order of the families. */
export const sheetSizes: readonly SheetSize[] = [
  ...isoSeries("A", "ISO 216"),
  ...isoSeries("B", "ISO 216"),
  ...isoSeries("C", "ISO 269"),
  sheet("DL", mm(220), mm(110), "ISO 269"),
  sheet("C7/6", mm(162), mm(81), "ISO 269"),
  sheet("Letter", inches(11), inches("8.5"), northAmerican, "US Letter", "ANSI A"),
  sheet("Legal", inches(14), inches("8.5"), northAmerican, "US Legal"),
  sheet("Tabloid", inches(17), inches(11), northAmerican, "Ledger", "ANSI B"),
  sheet("ANSI C", inches(22), inches(17), northAmerican),
  sheet("ANSI D", inches(34), inches(22), northAmerican),
  sheet("ANSI E", inches(44), inches(34), northAmerican),
  sheet("ANSI F", inches(40), inches(28), northAmerican),
  sheet("Half Letter", inches("8.5"), inches("5.5"), northAmerican, "Invoice", "Statement"),
  sheet("Junior Legal", inches(8), inches(5), northAmerican),
  sheet("Government Letter", inches("10.5"), inches(8), northAmerican),
  sheet("Government Legal", inches(13), inches("8.5"), northAmerican),
  sheet("Arch A", inches(12), inches(9), northAmerican),
  sheet("Arch B", inches(18), inches(12), northAmerican),
  sheet("Arch C", inches(24), inches(18), northAmerican),
  sheet("Arch D", inches(36), inches(24), northAmerican),
  sheet("Arch E", inches(48), inches(36), northAmerican),
  sheet("Arch E1", inches(42), inches(30), northAmerican),
  sheet("Foolscap", inches(17), inches("13.5"), cockerell),
  sheet("Crown", inches(20), inches(15), cockerell),
  sheet("Post", inches("19.25"), inches("15.5"), cockerell),
  sheet("Demy", inches("22.5"), inches("17.5"), cockerell),
  sheet("Medium", inches(24), inches(19), cockerell),
  sheet("Royal", inches(25), inches(20), cockerell),
  sheet("Double Pott", inches(25), inches(15), cockerell),
  sheet("Double Foolscap", inches(27), inches(17), cockerell),
  sheet("Super Royal", inches(27), inches(21), cockerell),
  sheet("Double Crown", inches(30), inches(20), cockerell),
  sheet("Imperial", inches(30), inches(22), cockerell),
  sheet("Double Post", inches("31.5"), inches("19.5"), cockerell),
];

const sheetsByKey: ReadonlyMap<string, SheetSize> = new Map(
  sheetSizes.flatMap((size) => [size.name, ...size.aliases].map((name) => [keyOf(name), size] as const)),
);

/** Every name and other name, for a message that suggests the nearest one. */
export const sheetSizeNames: readonly string[] = sheetSizes.flatMap((size) => [size.name, ...size.aliases]);

/** The sheet of a name, whatever its capitals, blanks and hyphens (`a3`, `half-letter`, `ANSI B`); null when none is called so. */
export function findSheetSize(name: string): SheetSize | null {
  return sheetsByKey.get(keyOf(name)) ?? null;
}

function keyOf(name: string): string {
  return name.trim().toLowerCase().replace(/[\s_-]+/gu, "");
}
