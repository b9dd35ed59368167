declare module 'webvtt-parser' {
  interface ParsedCue {
    readonly id: string
    /** Seconds from the start of the recording. */
    readonly startTime: number
    readonly endTime: number
    readonly text: string
  }
  export interface WebVTTParser {
    parse(text: string): {
      readonly cues: readonly ParsedCue[]
      readonly errors: readonly { readonly message: string; readonly line: number }[]
    }
  }
  const parsers: { readonly WebVTTParser: new () => WebVTTParser }
  export default parsers
}
