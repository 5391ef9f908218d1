// Variants are laid over the definition; every value keeps its place and its unit.
import { describe, expect, it } from "vitest";
import type { Definition } from "../../src/1-definition/types.ts";
import { inches, mm, sameLength, toMillimetres } from "../../src/units/length.ts";
import { head, marked, read, sound } from "./reading.ts";

function definitionsOf(text: string): readonly Definition<"stub-album">[] {
  const { definitions, problems } = read(text);
  expect(problems).toEqual([]);
  return definitions;
}

describe("variants", () => {
  const text = `${sound}  spine: 63 mm
subtitle: for leaves
variants:
  - {name: Pocket Größe, book: {stubs: 4, boards: {width: 131 mm}}}
  - {name: in inches, units: in, title: Another, book: {spine: }}
`;
  const [base, pocket, inch] = definitionsOf(text);

  it("are built beside the definition itself, which comes first", () => {
    expect([base, pocket, inch].map((definition) => definition!.project)).toEqual(["invented", "invented-pocket-groesse", "invented-in-inches"]);
    expect(base!.book.stubs).toBe(7);
  });

  it("change only what they write, key by key", () => {
    expect(pocket!.book.stubs).toBe(4);
    expect(toMillimetres(pocket!.book.boards.width)).toBe(131);
    expect(toMillimetres(pocket!.book.boards.height)).toBe(251);
    expect(pocket!.book.spine && toMillimetres(pocket!.book.spine)).toBe(63);
  });

  it("take a key away by writing nothing behind it", () => {
    expect(inch!.book.spine).toBeNull();
    expect(inch!.book.margin && sameLength(inch!.book.margin, inches(3, 8))).toBe(true);
  });

  it("point to where each value was written, in the variant or in the definition", () => {
    const at = (definition: Definition, path: string): string => text.slice(definition.places.get(path)!.span!.start, definition.places.get(path)!.span!.end);
    expect(at(pocket!, "book/stubs")).toBe("4");
    expect(pocket!.places.get("book/stubs")!.span!.start).toBeGreaterThan(text.indexOf("variants:"));
    expect(pocket!.places.get("book/boards/height")!.span!.start).toBe(text.indexOf("251 mm"));
    expect([...pocket!.places.keys()].some((path) => path.startsWith("variants"))).toBe(false);
  });

  it("bear their name on the cover unless they have a title or subtitle of their own", () => {
    expect([base, pocket, inch].map((definition) => definition!.subtitle)).toEqual(["for leaves", "for leaves (Pocket Größe)", "for leaves"]);
  });

  it("read a bare number in the unit that governs where it was written", () => {
    const bare = `${head}units: mm
book: {stubs: 7, boards: {height: 251, width: 187}}
variants: [{name: inch, units: in, book: {boards: {width: 7.5}}}]
`;
    const [, variant] = definitionsOf(bare);
    expect(sameLength(variant!.book.boards.height, mm(251))).toBe(true);
    expect(sameLength(variant!.book.boards.width, inches("7.5"))).toBe(true);
    expect(variant!.print.papers).toEqual(["letter"]);
  });

  it("leave a ruler's step behind with its unit, and keep the rest of units in full or short form", () => {
    const units = (base: string, over: string): Definition<"stub-album">["units"] => definitionsOf(`${sound.replace("units: mm", `units: ${base}`)}variants: [{name: v, units: ${over}}]\n`)[1]!.units;
    expect(units("{governing: mm, step: 1 mm, dual: yes}", "{governing: in}")).toEqual({ governing: "in", step: inches(1, 16), dual: true });
    expect(units("mm", "{dual: yes}")).toEqual({ governing: "mm", step: mm("0.5"), dual: true });
    expect(units("mm", "{step: 1 mm}")).toEqual({ governing: "mm", step: mm(1), dual: false });
  });

  it("change one time of an adhesive without changing the adhesive", () => {
    const [, variant] = definitionsOf(`${sound}adhesives: {floor: wheat paste}\nvariants: [{name: v, adhesives: {floor: {open: 9 min}}}]\n`);
    expect(variant!.adhesives["floor"]).toMatchObject({ id: "wheat-paste", openMinutes: 9 });
  });

  it("report a fault of the definition once, and a fault of their own in their own lines", () => {
    const bad = `${sound.replace("stubs: 7", "stubs: 99")}variants: [{name: a}, {name: b, book: {boards: {width: 3 mm}}}]\n`;
    expect(marked(bad)).toEqual(["value-range 99", "length-range 3 mm"]);
  });

  it("cannot change the binding, the format or have variants", () => {
    expect(marked(`${sound}variants: [{name: a, binding: stub album, benchleaf: 1, variants: []}]\n`)).toEqual(["key-unknown binding", "key-unknown benchleaf", "key-unknown variants"]);
  });

  it("may write spine where the definition writes margin only after taking that away", () => {
    const margin = sound.replace("stubs: 7", "stubs: 7\n  margin: 9 mm");
    expect(marked(`${margin}variants: [{name: a, book: {spine: 63 mm}}]\n`)).toEqual(["keys-exclude spine"]);
    expect(marked(`${margin}variants: [{name: a, book: {spine: 63 mm, margin: }}]\n`)).toEqual([]);
  });
});
