import PDFDocument from 'pdfkit'

export const pages = new PDFDocument()
