/** The part of PDFKit that its types leave out. */
declare module 'pdfkit/output' {
  /** All bytes of a document, once `end()` was called on it. */
  export function toBytes(document: PDFKit.PDFDocument): Promise<Uint8Array>;
}
