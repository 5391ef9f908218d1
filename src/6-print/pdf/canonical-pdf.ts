// Writes a PDF so that the same content always gives the same bytes: objects in the order in which they are reached, an identifier from the content.
import { createHash } from "node:crypto";
import { PDFArray, PDFContext, PDFDict, PDFHexString, PDFName, PDFRawStream, PDFRef, PDFStream, PDFStreamWriter } from "pdf-lib";
import type { PDFDocument, PDFObject } from "pdf-lib";

const emptyIdentifier = "0".repeat(32);

/**
 * The document as bytes. Objects that nothing points to are left out. The browser numbers its objects by counters that its tabs share and by the order
 * of a hash table, so its own numbers differ from one print to the next.
 */
export async function writeCanonical(document: PDFDocument): Promise<Uint8Array> {
  const source = document.context;
  const target = PDFContext.create();
  const numbers = new Map<PDFRef, PDFRef>();
  const waiting: PDFRef[] = [];
  const numberOf = (ref: PDFRef): PDFRef => {
    const known = numbers.get(ref);
    if (known !== undefined) return known;
    const fresh = target.nextRef();
    numbers.set(ref, fresh);
    waiting.push(ref);
    return fresh;
  };
  const { Root, Info } = source.trailerInfo;
  if (!(Root instanceof PDFRef) || !(Info instanceof PDFRef)) throw new Error("a PDF without catalogue or information");
  target.trailerInfo.Root = numberOf(Root);
  target.trailerInfo.Info = numberOf(Info);
  target.trailerInfo.ID = target.obj([PDFHexString.of(emptyIdentifier), PDFHexString.of(emptyIdentifier)]);
  for (let ref = waiting.shift(); ref !== undefined; ref = waiting.shift()) {
    const object = source.lookup(ref);
    if (object !== undefined) target.assign(numberOf(ref), copy(object, target, numberOf));
  }
  return withIdentifier(await PDFStreamWriter.forContext(target, Infinity).serializeToBuffer());
}

function copy(object: PDFObject, target: PDFContext, numberOf: (ref: PDFRef) => PDFRef): PDFObject {
  if (object instanceof PDFRef) return numberOf(object);
  if (object instanceof PDFArray) {
    const array = PDFArray.withContext(target);
    for (const item of object.asArray()) array.push(copy(item, target, numberOf));
    return array;
  }
  if (object instanceof PDFDict) return copyEntries(object, PDFDict.withContext(target), target, numberOf);
  if (object instanceof PDFStream) {
    const contents = object.getContents();
    const dictionary = copyEntries(object.dict, PDFDict.withContext(target), target, numberOf);
    dictionary.set(PDFName.of("Length"), target.obj(contents.length));
    return PDFRawStream.of(dictionary, contents);
  }
  return object;
}

function copyEntries(from: PDFDict, to: PDFDict, target: PDFContext, numberOf: (ref: PDFRef) => PDFRef): PDFDict {
  const entries = from.entries().toSorted(([a], [b]) => (a.asString() < b.asString() ? -1 : 1));
  // A stream's length is written anew; following the old one would keep a number object that nothing uses.
  for (const [key, value] of entries) if (key.asString() !== "/Length") to.set(key, copy(value, target, numberOf));
  return to;
}

/** The identifier is the beginning of the bytes' SHA-256, taken with zeros in its place. */
function withIdentifier(bytes: Uint8Array): Uint8Array {
  const identifier = createHash("sha256").update(bytes).digest("hex").slice(0, emptyIdentifier.length).toUpperCase();
  const buffer = Buffer.from(bytes);
  const needle = `<${emptyIdentifier}>`;
  const first = buffer.lastIndexOf(needle, buffer.lastIndexOf(needle) - 1);
  if (first < 0) throw new Error("the PDF's identifier cannot be found");
  for (const at of [first, buffer.lastIndexOf(needle)]) buffer.write(identifier, at + 1, "latin1");
  return new Uint8Array(buffer);
}
