// The small functions that put text into pages: each side of each rule.
import { expect, test } from "vitest";
import { viewFigure, withUniqueIds } from "../../src/5-pages/inline-figure.ts";
import { picturesInProse, renderProse } from "../../src/5-pages/markdown.ts";
import { cssString, printedText, scriptJson } from "../../src/5-pages/printed-text.ts";
import { projectPictures } from "../../src/5-pages/project-pictures.ts";
import { sentences, stepList } from "../../src/5-pages/step-view.ts";
import { fixtureBooklet } from "./fixture.ts";

const setting = { topHeading: 3, pictures: new Set(["pictures/a b.png"]) };

test("text is escaped, its fractions are marked, and its apostrophes are curved", () => {
  expect(printedText('<b> & "q" 9\u00a03\u20444\u00a0in, binder\'s')).toBe('&lt;b&gt; &amp; “q” 9<span class="frac">\u00a03\u20444</span>\u00a0in, binder’s');
  expect(printedText('3 × card, more than 1 mm, 7" × 9" in')).toBe("3\u00a0×\u00a0card, more than 1\u00a0mm, 7&quot; × 9&quot; in");
  expect(printedText("5 / 8 and 1/2")).toBe("5 / 8 and 1/2");
});

test("a size in brackets is marked with its unit, whatever its form; other brackets are not", () => {
  expect(printedText("9\u00a0in (about\u00a0228.5\u00a0mm)")).toBe('9\u00a0in <span class="behind-mm">(about\u00a0228.5\u00a0mm)</span>');
  expect(printedText("230 ×\u00a0180\u00a0mm (about\u00a09\u00a01\u204416 ×\u00a07\u00a01\u204416\u00a0in)")).toContain('<span class="behind-in">(about');
  expect(printedText("glue (8 min) and part (A)")).not.toContain("behind");
});

test("height and width of a size stay on one line", () => {
  expect(printedText("240 ×\u00a0180\u00a0mm")).toBe("240\u00a0×\u00a0180\u00a0mm");
});

test("text for a stylesheet cannot leave its string or its style element", () => {
  expect(cssString('a"}</style>\\ ü')).toBe("a\\22 \\7d \\3c \\2f style\\3e \\5c  ü");
});

test("data for a script element cannot end the element", () => {
  expect(scriptJson({ a: "</script><!--&" })).toBe('{"a":"\\u003c/script\\u003e\\u003c!--\\u0026"}');
});

test("an author's HTML is shown as text, never as markup", () => {
  expect(renderProse("<script>alert(1)</script> <b>x</b>", setting)).not.toMatch(/<script|<b>/);
});

test("links to pages and mail are kept; scripts, files and folders above are not links", () => {
  expect(renderProse("[a](https://example.org/) [m](mailto:a@example.org)", setting)).toContain('<a href="https://example.org/" rel="noreferrer">');
  for (const link of ["javascript:alert(1)", "data:text/html,x", "file:///etc/passwd", "../other/index.html", "//example.org/"]) {
    expect(renderProse(`[a](${link})`, setting), link).not.toContain("<a ");
  }
});

test("a picture of the project is shown; any other becomes its description", () => {
  expect(renderProse("![A *fold*](<pictures/a b.png>)", setting)).toContain('<img src="pictures/a%20b.png" alt="A fold">');
  expect(renderProse("![far](https://example.org/a.png)", setting)).toBe("<p>far</p>");
  expect(picturesInProse("![x](./pictures/c.png) and [y](d.png)")).toEqual(["pictures/c.png"]);
});

test("headings of the author begin at the level they fit under, and skip none", () => {
  const levels = (text: string): string[] => [...renderProse(text, setting).matchAll(/<(h\d)/g)].map((match) => match[1]!);
  expect(levels("# a\n\n### b\n\n## c\n\n# d")).toEqual(["h3", "h4", "h4", "h3"]);
  expect(levels("###### a\n\n# b")).toEqual(["h3", "h3"]);
});

test("the pictures of a booklet are those its steps and its prose show, each once, and none outside its folder", () => {
  const booklet = fixtureBooklet();
  expect(projectPictures(booklet)).toEqual(["pictures/fold.png"]);
  const prose = new Map([["introduction", "![a](../secret.png) ![b](/etc/x.png) ![c](pictures/c.jpg)"]]);
  expect(projectPictures({ plan: { ...booklet.plan, steps: [], prose } })).toEqual(["pictures/c.jpg"]);
});

test("a drawing that stands twice on a page has different ids, and its references follow", () => {
  const svg = '<svg aria-labelledby="t d"><title id="t">x</title><desc id="d">y</desc><clipPath id="c"/><g clip-path="url(#c)"><use href="#c"/></g><a href="#elsewhere"/></svg>';
  expect(withUniqueIds(svg, "step-3")).toBe(
    '<svg aria-labelledby="t--step-3 d--step-3"><title id="t--step-3">x</title><desc id="d--step-3">y</desc><clipPath id="c--step-3"/><g clip-path="url(#c--step-3)"><use href="#c--step-3"/></g><a href="#elsewhere"/></svg>',
  );
});

test("a drawing stands beside the text while a column of text is left, and below it when not", () => {
  const figure = { id: "a", title: "", caption: "", alternative: "", svg: "<svg/>", height: 10, lines: [] };
  expect([97, 97.5, 118, 118.5].map((width) => viewFigure({ ...figure, width }, "x").place)).toEqual(["beside", "lower", "lower", "below"]);
});

test("phrases become sentences, and step numbers a list in words", () => {
  expect(sentences("the knife slips", "", "It cuts!", "hold it ")).toBe("The knife slips. It cuts! Hold it.");
  expect([stepList([]), stepList([4]), stepList([4, 7, 9])]).toEqual(["", "step\u00a04", "steps\u00a04, 7 and 9"]);
});
