// What runs inside a page before it is printed. It is sent to the browser as text, so it may use nothing from outside its own body.

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
