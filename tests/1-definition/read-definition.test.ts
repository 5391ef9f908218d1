// A sound definition is read exactly: lengths, defaults, materials, adhesives, steps, prose, places.
import { rational } from "../../src/units/rational.ts";
import { describe, expect, it } from "vitest";
import type { Definition } from "../../src/1-definition/types.ts";
import { inches, mm, sameLength, toMillimetres } from "../../src/units/length.ts";
import { head, marked, read, sound } from "./reading.ts";

function definitionOf(text: string, folder?: Parameters<typeof read>[1]): Definition<"stub-album"> {
  const { definitions, problems } = read(text, folder);
  expect(problems).toEqual([]);
  return definitions[0]!;
}

describe("the smallest sound definition", () => {
  const definition = definitionOf(sound);

  it("is filled with the defaults of its unit", () => {
    expect(definition).toMatchObject({ project: "invented", binding: "stub-album", subtitle: null, revision: "1", language: "en", level: "some practice" });
    const { book } = definition;
    expect(toMillimetres(book["stub depth"])).toBe(20);
    expect(book.margin && toMillimetres(book.margin)).toBe(10);
    expect(book.spine).toBeNull();
    expect(book["joint gap"]).toBeNull();
    expect(book.pages.mounting).toBe("back to back");
    expect(book.posts.lengths.map(toMillimetres)).toEqual([3, 4, 5, 6, 8, 10, 12, 15, 20, 25]);
    expect(definition.print.papers).toEqual(["a4"]);
    expect(definition.bench).toEqual({ sittingMinutes: 180, pace: 1 });
    expect(definition.units).toEqual({ governing: "mm", step: mm("0.5"), dual: false });
  });

  it("is filled with inch defaults in an inch project", () => {
    const { book, units, print } = definitionOf(`${head}units: in\nbook: {stubs: 7, boards: {height: 9 7/8, width: 7¼"}}\n`);
    expect(sameLength(book["stub depth"], inches(3, 4))).toBe(true);
    expect(sameLength(book.boards.height, inches(79, 8))).toBe(true);
    expect(sameLength(book.boards.width, inches("7.25"))).toBe(true);
    expect(sameLength(book.posts.clearance, mm("0.5"))).toBe(true);
    expect(sameLength(units.step, inches(1, 16))).toBe(true);
    expect(print.papers).toEqual(["letter"]);
  });

  it("names the paths left to the default, and no path that is written or left to the model", () => {
    for (const path of ["book/stub depth", "book/margin", "book/boards/thickness", "book/pages/square", "book/posts/lengths", "units/step", "units/dual", "level", "revision", "bench/sitting", "print/paper", "materials/card/thickness", "materials/card/name", "adhesives/floor"]) {
      expect(definition.defaulted).toContain(path);
    }
    for (const path of ["book/stubs", "book/boards/height", "book/spine", "book/joint gap", "units/governing", "title", "materials/posts/thickness", "book/pages/decoration"]) {
      expect(definition.defaulted).not.toContain(path);
    }
  });

  it("knows where each path is written", () => {
    const at = (path: string): string => {
      const { span } = definition.places.get(path)!;
      return sound.slice(span!.start, span!.end);
    };
    expect(at("book/stubs")).toBe("7");
    expect(at("book/boards/height")).toBe("251 mm");
    expect(at("book/boards")).toBe("boards");
    expect(at("units")).toBe("mm");
    expect(definition.places.has("book/spine")).toBe(false);
  });
});

describe("lengths", () => {
  it("are exact, whatever their decimals", () => {
    const { book } = definitionOf(sound.replace("251 mm", "250.1").replace("187 mm", "18.73 cm"));
    expect(sameLength(book.boards.height, mm("250.1"))).toBe(true);
    expect(sameLength(book.boards.width, mm("187.3"))).toBe(true);
  });

  it("leave the margin to the model when the spine is given", () => {
    const { book, defaulted } = definitionOf(`${sound}  spine: 63 mm\n`);
    expect(book.margin).toBeNull();
    expect(book.spine && toMillimetres(book.spine)).toBe(63);
    expect(defaulted).not.toContain("book/margin");
  });

  const limits: readonly (readonly [key: string, least: string, most: string])[] = [
    ["stub depth", "6", "100"], ["floor gap", "1", "40"], ["margin", "0", "100"], ["spine", "5", "300"], ["height clearance", "0", "50"], ["side strip", "10", "120"],
    ["joint gap", "1", "40"], ["turn in", "5", "60"], ["hinge tape", "5", "120"], ["ribbon tie", "50", "600"],
  ];
  for (const [key, least, most] of limits) {
    it(`are taken at both limits of ${key} and refused just outside, in either unit`, () => {
      const outcome = (value: string): readonly string[] => read(`${sound}  ${key}: ${value}\n`).problems.map((problem) => problem.code);
      expect(outcome(`${least} mm`)).toEqual([]);
      expect(outcome(`${most} mm`)).toEqual([]);
      expect(outcome(`${most}.001 mm`)).toEqual(["length-range"]);
      expect(outcome(least === "0" ? "-0.001 mm" : `${Number(least) - 0.001} mm`)).toEqual(["length-range"]);
      // The limit as printed for inches is itself accepted.
      const hint = read(`${sound}  ${key}: 9000 in\n`).problems[0]!.hint;
      const [, from, to] = /from (.+) to (.+)$/.exec(hint)!;
      expect(outcome(from!)).toEqual([]);
      expect(outcome(to!)).toEqual([]);
    });
  }
});

describe("numbers, switches and texts", () => {
  it("are taken at both limits of a count and refused beyond", () => {
    const outcome = (stubs: string): readonly string[] => read(sound.replace("stubs: 7", `stubs: ${stubs}`)).problems.map((problem) => problem.code);
    expect(["1", "60", '"8"', "007"].map(outcome)).toEqual([[], [], [], []]);
    expect(["0", "61", "-1"].map(outcome)).toEqual([["value-range"], ["value-range"], ["value-range"]]);
    expect(["1.5", "1e1", ".inf", "eight", "0x8", "[8]"].map(outcome)).toEqual(Array.from({ length: 6 }, () => ["value-type"]));
  });

  it("accept yes, no, true and false alike", () => {
    const lining = (word: string): boolean => definitionOf(`${sound}  lining: ${word}\n`).book.lining;
    expect(["yes", "true", "Yes", "TRUE", '"yes"'].map(lining)).toEqual([true, true, true, true, true]);
    expect(["no", "false", "No"].map(lining)).toEqual([false, false, false]);
  });

  it("keep a number written where text is due as it is written", () => {
    expect(definitionOf(sound.replace("Invented album", "1984") + "revision: 1.10\n")).toMatchObject({ title: "1984", revision: "1.10" });
  });

  it("fold a text over several lines into one", () => {
    expect(definitionOf(sound.replace("Invented album", ">-\n  Invented\n  album")).title).toBe("Invented album");
  });
});

describe("files as editors save them", () => {
  it("may have Windows line ends, a byte order mark, both, or neither a last line end", () => {
    const plain = definitionOf(sound);
    for (const text of [sound.replaceAll("\n", "\r\n"), `\ufeff${sound}`, `\ufeff${sound.replaceAll("\n", "\r\n")}`, sound.trimEnd()]) {
      const { places: _, ...rest } = definitionOf(text);
      const { places: _p, ...expected } = plain;
      expect(rest).toEqual(expected);
    }
  });

  it("mark the same characters with and without a byte order mark", () => {
    const bad = sound.replace("stubs: 7", "stubs: 99");
    expect(marked(`\ufeff${bad}`)).toEqual(["value-range 99"]);
    expect(marked(bad)).toEqual(["value-range 99"]);
  });
});

describe("materials", () => {
  it("are all there with the usual thickness, and the boards have the thickness of the book", () => {
    const { materials } = definitionOf(sound);
    expect(Object.keys(materials)).toEqual(["card", "strip board", "boards", "cloth", "page paper", "lining paper", "hinge tape", "ribbon", "posts"]);
    expect(materials["card"]).toMatchObject({ thicknessFrom: "default", thickness: mm("0.4"), grain: "unknown", sheets: [], grammage: null });
    expect(materials["boards"]).toMatchObject({ thicknessFrom: "default", thickness: mm(3) });
    expect(materials["posts"]!.thickness).toBeNull();
  });

  it("have the thickness that follows from grammage and bulk, unless one was measured", () => {
    const card = (keys: string): Definition["materials"][string] => definitionOf(`${sound}materials: {card: ${keys}}\n`).materials["card"]!;
    expect(card("{grammage: 300, bulk: 1.2}")).toMatchObject({ thickness: mm("0.36"), thicknessFrom: "grammage", grammage: 300, name: "heavy card" });
    expect(card("{grammage: 300}")).toMatchObject({ thickness: mm("0.375"), thicknessFrom: "grammage" });
    expect(card("{grammage: 300, thickness: 0.41 mm}")).toMatchObject({ thickness: mm("0.41"), thicknessFrom: "given", grammage: 300 });
    expect(card("{name: scrap}")).toMatchObject({ name: "scrap", thicknessFrom: "default" });
  });

  it("know their sheets by name and by size, one alone or several", () => {
    const sheets = (written: string): unknown => definitionOf(`${sound}materials: {card: {sheets: ${written}}}\n`).materials["card"]!.sheets;
    expect(sheets("A3")).toEqual([{ height: mm(420), width: mm(297), price: null, pack: 1, inHand: 0 }]);
    expect(sheets("[500 x 700 mm, 20 in x 26 in]")).toMatchObject([{ height: mm(500), width: mm(700) }, { height: inches(20), width: inches(26) }]);
    expect(sheets("{size: A3, price: 14.50, pack: 10, in hand: 3}")).toEqual([{ height: mm(420), width: mm(297), price: rational(29n, 2n), pack: 10, inHand: 3 }]);
  });
});

describe("adhesives", () => {
  it("come from the catalogue by job, by any of their names", () => {
    const { adhesives } = definitionOf(`${sound}adhesives: {floor: wheat paste, hinge: White Glue}\n`);
    expect(adhesives["floor"]).toMatchObject({ id: "wheat-paste" });
    expect(adhesives["hinge"]).toMatchObject({ id: "pva" });
    expect(adhesives["stubs"]).toMatchObject({ id: "double-sided-tape", wet: false });
    expect(Object.keys(adhesives)).toHaveLength(8);
  });

  it("take the author's times over the catalogue's and say so", () => {
    const { adhesives } = definitionOf(`${sound}adhesives: {floor: {use: PVA, open: 6 min, dry: 1 day}}\n`);
    expect(adhesives["floor"]).toMatchObject({ openMinutes: 6, setMinutes: 30, dryMinutes: 1440 });
    expect(adhesives["floor"]!.source).toMatch(/^open, dry time as given in the definition; otherwise: /);
  });

  it("may be dry as soon as they are set, not sooner", () => {
    expect(marked(`${sound}adhesives: {floor: {use: PVA, set: 12 h}}\n`)).toEqual([]);
    expect(marked(`${sound}adhesives: {floor: {use: PVA, set: 12 h 1 min}}\n`)).toEqual(["value-range 12 h 1 min"]);
    expect(marked(`${sound}adhesives: {floor: {use: PVA, set: 40 min, dry: 39 min}}\n`)).toEqual(["value-range 39 min"]);
  });
});

describe("steps", () => {
  const steps = `${sound}steps:
  mount pages: {tip: "Last {card width}", minutes: 12}
  fold-card:
    caution: [Mind the ruler., Mind the knife.]
    picture: {file: ./pictures/../pictures/fold.jpg, alt: A fold}
add steps:
  - {title: Sign it!, after: finish, text: "In {pencil}.", minutes: 5, check: it is readable}
  - {title: Finish, after: finish, text: b, minutes: 5}
  - {title: "絹", after: mount pages, text: b, minutes: 5}
`;

  it("are changed by id with blanks or hyphens, in the order of the binding", () => {
    const { stepChanges } = definitionOf(steps, { files: ["pictures/fold.jpg"] });
    expect(stepChanges.map((change) => change.step)).toEqual(["fold-card", "mount-pages"]);
    expect(stepChanges[0]).toMatchObject({ picture: { file: "pictures/fold.jpg", alternative: "A fold" }, minutes: null, tip: null });
    expect(stepChanges[0]!.cautions.map((caution) => caution.markdown)).toEqual(["Mind the ruler.", "Mind the knife."]);
    expect(stepChanges[1]).toMatchObject({ minutes: 12, cautions: [] });
  });

  it("keep for each character of their Markdown where it stands", () => {
    const { stepChanges } = definitionOf(steps, { files: ["pictures/fold.jpg"] });
    const { markdown, offsets } = stepChanges[1]!.tip!;
    const at = markdown.indexOf("{card width}");
    expect(steps.slice(offsets[at]!, offsets[at + 11]! + 1)).toBe("{card width}");
  });

  it("added by the author get ids that no other step has", () => {
    const { addedSteps } = definitionOf(steps, { files: ["pictures/fold.jpg"] });
    expect(addedSteps.map((step) => [step.id, step.after])).toEqual([["sign-it", "finish"], ["finish-2", "finish"], ["own-step", "mount-pages"]]);
    expect(addedSteps[0]!.text).toMatchObject({ slot: "sign-it", markdown: "In {pencil}." });
  });
});

describe("prose files", () => {
  it("are read for the introduction, the closing and the steps, with offsets through Windows line ends", () => {
    const markdown = "One\r\n\r\n{card width}\r\n";
    const { prose } = definitionOf(sound, { prose: { "prose/introduction.md": markdown, "prose/fold-card.md": "Fold.", "prose/closing.md": "  \n" } });
    expect(prose.map((piece) => [piece.slot, piece.markdown])).toEqual([["fold-card", "Fold."], ["introduction", "One\n\n{card width}"]]);
    const { offsets, place } = prose[1]!;
    expect(place.file).toBe("content/invented/prose/introduction.md");
    expect(markdown.slice(offsets[5]!, offsets[16]! + 1)).toBe("{card width}");
  });

  it("are a problem when no step has their name, with the nearest suggested", () => {
    const { problems } = read(sound, { prose: { "prose/fold-cards.md": "x" } });
    expect(problems).toMatchObject([{ code: "step-file-unknown", severity: "error", hint: "did you mean fold-card.md?", place: { file: "content/invented/prose/fold-cards.md" } }]);
  });

  it("are a warning when they are not Markdown, and nothing when an editor left them", () => {
    const { problems, definitions } = read(sound, { files: ["prose/introduction.txt", "prose/introduction.md~", "prose/.DS_Store", "prose/introduction.md"] });
    expect(problems).toMatchObject([{ code: "step-file-unknown", severity: "warning", place: { file: "content/invented/prose/introduction.txt" } }]);
    expect(definitions).toHaveLength(1);
  });

  it("are found under either form of their path", () => {
    expect(definitionOf(sound, { prose: { "introduction.md": "x" } }).prose[0]!.place.file).toBe("content/invented/prose/introduction.md");
  });
});

describe("problems", () => {
  it("of all kinds in one file are reported together, each with the offending characters alone", () => {
    const text = `${head.replace("Invented album", "'It: 1'")}units: mm
colour: red
book:
  stubs: 0
  boards: {height: 251 mmm, width: 187 mm 4}
  lining: perhaps
steps:
  fold cart: {tip: x}
`;
    expect(marked(text)).toEqual(["key-unknown colour", "value-range 0", "length-unit mmm", "length-syntax 4", "value-type perhaps", "step-unknown fold cart"]);
  });

  it("are not repeated for a number without a unit when the unit itself is wrong", () => {
    expect(marked(sound.replace("units: mm", "units: cm").replace("251 mm", "251"))).toEqual(["value-unknown cm"]);
    expect(marked(sound.replace("units: mm\n", "").replace("251 mm", "251"))).toEqual(["key-missing (file)"]);
  });

  it("below a syntax error are still found where they are certain", () => {
    expect(marked(`${sound.replace("title: Invented album", "title: Invented: album")}  spine: 4 mm\n`)).toEqual(["yaml-syntax :", "length-range 4 mm"]);
  });

  it("about a key at the wrong level say where it belongs", () => {
    expect(read(`${sound}sitting: 3 h\nspine: 60 mm\n`).problems.map((problem) => problem.hint)).toEqual(["did you mean sitting, which belongs under bench?", "did you mean spine, which belongs under book?"]);
  });
});
