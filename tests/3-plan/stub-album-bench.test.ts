// The stub album's plan at the bench: the order of cutting and waiting, tools with number and size, washers, amounts to buy.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { findAdhesive } from "../../src/catalogue/adhesives.ts";
import { mm } from "../../src/units/length.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";
import type { StubAlbumOverrides } from "../fixtures/stub-album.ts";

function planOf(overrides: StubAlbumOverrides = {}) {
  const definition = stubAlbumDefinition(overrides);
  return makePlan(definition, buildModel(definition).model);
}

const wetEverywhere = { rest: { adhesives: Object.fromEntries(["stubs", "pages", "joints", "hinge", "boards", "lining", "floor", "closure"].map((job) => [job, findAdhesive("PVA")!])) } };

describe("the order of the work", () => {
  const idsOf = (overrides: StubAlbumOverrides = {}) => planOf(overrides).plan.steps.map((step) => step.id);

  it("measures the folded floor before anything is cut that must fit it", () => {
    const { steps } = planOf().plan;
    const at = (id: string) => steps.findIndex((step) => step.id === id);
    const cutting = (part: string) => steps.findIndex((step) => step.tools.includes("knife") && step.parts.includes(part));
    expect(at("close-stubs")).toBeLessThan(at("cut-hinge"));
    for (const part of ["spine-strip", "hinge-cloth"]) expect(cutting(part), part).toBe(at("cut-hinge"));
    expect(steps[at("cut-hinge")]!.action.join(" ")).toMatch(/measure the floor/);
  });

  it("cuts every part that is not bought ready-made exactly once", () => {
    const { plan } = planOf();
    const cut = plan.steps.filter((step) => step.id.startsWith("cut-") && step.id !== "cut-corners").flatMap((step) => step.parts);
    expect([...cut].sort()).toEqual(plan.cutList.filter((item) => !item.part.readyMade).map((item) => item.part.id).sort());
  });

  it("touches side strips under weight only when they are dry: nothing lies between glueing them and the wait", () => {
    const ids = idsOf();
    expect(ids.indexOf("mark-holes")).toBe(ids.indexOf("join-boards") + 1);
    const { steps } = planOf().plan;
    expect(steps.find((step) => step.id === "mark-holes")!.before.replaceAll("\u00a0", " ")).toMatch(/side strips on the boards .* to be dry: 12 h/);
    expect(steps.find((step) => step.id === "join-boards")!.wait!.meanwhile).not.toMatch(/Go on/);
  });

  it("pierces a lining only when it is dry, and names that wait as the longest", () => {
    const mix = findAdhesive("mix")!;
    const { plan } = planOf({ rest: { adhesives: { ...stubAlbumDefinition().adhesives, lining: mix } } });
    expect(plan.steps.find((step) => step.id === "pierce-holes")!.before.replaceAll("\u00a0", " ")).toMatch(/linings .* to be dry: 14 h/);
    expect(plan.longestWaitMinutes).toBe(14 * 60);
    expect(planOf({ book: { lining: false } }).plan.steps.find((step) => step.id === "pierce-holes")!.before).toBe("");
  });

  it("does not shut the book on wet pages", () => {
    const mount = (overrides: StubAlbumOverrides) => planOf(overrides).plan.steps.find((step) => step.id === "mount-pages")!;
    expect(mount({}).action.join(" ")).toMatch(/Shut the book after every second page/);
    expect(mount(wetEverywhere).action.join(" ")).not.toMatch(/Shut the book after every second page/);
    expect(mount(wetEverywhere).action.join(" ")).toMatch(/barrier sheet/);
    expect(mount(wetEverywhere).mistake!.repair).not.toMatch(/[Tt]ape/);
  });

  it("mount pages with the same square at head and tail, whether card or page is the higher one", () => {
    const head = (clearance: string, height: string | null = null) =>
      planOf({ book: { "height clearance": mm(clearance), pages: { height: height === null ? null : mm(height) } } }).plan.steps.find((step) => step.id === "mount-pages")!.action.join(" ").replaceAll("\u00a0", " ");
    // Boards of 300 mm, squares of 3 mm: pages 294 mm high on a card of 294, 300 and 280 mm.
    expect(head("6")).toContain("head level with the card’s head");
    expect(head("0")).toContain("its head 3 mm below the card’s head");
    expect(head("20", "294")).toContain("its head standing 7 mm beyond the card’s head");
  });
});

describe("tools", () => {
  const words = {
    knife: /\bknife\b/, awl: /\bawl\b/, prickNeedle: /\bneedle\b/, scissors: /\bscissors\b/, roundFile: /round file/, dampCloth: /damp cloth/, blotters: /blotting paper/,
    barrier: /barrier sheet/, pressingBoards: /pressing board/, weight: /\bweights?\b/, brush: /\b[Bb]rush\b/, wasteSheets: /waste paper/, tape: /removable tape/, wasteBoard: /\bwaste board\b/, boneFolder: /bone folder/, clips: /\bClamp\b/,
  } as const;

  it.each([["tape where it is usual", {}], ["PVA everywhere", wetEverywhere]] as const)("named in a step's text stand in its list: %s", (_, overrides) => {
    const { steps } = planOf(overrides).plan;
    let met = 0;
    for (const step of steps) {
      const text = [...step.action, step.check, step.mistake!.repair].join(" ");
      for (const [tool, word] of Object.entries(words)) {
        if (!word.test(text)) continue;
        met += 1;
        expect(step.tools, `${step.id}: ${tool}`).toContain(tool);
      }
    }
    expect(met).toBeGreaterThan(30);
  });

  it("that a caution asks for stand in the list of the step", () => {
    for (const step of planOf().plan.steps) {
      if (step.cautions.some((caution) => /eye protection/.test(caution.avoid))) expect(step.tools, step.id).toContain("eyeProtection");
    }
  });

  it("are told with number and size where the book decides them", () => {
    const { tools } = planOf().plan;
    const note = (id: string) => tools.find((tool) => tool.id === id)!.note.replaceAll("\u00a0", " ");
    // 8 stubs, gap 5 mm, card 0.4 mm, depth 20 mm, height 294 mm.
    expect(note("pressingStrips")).toContain("9 of them for each book, thinner than the room between two closed stubs, 4.6 mm; higher than a stub, 20 mm; as long as the card is high, 294 mm");
    expect(note("holeTool")).toContain("5.5 mm for posts of 5 mm");
  });
});

describe("posts that are longer than their layers", () => {
  it("get washers that the plan makes, lists and puts on; without slack there are none", () => {
    // The stack is 5.92 mm; two washers of 0.4 mm fit into 0.98 mm.
    const long = planOf({ book: { posts: { lengths: [mm("6.9")] } } }).plan;
    const step = (plan: typeof long, id: string) => plan.steps.find((each) => each.id === id)!;
    expect(step(long, "pierce-holes").action.join(" ")).toContain("Pierce 8 more holes in an offcut of the card");
    expect(step(long, "fasten-posts").action.join(" ")).toContain("Put 2 washers of card over each post");
    expect(long.materials.find((material) => material.role === "posts")!.pieces.join()).toContain("8 washers");
    const exact = planOf({ book: { posts: { lengths: [mm("5.92")] } } }).plan;
    expect(step(exact, "pierce-holes").action.join(" ")).not.toContain("washers");
    expect(exact.materials.find((material) => material.role === "posts")!.pieces.join()).not.toContain("washer");
  });
});

describe("the buying list", () => {
  it("says how much double-sided tape, in which widths, and names the joint tape once", () => {
    const { materials } = planOf().plan;
    const tape = materials.find((material) => material.name === "double-sided tape")!;
    // 8 stubs 294 mm high and 16 papers 294 mm high, both 18.5 mm deep.
    expect(tape.pieces.join("; ").replaceAll("\u00a0", " ")).toMatch(/step 6: 8 strips, 294 × 18.5 mm.*: 16 strips, 294 × 18.5 mm/);
    expect(tape.quantity.replaceAll("\u00a0", " ")).toBe("7056 mm in all");
    expect(materials.filter((material) => /self-adhesive/.test(material.name))).toHaveLength(1);
  });
});
