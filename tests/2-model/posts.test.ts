// Choosing a screw post against its layers: the shortest that is not shorter, with extensions only beyond the longest post.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { choosePost, mostExtensions } from "../../src/2-model/posts.ts";
import { addLengths, isLess, mm, noLength, toMillimetres } from "../../src/units/length.ts";

const millimetres = (...sizes: readonly number[]) => sizes.map((size) => mm(size));

function chosen(stack: string, posts: readonly number[], extensions: readonly number[] = []) {
  const choice = choosePost(mm(stack), millimetres(...posts), millimetres(...extensions));
  return choice && [toMillimetres(choice.post), choice.extensions.map(toMillimetres), toMillimetres(choice.reach)];
}

describe("a post for its layers", () => {
  it("is the shortest that is not shorter, whatever the order of the list", () => {
    expect(chosen("6", [10, 5, 6, 8])).toEqual([6, [], 6]);
    expect(chosen("6.01", [10, 5, 6, 8])).toEqual([8, [], 8]);
  });

  it("has no extension while one post is long enough, even where a sum would be nearer", () => {
    expect(chosen("11", [6, 20], [5])).toEqual([20, [], 20]);
  });

  it("beyond the longest post has the extensions whose sum is nearest from above", () => {
    expect(chosen("21", [6, 20], [5, 10])).toEqual([6, [10, 5], 21]);
    expect(chosen("21", [20], [5, 10])).toEqual([20, [5], 25]);
    expect(chosen("27", [6, 20], [5, 10])).toEqual([20, [10], 30]);
    expect(chosen("26", [6, 20], [5, 10])).toEqual([6, [10, 10], 26]);
  });

  it("of equal sums takes the one with fewer pieces", () => {
    // 20 + 10 and 20 + 5 + 5 are both 30.
    expect(chosen("29", [20], [5, 10])).toEqual([20, [10], 30]);
  });

  it("is none when the longest chain is too short, or there are no extensions", () => {
    expect(chosen("60", [20], [10])).toEqual([20, [10, 10, 10, 10], 60]);
    expect(chosen("60.01", [20], [10])).toBeNull();
    expect(chosen("20.01", [20])).toBeNull();
  });
});

it("agrees with trying every chain, one number at a time", () => {
  const list = fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 4 });
  let extended = 0;
  fc.assert(fc.property(fc.integer({ min: 1, max: 120 }), list, list, (stack, posts, extensions) => {
    // Sums that can be reached with so many extensions, as plain numbers and without the order that the search keeps.
    let sums = new Set([0]);
    const reachable = new Set<number>(posts);
    for (let pieces = 1; pieces <= mostExtensions; pieces += 1) {
      sums = new Set([...sums].flatMap((sum) => extensions.map((extension) => sum + extension)));
      for (const sum of sums) for (const post of posts) reachable.add(post + sum);
    }
    const single = posts.filter((post) => post >= stack);
    const enough = single.length > 0 ? single : [...reachable].filter((length) => length >= stack);
    const choice = choosePost(mm(stack), millimetres(...posts), millimetres(...extensions));
    if (choice && choice.extensions.length > 0) extended += 1;
    expect(choice && toMillimetres(choice.reach)).toBe(enough.length > 0 ? Math.min(...enough) : null);
    if (!choice) return;
    expect(isLess(choice.reach, mm(stack))).toBe(false);
    expect(toMillimetres(choice.extensions.reduce((sum, each) => addLengths(sum, each), addLengths(choice.post, noLength)))).toBe(toMillimetres(choice.reach));
  }), { numRuns: 300 });
  expect(extended).toBeGreaterThan(50);
});
