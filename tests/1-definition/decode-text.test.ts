// Files that are text, and files that are not.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodeText, firstInvalidByte, largestFileBytes } from "../../src/1-definition/decode-text.ts";

const encoder = new TextEncoder();

describe("decoding a file", () => {
  it("takes a byte order mark off, so that offsets count from the first character", () => {
    expect(decodeText("f", new Uint8Array([0xef, 0xbb, 0xbf, 0x61]))).toEqual({ text: "a", problems: [] });
  });

  it("says at which byte UTF-8 breaks and marks the character there, the mark at the beginning counted", () => {
    const { text, problems } = decodeText("f", new Uint8Array([0xef, 0xbb, 0xbf, ...encoder.encode("grü"), 0xf6, 0x62]));
    expect(problems[0]!.code).toBe("file-not-utf8");
    expect(problems[0]!.message).toContain("byte offset 7 holds 0xF6");
    expect(text.slice(problems[0]!.place.span!.start, problems[0]!.place.span!.end)).toBe("\ufffd");
  });

  it("names UTF-16 in both byte orders", () => {
    expect(decodeText("f", new Uint8Array([0xff, 0xfe, 0x61, 0]))).toMatchObject({ problems: [{ code: "file-not-utf8" }] });
    expect(decodeText("f", new Uint8Array([0xfe, 0xff, 0, 0x61]))).toMatchObject({ problems: [{ code: "file-not-utf8" }] });
  });

  it("calls a file with a zero byte no text", () => {
    expect(decodeText("f", new Uint8Array([0x50, 0x4b, 0x00]))).toMatchObject({ problems: [{ code: "file-not-text" }] });
  });

  it("reads the largest allowed file and refuses one byte more", () => {
    expect(decodeText("f", new Uint8Array(largestFileBytes).fill(0x20)).problems).toEqual([]);
    expect(decodeText("f", new Uint8Array(largestFileBytes + 1).fill(0x20))).toMatchObject({ problems: [{ code: "file-too-large" }] });
  });

  it("finds fault with exactly the bytes that a strict decoder refuses", () => {
    const strict = new TextDecoder("utf-8", { fatal: true });
    const isText = (bytes: Uint8Array): boolean => {
      try {
        strict.decode(bytes);
        return true;
      } catch {
        return false;
      }
    };
    const byte = fc.oneof(fc.integer({ min: 0, max: 255 }), fc.constantFrom(0xc0, 0xc2, 0xe0, 0xed, 0xef, 0xf0, 0xf4, 0xf5, 0x80, 0x8f, 0x90, 0x9f, 0xa0, 0xbf));
    fc.assert(fc.property(fc.uint8Array({ maxLength: 6 }).chain((start) => fc.array(byte, { maxLength: 6 }).map((end) => new Uint8Array([...start, ...end]))), (bytes) => {
      const at = firstInvalidByte(bytes);
      expect(at === null).toBe(isText(bytes));
      if (at !== null) expect(isText(bytes.subarray(0, at))).toBe(true);
    }), { numRuns: 2000 });
  });
});
