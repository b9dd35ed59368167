import { getDocument, GlobalWorkerOptions, type PDFDocumentProxy } from 'pdfjs-dist'

GlobalWorkerOptions.workerSrc = new URL('pdfjs-dist/build/pdf.worker.min.mjs', import.meta.url).href

/** Fetches a PDF from the desk and opens it. @throws when it can't be fetched or read */
export async function openPdf(address: string): Promise<PDFDocumentProxy> {
  const response = await fetch(address)
  if (!response.ok) throw new Error(`The desk answered ${response.status} for ${address}.`)
  const data = new Uint8Array(await response.arrayBuffer())
  return getDocument({ data, isEvalSupported: false, useWasm: false }).promise
}
