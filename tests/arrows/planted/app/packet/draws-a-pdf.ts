import PDFDocument from 'pdfkit'

export const packet = new PDFDocument()
