export { type PdfOptions, type PdfPage, streamPdf, writePdf } from "./document.ts";
export { type Ink, pdfTypeface, type PdfTypeface } from "./fonts.ts";
