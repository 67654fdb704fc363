/** What the tests use of the parser of WebVTT, which brings no types. */
declare module 'webvtt-parser' {
  interface CueText {
    readonly type: string;
    readonly value: string;
  }
  interface ReadCue {
    readonly startTime: number;
    readonly endTime: number;
    readonly text: string;
    readonly tree: { readonly children: readonly CueText[] };
  }
  class WebVTTParser {
    /** `entities`: named character references as HTML has them; left out, a handful of them. */
    constructor(entities?: Readonly<Record<string, string>>);
    parse(
      text: string,
      mode: 'metadata' | 'captions' | 'chapters',
    ): { readonly cues: readonly ReadCue[]; readonly errors: readonly { readonly message: string }[] };
  }
  const parser: { readonly WebVTTParser: typeof WebVTTParser };
  export default parser;
}
