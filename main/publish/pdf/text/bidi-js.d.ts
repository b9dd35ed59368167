declare module 'bidi-js' {
  interface Bidi {
    getEmbeddingLevels(
      text: string,
      direction?: 'ltr' | 'rtl' | 'auto',
    ): {
      readonly levels: Uint8Array
      readonly paragraphs: readonly { readonly start: number; readonly end: number; readonly level: number }[]
    }
    getMirroredCharacter(character: string): string | null
  }
  export default function bidiFactory(): Bidi
}
