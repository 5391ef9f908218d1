// Title, author, language and conformance of a PDF, in its information dictionary and in XMP (ISO 32000-1, 14.3; PDF/UA-1, clause 5).
import { PDFDict, PDFHexString, PDFName, PDFString } from "pdf-lib";
import type { PDFDocument } from "pdf-lib";

/** What a PDF says about itself. */
export interface PdfMetadata {
  readonly title: string;
  readonly author: string;
  /** BCP 47 tag. */
  readonly language: string;
  /** A sheet to measure on paper: print dialogues are told not to scale it, and to leave the back empty. */
  readonly isTemplate: boolean;
  /** Sheets with pages in the order of folding: for print only, so nothing is claimed about reading; print dialogues are told to turn them on the short edge. */
  readonly isFolded: boolean;
}

const maker = "Benchleaf";

/**
 * Replaces all metadata. There is no date: the same input must give the same bytes on any day, and a made-up date would be worse than none.
 */
export function writeMetadata(document: PDFDocument, metadata: PdfMetadata): void {
  const { context, catalog } = document;
  const { title, author, language, isTemplate, isFolded } = metadata;
  const old = context.lookupMaybe(context.trailerInfo.Info, PDFDict);
  const producer = old?.lookupMaybe(PDFName.of("Producer"), PDFString, PDFHexString)?.decodeText() ?? "";
  const information = context.obj({ Title: PDFHexString.fromText(title), Creator: PDFString.of(maker) });
  if (author !== "") information.set(PDFName.of("Author"), PDFHexString.fromText(author));
  if (producer !== "") information.set(PDFName.of("Producer"), PDFHexString.fromText(producer));
  context.trailerInfo.Info = context.register(information);
  catalog.set(PDFName.of("Lang"), PDFString.of(language));
  if (!isFolded) catalog.set(PDFName.of("MarkInfo"), context.obj({ Marked: true }));
  const preferences = context.obj({ DisplayDocTitle: true });
  if (isTemplate) {
    preferences.set(PDFName.of("PrintScaling"), PDFName.of("None"));
    preferences.set(PDFName.of("Duplex"), PDFName.of("Simplex"));
    preferences.set(PDFName.of("PickTrayByPDFSize"), context.obj(true));
  }
  if (isFolded) {
    preferences.set(PDFName.of("PrintScaling"), PDFName.of("None"));
    preferences.set(PDFName.of("Duplex"), PDFName.of("DuplexFlipShortEdge"));
  }
  catalog.set(PDFName.of("ViewerPreferences"), preferences);
  // XMP stays uncompressed, so that programs that know no PDF find it (ISO 32000-1, 14.3.2).
  const xmp = context.stream(xmpOf(metadata, producer), { Type: "Metadata", Subtype: "XML" });
  catalog.set(PDFName.of("Metadata"), context.register(xmp));
}

function xmpOf({ title, author, language, isFolded }: PdfMetadata, producer: string): Uint8Array {
  const creator = author === "" ? "" : `\n      <dc:creator><rdf:Seq><rdf:li>${xml(author)}</rdf:li></rdf:Seq></dc:creator>`;
  const producedBy = producer === "" ? "" : `\n      <pdf:Producer>${xml(producer)}</pdf:Producer>`;
  return new TextEncoder().encode(`<?xpacket begin="\u{feff}" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
  <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
    <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
      <dc:format>application/pdf</dc:format>
      <dc:title><rdf:Alt><rdf:li xml:lang="x-default">${xml(title)}</rdf:li></rdf:Alt></dc:title>${creator}
      <dc:language><rdf:Bag><rdf:li>${xml(language)}</rdf:li></rdf:Bag></dc:language>
      <xmp:CreatorTool>${maker}</xmp:CreatorTool>${producedBy}${isFolded ? "" : "\n      <pdfuaid:part>1</pdfuaid:part>"}
    </rdf:Description>
  </rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>`);
}

function xml(text: string): string {
  return text.replace(/[&<>"]/g, (character) => `&#${character.charCodeAt(0)};`);
}
