// Which pages stand on which sheet when folded sheets are laid into each other.

/** Pages on the two faces of each sheet, the outermost sheet first: the last page beside the first, and so on inwards. Stored article on imposition: 28 | 1 and 2 | 27 of 28 pages. */
export function pagesOnSheets(sheets: number): readonly { readonly outer: readonly [number, number]; readonly inner: readonly [number, number] }[] {
  const pages = 4 * sheets;
  return Array.from({ length: sheets }, (_, i) => ({ outer: [pages - 2 * i, 2 * i + 1] as const, inner: [2 * i + 2, pages - 2 * i - 1] as const }));
}
