// The way of a thread: writing it down, its laws and their breaches, its length, needlefuls and words.
import { describe, expect, it } from "vitest";
import { findThreadFaults } from "../../src/2-model/sewing/findings.ts";
import { breachesOf, breaksInThread, lengthsThatDoNotAdd, runsNotCovered, sidesNotChanged } from "../../src/2-model/sewing/laws.ts";
import { aroundEdge, kettleClimb, linkUnder, overTape, straightBetween } from "../../src/2-model/sewing/lengths.ts";
import { openPath } from "../../src/2-model/sewing/path.ts";
import { betweenTheLeaves, threadOf } from "../../src/2-model/sewing/thread.ts";
import type { Move, Place, ThreadPath } from "../../src/2-model/sewing/types.ts";
import { wordsForPass } from "../../src/3-plan/sewing/move-words.ts";
import { addLengths, hypotenuse, inches, mm, multiplyLength, noLength, sameLength } from "../../src/units/length.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";

function hole(name: string, along: number, section = 1): Place {
  return { id: `section-${section}/${name}`, name, kind: "hole", part: "section", hole: name, along: mm(along), across: noLength, depth: mm(2 * section - 1) };
}

/** Two sections of four holes each: along the inside, a link and a kettle on the way, past a tape between holes 2 and 3. */
function twoSections(): ThreadPath {
  const tape: Place = { id: "tape", name: "A", kind: "tape", part: "tape", hole: null, along: mm(100), across: noLength, depth: noLength };
  const places = [1, 2].flatMap((section) => [hole("1", 10, section), hole("2", 90, section), hole("3", 110, section), hole("4", 190, section)]);
  const sew = openPath({ places: [...places, tape], at: { place: "section-1/1", side: "outside" }, tail: mm(100), pass: "section 1" });
  sew.through("inside", mm(1));
  sew.along("section-1/2", { run: "a" });
  sew.through("outside", mm(1));
  const first = sew.pastTape("tape", "section-1/3", mm("20.5"), "b");
  sew.through("inside", mm(1));
  sew.along("section-1/4", { run: "c" });
  sew.through("outside", mm(1));
  sew.kettle(null, "section-2/4", mm(3));
  sew.pass("section 2");
  sew.through("inside", mm(1));
  sew.along("section-2/3", { run: "d" });
  sew.through("outside", mm(1));
  sew.link(first, mm(4), { to: "section-2/2", run: "e" });
  sew.through("inside", mm(1));
  sew.along("section-2/1", { run: "f" });
  sew.through("outside", mm(1));
  sew.knot(mm(5));
  return sew.finish(mm(120), ["a", "b", "c", "d", "e", "f"].map((id) => ({ id, times: 1 })));
}

const sewnOf = (path: ThreadPath) => addLengths(...path.moves.map(({ length }) => length));

describe("a path that is written down", () => {
  it("numbers its moves, keeps its passes and breaks no law", () => {
    const path = twoSections();
    expect(path.moves.map(({ n }) => n)).toEqual(Array.from({ length: 16 }, (_, index) => index + 1));
    expect(path.moves.map(({ pass }) => pass)).toEqual([...Array<number>(8).fill(1), ...Array<number>(8).fill(2)]);
    expect(breachesOf(path, sewnOf(path))).toEqual([]);
    expect(path.start.length).toEqual(mm(100));
    expect(path.end.length).toEqual(mm(120));
    expect(path.end.at).toEqual({ place: "section-2/1", side: "outside" });
  });

  it("measures a run straight from hole to hole", () => {
    expect(twoSections().moves[1]!.length).toEqual(mm(80));
    const at = (along: number, across: number): Place => ({ ...hole("x", along), across: mm(across) });
    expect(straightBetween(at(10, 4), at(13, 8))).toEqual(mm(5));
  });

  it("refuses what no needle can do", () => {
    const open = () => openPath({ places: [hole("1", 10), hole("2", 90), { ...hole("e", 5), kind: "edge", hole: null }], at: { place: "section-1/1", side: "outside" }, tail: mm(100), pass: "all" });
    expect(() => open().through("outside", mm(1))).toThrow("does not change the side");
    expect(() => open().along("section-1/9")).toThrow('no place of the thread path is called "section-1/9"');
    expect(() => open().link(1, mm(1))).toThrow("not sewn yet");
    const sew = open();
    sew.along("section-1/e");
    expect(() => sew.through("inside", mm(1))).toThrow("no hole to go through");
    expect(() => openPath({ places: [hole("1", 10), hole("1", 20)], at: { place: "section-1/1", side: "inside" }, tail: mm(1), pass: "" })).toThrow("share an id");
  });
});

describe("the laws find", () => {
  const changed = (n: number, change: Partial<Move>): ThreadPath => {
    const path = twoSections();
    return { ...path, moves: path.moves.map((move) => (move.n === n ? ({ ...move, ...change } as Move) : move)) };
  };
  const dropped = (n: number): ThreadPath => {
    const path = twoSections();
    return { ...path, moves: path.moves.filter((move) => move.n !== n).map((move, index) => ({ ...move, n: index + 1 })) };
  };

  it("a jump, a wrong number, a pass left out and an end elsewhere", () => {
    expect(breaksInThread(changed(4, { from: { place: "section-1/1", side: "outside" } }))).toEqual(["move 4 starts at section-1/1 outside, but the thread is at section-1/2 outside"]);
    expect(breaksInThread(changed(3, { n: 9 }))).toEqual(["move 3 is numbered 9"]);
    expect(breaksInThread(changed(9, { pass: 4 }))).toContain("move 9 of pass 4 follows pass 1");
    expect(breaksInThread({ ...twoSections(), end: { at: { place: "section-2/1", side: "inside" }, length: mm(1) } })).toEqual(["the tail hangs at section-2/1 inside, but the thread ends at section-2/1 outside"]);
  });

  it("a hole that is left out, one gone through and straight back, and a side changed on the way", () => {
    expect(sidesNotChanged(dropped(3))).toEqual(["moves 2 and 3 pass hole section-1/2 without going through it"]);
    expect(sidesNotChanged(dropped(2))).toEqual(["moves 1 and 2 go through hole section-1/1 and straight back"]);
    expect(sidesNotChanged(changed(2, { to: { place: "section-1/2", side: "outside" } }))).toEqual(["move 2 changes from inside to outside without a hole"]);
  });

  it("a run left out, one sewn twice, and thread where none is wanted", () => {
    expect(runsNotCovered(changed(2, { run: "c" }))).toEqual(["a is sewn 0 times in place of 1", "c is sewn 2 times in place of 1"]);
    expect(runsNotCovered(changed(2, { run: null }))).toEqual(["a is sewn 0 times in place of 1", "move 2 (run) covers no wanted run"]);
    expect(runsNotCovered(changed(2, { run: "z" }))).toEqual(["a is sewn 0 times in place of 1", "z is sewn, but not asked for"]);
  });

  it("a length that is nothing, and a sum that is not the sum", () => {
    expect(lengthsThatDoNotAdd(changed(2, { length: noLength }), mm(1))).toEqual(["move 2 has no length", "the sewn length is not the sum of the moves"]);
  });
});

describe("lengths of thread", () => {
  it("count the thickness of what is gone around, over and under", () => {
    expect(aroundEdge(mm(12), mm(7))).toEqual(mm(31));
    expect(overTape(hole("1", 90), hole("2", 102), mm("0.3"))).toEqual(mm("12.6"));
    expect(linkUnder(mm(3), mm("0.5"))).toEqual(mm(7));
    expect(kettleClimb(mm(2), mm(3), mm("0.5"))).toEqual(mm(8));
  });

  it("come from right-angled triangles exactly where the root is a fraction, else to a millionth of a millimetre", () => {
    expect(hypotenuse(mm(3), mm(4))).toEqual(mm(5));
    expect(hypotenuse(inches(5, 16), inches(12, 16))).toEqual(inches(13, 16));
    expect(hypotenuse(mm(1), mm(1))).toEqual(mm("1.414214"));
  });
});

describe("the thread of a book", () => {
  const handling = { needleful: mm(1500), joinEnd: mm(60), waste: mm(100), cutTo: mm(10) };

  it("is the sum of its moves, the ends and what stays in the needle", () => {
    const path = twoSections();
    const thread = threadOf([path], handling);
    // 8 holes of 1 mm; 80 + 80 + 80 + 80 mm of runs; 20.5 past the tape; 3 kettle; 4 link; 5 knot.
    expect(thread.sewn).toEqual(mm("360.5"));
    expect([...thread.byKind].map(([kind, length]) => [kind, Number(length.n) / Number(length.d)])).toEqual([["hole", 8], ["run", 320], ["tape", 20.5], ["kettle", 3], ["link", 4], ["knot", 5]]);
    expect(thread.net).toEqual(mm("580.5"));
    expect(thread.needlefuls).toEqual([{ n: 1, path: 1, first: 1, last: 16, joinAt: null, length: mm(690) }]);
    expect(thread.length).toEqual(mm(690));
  });

  it("is cut into needlefuls that end inside, none longer than is comfortable, and they hold every move once", () => {
    const path = twoSections();
    const thread = threadOf([path], { ...handling, needleful: mm(400) });
    expect(thread.needlefuls.map(({ first, last, joinAt }) => [first, last, joinAt])).toEqual([
      [1, 5, { place: "section-1/3", side: "inside" }], [6, 13, { place: "section-2/2", side: "inside" }], [14, 16, null],
    ]);
    for (const { length } of thread.needlefuls) expect(sameLength(length, mm(400)) || Number(length.n) / Number(length.d) < 400).toBe(true);
    const [finding] = findThreadFaults(thread, mm(400), stubAlbumDefinition(), "book/thread/needleful");
    expect(finding).toMatchObject({ code: "thread-joined", severity: "note" });
    expect(finding!.message).toContain("joined after move 5, inside at 3 in section 1; after move 13, inside at 2 in section 2");
  });

  it("warns where no join can be made within a needleful", () => {
    const thread = threadOf([twoSections()], { ...handling, needleful: mm(300), joinAfter: () => null });
    expect(thread.needlefuls).toHaveLength(1);
    expect(findThreadFaults(thread, mm(300), stubAlbumDefinition(), "book/thread/needleful").map(({ code }) => code)).toEqual(["needleful-too-long"]);
  });

  it("may be joined between the leaves, in the hole that comes next", () => {
    const { moves } = twoSections();
    expect(betweenTheLeaves(moves[1]!, moves[2])).toEqual({ place: "section-1/2", side: "within" });
    expect(betweenTheLeaves(moves[0]!, moves[1])).toBeNull();
  });

  it("is the sum over its threads where there are several", () => {
    const path = twoSections();
    const two = threadOf([path, path], handling);
    expect(two.sewn).toEqual(multiplyLength(sewnOf(path), 2));
    expect(two.needlefuls.map(({ n, path: number }) => [n, number])).toEqual([[1, 1], [2, 2]]);
  });
});

describe("moves in words", () => {
  it("say where the needle goes, pass by pass", () => {
    const path = twoSections();
    expect(wordsForPass(path, 1)).toBe("In at 1, along the inside to 2, out at 2, over tape A to 3, in at 3, along the inside to 4, out at 4, behind the step between the two sections below, and up to 4 of the next section");
    expect(wordsForPass(path, 2)).toBe("In at 4, along the inside to 3, out at 3, under the stitch below and on to 2, in at 2, along the inside to 1, out at 1, tie a knot");
  });
});
