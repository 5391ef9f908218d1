// What runs inside a page before it is printed. It is sent to the browser as text, so it may use nothing from outside its own body.

/** Opacity of the mark that `markDrawings` puts behind a drawing: one step of 255, invisible, and removed again after printing. */
export const drawingMarkOpacity = 1 / 255;

/**
 * Gives each drawing with an alternative text an invisible background, because browsers before Chromium 150 put a drawing into the structure tree only
 * when it has one (seen with 143). Returns address and words of every link that shows, in order; an address within the page begins with `#`.
 */
export function markDrawings(): [string, string][] {
  for (const drawing of document.querySelectorAll<SVGElement>("svg[role='img']")) {
    const { backgroundColor, backgroundImage } = getComputedStyle(drawing);
    if (backgroundColor === "rgba(0, 0, 0, 0)" && backgroundImage === "none") drawing.style.backgroundColor = "rgb(255 255 255 / 0.004)";
  }
  const here = document.location.href.replace(/#.*/, "");
  const links = [...document.querySelectorAll<HTMLAnchorElement>("a[href]")].filter((link) => link.getClientRects().length > 0);
  return links.map((link) => {
    const address = link.href.startsWith(`${here}#`) ? link.href.slice(here.length) : link.href;
    return [decodeURI(address), (link.ariaLabel ?? link.textContent ?? "").replace(/\s+/g, " ").trim()];
  });
}
