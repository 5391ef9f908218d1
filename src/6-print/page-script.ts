// What runs inside a page before it is printed. It is sent to the browser as text, so it may use nothing from outside its own body.
import type { PageOfSteps, StepMeasures } from "./fill-pages.ts";

/** Opacity of the mark that `preparePage` puts behind a drawing: one step of 255, invisible, and removed again after printing. */
export const drawingMarkOpacity = 1 / 255;

/** What a page says of itself before it is printed, for the mending of its PDF. */
export interface PageWords {
  /** Address and words of every link that shows, in order; an address within the page begins with `#`. */
  readonly links: readonly (readonly [address: string, words: string])[];
  /** Every heading that shows, in order. */
  readonly headings: readonly string[];
  /** Each character of the page's text, once. */
  readonly characters: string;
}

/**
 * Measures the steps of a handout that names the size of its pages (`data-page`, width and height), once for each way of setting them: as usual, a little
 * closer (null), or with drawings so many times as large. The pages before the steps are laid out as columns of their size, which break as pages do. Null for every other page.
 */
export function measureSteps(ways: readonly (number | null)[]): StepMeasures | null {
  const section = document.querySelector<HTMLElement>("[data-page]");
  const main = section?.parentElement;
  if (!section || !main) return null;
  const [width, height] = section.dataset["page"]!.split(" ").map(Number) as [number, number];
  const perMillimetre = 96 / 25.4;
  main.style.cssText = `margin: 0; max-width: none; width: ${width}mm; height: ${height}mm; columns: auto ${width}mm; column-gap: 20mm; column-fill: auto`;
  const end = section.previousElementSibling === null ? undefined : [...section.previousElementSibling.getClientRects()].at(-1);
  const before = end === undefined ? 0 : (end.bottom - main.getBoundingClientRect().top) / perMillimetre;
  main.style.cssText = `max-width: none; width: ${width}mm`;
  const steps = [...section.querySelectorAll<HTMLElement>(".step")];
  const drawings = steps.map((step) => step.querySelector<HTMLElement>("[data-largest]"));
  const usual = drawings.map((drawing) => drawing?.style.cssText ?? "");
  const sizes = ways.map((way) => {
    section.classList.toggle("close", way === null);
    drawings.forEach((drawing) => {
      if (!drawing || way === null) return;
      const times = Math.min(way, Number(drawing.dataset["largest"]));
      for (const side of ["--drawing-width", "--drawing-height"]) drawing.style.setProperty(side, `${parseFloat(drawing.style.getPropertyValue(side)) * times}mm`);
    });
    const measured = steps.map((step) => {
      const box = step.getBoundingClientRect();
      const after = step.querySelector(".step-after");
      const drawing = step.querySelector(".drawing");
      return { whole: box.height / perMillimetre, work: after ? (Math.max(after.getBoundingClientRect().top, drawing?.getBoundingClientRect().bottom ?? 0) - box.top) / perMillimetre : null };
    });
    drawings.forEach((drawing, index) => drawing && (drawing.style.cssText = usual[index]!));
    section.classList.remove("close");
    return measured;
  });
  const result = {
    pageHeight: height,
    before,
    steps: steps.map((step, index) => {
      const top = step.getBoundingClientRect().top;
      const stage = step.parentElement!;
      const above = index === 0 ? end?.bottom : steps[index - 1]!.getBoundingClientRect().bottom;
      const begins = index === 0 ? section : step.previousElementSibling === stage.firstElementChild ? stage : step;
      return {
        gap: (index === 0 ? top - section.previousElementSibling!.getBoundingClientRect().bottom : top - above!) / perMillimetre,
        lead: (top - begins.getBoundingClientRect().top) / perMillimetre,
        whole: sizes.map((each) => each[index]!.whole),
        work: sizes[0]![index]!.work === null ? null : sizes.map((each) => each[index]!.work!),
      };
    }),
  };
  main.style.cssText = "";
  return result;
}

/** Sets the steps as they were shared out. */
export function setSteps(pages: readonly PageOfSteps[]): void {
  const section = document.querySelector<HTMLElement>("[data-page]")!;
  const steps = [...section.querySelectorAll<HTMLElement>(".step")];
  pages.forEach(({ first, last, way, parts, isLoose }, index) => {
    const isCarried = index > 0 && pages[index - 1]!.parts;
    const step = steps[first]!;
    const stage = step.parentElement!;
    const begins = first === 0 ? section : step.previousElementSibling === stage.firstElementChild ? stage : step;
    if (!isLoose && !isCarried) begins.classList.add("page-begins");
    if (way === "close") steps.slice(first, last + 1).forEach((each) => each.classList.add("close"));
    if (parts) steps[last]!.classList.add("parted");
    const drawing = step.querySelector<HTMLElement>("[data-largest]");
    if (typeof way !== "number" || !drawing) return;
    const times = Math.min(way, Number(drawing.dataset["largest"]));
    for (const side of ["--drawing-width", "--drawing-height"]) drawing.style.setProperty(side, `${parseFloat(drawing.style.getPropertyValue(side)) * times}mm`);
    if (drawing.dataset["resized"]) drawing.querySelector("figcaption")?.append(` ${drawing.dataset["resized"].replace("{}", String(Math.round(times * 100)))}`);
  });
}

/** What each box that must be shown whole (`data-whole`) is called whose contents are larger than it; they would be cut off in print. */
export function boxesCutOff(): string[] {
  return [...document.querySelectorAll<HTMLElement>("[data-whole]")].filter((box) => box.scrollHeight > box.clientHeight + 1 || box.scrollWidth > box.clientWidth + 1).map((box) => box.dataset["whole"] ?? "");
}

/**
 * Makes the browser write everything into the structure tree that it would leave out (seen with 143), and returns the page's words.
 * A drawing with an alternative gets an invisible background, because it is left out without one; an empty cell or place to fill in gets a space, for the same reason; terms with
 * their explanations become lists, whose terms are told apart by the role of an aside, which no list of ours has otherwise.
 */
export function preparePage(): PageWords {
  for (const drawing of document.querySelectorAll<SVGElement>("svg[role='img']")) {
    const { backgroundColor, backgroundImage } = getComputedStyle(drawing);
    if (backgroundColor === "rgba(0, 0, 0, 0)" && backgroundImage === "none") drawing.style.backgroundColor = "rgb(255 255 255 / 0.004)";
  }
  for (const cell of document.querySelectorAll("td, th, dd")) if ((cell.textContent ?? "").trim() === "" && cell.querySelector("svg, img") === null) cell.append("\u00a0");
  for (const list of document.querySelectorAll("dl")) {
    list.role = "list";
    for (const item of list.children) item.role = "listitem";
    for (const term of list.querySelectorAll("dt")) term.role = "complementary";
  }
  const here = document.location.href.replace(/#.*/, "");
  const links = [...document.querySelectorAll<HTMLAnchorElement>("a[href]")].filter((link) => link.getClientRects().length > 0);
  return {
    links: links.map((link) => {
      const address = link.href.startsWith(`${here}#`) ? link.href.slice(here.length) : link.href;
      return [decodeURI(address), (link.ariaLabel ?? link.textContent ?? "").replace(/\s+/g, " ").trim()];
    }),
    headings: [...document.querySelectorAll<HTMLElement>("h1, h2, h3, h4, h5, h6")]
      .filter((heading) => heading.getClientRects().length > 0)
      .map((heading) => heading.innerText.replace(/\s+/g, " ").trim()),
    characters: [...new Set(document.body.innerText)].join(""),
  };
}
